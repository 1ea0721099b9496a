// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/legendre_kernel.h"

#include <algorithm>

// clang-format off
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/loop/blocks/legendre_kernel.cpp"
#include "hwy/foreach_target.h"  // IWYU pragma: keep
#include "hwy/highway.h"
// clang-format on

#ifndef HOWLMAP_LEGENDRE_STEP
#define HOWLMAP_LEGENDRE_STEP
namespace howlmap {
/// What one step of the recurrence takes: P_(n+1) = along x P_n - back P_(n-1).
struct LegendreStep {
    float re, im, along, back;
};
}  // namespace howlmap
#endif

HWY_BEFORE_NAMESPACE();
namespace howlmap::HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

using D = hn::CappedTag<float, 16>;
using V = hn::Vec<D>;

/// One vector of cosines on its way up.
struct Sum {
    V x, before, now, re, im;

    HWY_INLINE explicit Sum(V cosine) : x(cosine) {
        const D d;
        before = re = im = hn::Zero(d);
        now = hn::Set(d, 1.0F);
    }
    HWY_INLINE void Step(V a, V b, V along, V back) {
        re = hn::MulAdd(now, a, re);
        im = hn::MulAdd(now, b, im);
        const V after = hn::MulSub(hn::Mul(along, x), now, hn::Mul(back, before));
        before = now;
        now = after;
    }
    HWY_INLINE V Size() const { return hn::Sqrt(hn::MulAdd(re, re, hn::Mul(im, im))); }
};

/// Four vectors side by side, so that none waits for itself. Returns how many values it has done.
std::size_t LegendreSizes(const LegendreStep* HWY_RESTRICT steps, std::size_t count, const float* HWY_RESTRICT cosines,
                          std::size_t cosine_count, float* HWY_RESTRICT sizes) {
    const D d;
    const std::size_t lanes = hn::Lanes(d);
    std::size_t i = 0;
    for (; i + 4 * lanes <= cosine_count; i += 4 * lanes) {
        Sum s0(hn::LoadU(d, cosines + i)), s1(hn::LoadU(d, cosines + i + lanes)),
            s2(hn::LoadU(d, cosines + i + 2 * lanes)), s3(hn::LoadU(d, cosines + i + 3 * lanes));
        for (std::size_t n = 0; n < count; ++n) {
            const V a = hn::Set(d, steps[n].re), b = hn::Set(d, steps[n].im), along = hn::Set(d, steps[n].along),
                    back = hn::Set(d, steps[n].back);
            s0.Step(a, b, along, back);
            s1.Step(a, b, along, back);
            s2.Step(a, b, along, back);
            s3.Step(a, b, along, back);
        }
        hn::StoreU(s0.Size(), d, sizes + i);
        hn::StoreU(s1.Size(), d, sizes + i + lanes);
        hn::StoreU(s2.Size(), d, sizes + i + 2 * lanes);
        hn::StoreU(s3.Size(), d, sizes + i + 3 * lanes);
    }
    return i;
}

}  // namespace howlmap::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap {
HWY_EXPORT(LegendreSizes);

void legendre_sizes(const std::vector<Complex>& terms, const std::vector<float>& cosines, float* sizes) {
    std::vector<LegendreStep> steps;
    for (std::size_t n = 0; n < terms.size(); ++n) {
        const double m = static_cast<double>(n), down = 1.0 / (m + 1.0);
        steps.push_back({static_cast<float>(terms[n].real()), static_cast<float>(terms[n].imag()),
                         static_cast<float>((2.0 * m + 1.0) * down), static_cast<float>(m * down)});
    }
    const std::size_t done =
        HWY_DYNAMIC_DISPATCH(LegendreSizes)(steps.data(), steps.size(), cosines.data(), cosines.size(), sizes);
    // The rest in a last round of its own.
    std::vector<float> last(cosines.begin() + static_cast<std::ptrdiff_t>(done), cosines.end()), more(64);
    last.resize(64, 1.0F);
    HWY_DYNAMIC_DISPATCH(LegendreSizes)(steps.data(), steps.size(), last.data(), last.size(), more.data());
    std::copy_n(more.begin(), cosines.size() - done, sizes + done);
}
}  // namespace howlmap
#endif
