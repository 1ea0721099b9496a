// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/legendre_kernel.h"

// clang-format off
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/loop/blocks/legendre_kernel.cpp"
#include "hwy/foreach_target.h"  // IWYU pragma: keep
#include "hwy/highway.h"
// clang-format on

HWY_BEFORE_NAMESPACE();
namespace howlmap::HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

void LegendreSizes(const Complex* HWY_RESTRICT terms, std::size_t count, const double* HWY_RESTRICT cosines,
                   std::size_t cosine_count, double* HWY_RESTRICT sizes) {
    const hn::CappedTag<double, 8> d;
    for (std::size_t i = 0; i < cosine_count; i += hn::Lanes(d)) {
        const auto x = hn::LoadU(d, cosines + i);
        auto before = hn::Zero(d), now = hn::Set(d, 1.0), re = hn::Zero(d), im = hn::Zero(d);
        for (std::size_t n = 0; n < count; ++n) {
            re = hn::MulAdd(now, hn::Set(d, terms[n].real()), re);
            im = hn::MulAdd(now, hn::Set(d, terms[n].imag()), im);
            // (n + 1) P_(n+1) = (2 n + 1) x P_n - n P_(n-1)
            const double m = static_cast<double>(n), down = 1.0 / (m + 1.0);
            const auto after =
                hn::MulSub(hn::Mul(hn::Set(d, (2.0 * m + 1.0) * down), x), now, hn::Mul(hn::Set(d, m * down), before));
            before = now;
            now = after;
        }
        hn::StoreU(hn::Sqrt(hn::MulAdd(re, re, hn::Mul(im, im))), d, sizes + i);
    }
}

}  // namespace howlmap::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap {
HWY_EXPORT(LegendreSizes);

void legendre_sizes(const Complex* terms, std::size_t count, const double* cosines, std::size_t cosine_count,
                    double* sizes) {
    HWY_DYNAMIC_DISPATCH(LegendreSizes)(terms, count, cosines, cosine_count, sizes);
}
}  // namespace howlmap
#endif
