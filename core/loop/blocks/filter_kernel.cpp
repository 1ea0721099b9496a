// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/filter_kernel.h"

#include "core/loop/blocks/block_kernel.h"

// clang-format off
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/loop/blocks/filter_kernel.cpp"
#include "hwy/foreach_target.h"  // IWYU pragma: keep
#include "hwy/highway.h"
#include "core/units/complex_lanes-inl.h"
// clang-format on

HWY_BEFORE_NAMESPACE();
namespace howlmap::HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

void PassSections(const Section* HWY_RESTRICT sections, std::size_t count, double low_hz, double step_hz,
                  Lanes& value) {
    using D = hn::CappedTag<double, kBlockPoints>;
    using C = ComplexLanes<hn::Vec<D>>;
    const D d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        const auto hz = hn::MulAdd(hn::Iota(d, static_cast<double>(at)), hn::Set(d, step_hz), hn::Set(d, low_hz));
        C product{hn::Load(d, value.re + at), hn::Load(d, value.im + at)};
        for (std::size_t i = 0; i < count; ++i) {
            const Section& s = sections[i];
            const auto u = hn::Mul(hz, hn::Set(d, 1.0 / s.hz)), square = hn::Mul(u, u);
            const C over{hn::NegMulAdd(square, hn::Set(d, s.b2), hn::Set(d, s.b0)), hn::Mul(u, hn::Set(d, s.b1))};
            const C under{hn::NegMulAdd(square, hn::Set(d, s.a2), hn::Set(d, s.a0)), hn::Mul(u, hn::Set(d, s.a1))};
            const C inverse = Inverse(d, under, 1e-300);
            product = Times(Times(product, over), inverse);
        }
        hn::Store(product.re, d, value.re + at);
        hn::Store(product.im, d, value.im + at);
    }
}

}  // namespace howlmap::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap {
HWY_EXPORT(PassSections);

void pass_sections(const Section* sections, std::size_t count, double low_hz, double step_hz, Lanes& value) {
    HWY_DYNAMIC_DISPATCH(PassSections)(sections, count, low_hz, step_hz, value);
}

Lanes response_in_block(const Filter& filter, double low_hz, double step_hz) {
    Lanes value;
    double sizes[kBlockPoints];
    for (std::size_t i = 0; i < kBlockPoints; ++i)
        sizes[i] = filter.size_without_sections(low_hz + step_hz * static_cast<double>(i));
    const LegInBlock delay{low_hz * filter.delay_s, step_hz * filter.delay_s, 0.0, 0.0, sizes};
    sum_legs(&delay, 1, value);
    pass_sections(filter.sections.data(), filter.sections.size(), low_hz, step_hz, value);
    return value;
}

namespace {
Lanes body_in_block(const BodyBank& body, double low_hz, double step_hz) {
    Lanes sum{};
    for (double& re : sum.re) re = body.baseline;
    for (const BodyBank::Mode& mode : body.modes) {
        // (j u/Q) / (1 - u^2 + j u/Q), both sides times Q
        const Section resonance{.hz = mode.hz, .b0 = 0.0, .b1 = 1.0, .a0 = mode.q, .a1 = 1.0, .a2 = mode.q};
        Lanes value{};
        for (double& re : value.re) re = mode.gain;
        pass_sections(&resonance, 1, low_hz, step_hz, value);
        for (std::size_t i = 0; i < kBlockPoints; ++i) {
            sum.re[i] += value.re[i];
            sum.im[i] += value.im[i];
        }
    }
    for (std::size_t i = 0; i < kBlockPoints; ++i) {
        sum.re[i] *= body.scale;
        sum.im[i] *= body.scale;
    }
    return sum;
}
}  // namespace

Lanes response_in_block(const InputResponse& response, double low_hz, double step_hz) {
    return response.body() ? body_in_block(*response.body(), low_hz, step_hz)
                           : response_in_block(response.filter(), low_hz, step_hz);
}

}  // namespace howlmap
#endif
