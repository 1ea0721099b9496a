// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/support/peak.h"

#include <algorithm>
#include <chrono>
#include <cstddef>

#undef HWY_DISABLED_TARGETS
#define HWY_DISABLED_TARGETS (HWY_SSSE3 | HWY_AVX3_DL)
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "tests/bench/support/peak.cpp"
#include "hwy/foreach_target.h"
// After foreach_target.h, which includes this file once for every target.
#include "hwy/highway.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::bench {
namespace HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

/// `rounds` times twelve independent multiply-adds; returns their number of flops. The sums start from numbers of their
/// own: alike, a compiler would keep one of them only.
double Run(std::size_t rounds, float* sink) {
    const hn::CappedTag<float, 16> d;
    const auto a = hn::Set(d, 0.999f), b = hn::Set(d, 0.001f);
    const auto start = [&](float of) HWY_ATTR { return hn::Set(d, of); };
    auto s0 = start(1.0f), s1 = start(1.1f), s2 = start(1.2f), s3 = start(1.3f), s4 = start(1.4f), s5 = start(1.5f),
         s6 = start(1.6f), s7 = start(1.7f), s8 = start(1.8f), s9 = start(1.9f), s10 = start(2.0f), s11 = start(2.1f);
    for (std::size_t i = 0; i < rounds; ++i) {
        s0 = hn::MulAdd(s0, a, b);
        s1 = hn::MulAdd(s1, a, b);
        s2 = hn::MulAdd(s2, a, b);
        s3 = hn::MulAdd(s3, a, b);
        s4 = hn::MulAdd(s4, a, b);
        s5 = hn::MulAdd(s5, a, b);
        s6 = hn::MulAdd(s6, a, b);
        s7 = hn::MulAdd(s7, a, b);
        s8 = hn::MulAdd(s8, a, b);
        s9 = hn::MulAdd(s9, a, b);
        s10 = hn::MulAdd(s10, a, b);
        s11 = hn::MulAdd(s11, a, b);
    }
    const auto sum = hn::Add(hn::Add(hn::Add(s0, s1), hn::Add(s2, s3)), hn::Add(hn::Add(s4, s5), hn::Add(s6, s7)));
    *sink = hn::GetLane(hn::SumOfLanes(d, hn::Add(sum, hn::Add(hn::Add(s8, s9), hn::Add(s10, s11)))));
    return static_cast<double>(rounds) * 12.0 * 2.0 * static_cast<double>(hn::Lanes(d));
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::bench
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap::bench {
HWY_EXPORT(Run);

double multiply_add_peak() {
    double best = 0.0;
    volatile float kept = 0.0f;
    for (int i = 0; i < 60; ++i) {
        float sink = 0.0f;
        const auto before = std::chrono::steady_clock::now();
        const double flops = HWY_DYNAMIC_DISPATCH(Run)(300'000, &sink);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - before;
        kept = sink;
        best = std::max(best, flops / took.count());
    }
    (void)kept;
    return best;
}

}  // namespace howlmap::bench
#endif
