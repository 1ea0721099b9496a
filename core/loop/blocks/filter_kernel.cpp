// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/filter_kernel.h"

#include <algorithm>
#include <cmath>

#include "core/directivity/table.h"
#include "core/loop/blocks/block_kernel.h"

// clang-format off
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/loop/blocks/filter_kernel.cpp"
#include "hwy/foreach_target.h"  // IWYU pragma: keep
#include "hwy/highway.h"
#include "hwy/contrib/math/math-inl.h"
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

void PowerLaw(double first, double exponent, double low_hz, double step_hz, double* HWY_RESTRICT sizes) {
    const hn::CappedTag<double, kBlockPoints> d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        const auto index = hn::Iota(d, static_cast<double>(at));
        const auto ratio = hn::MulAdd(index, hn::Set(d, step_hz / low_hz), hn::Set(d, 1.0));
        const auto power = hn::Exp(d, hn::Mul(hn::Set(d, exponent), hn::Log(d, ratio)));
        hn::StoreU(hn::Mul(hn::Set(d, first), power), d, sizes + at);
    }
}

}  // namespace howlmap::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap {
HWY_EXPORT(PassSections);
HWY_EXPORT(PowerLaw);

void pass_sections(const Section* sections, std::size_t count, double low_hz, double step_hz, Lanes& value) {
    HWY_DYNAMIC_DISPATCH(PassSections)(sections, count, low_hz, step_hz, value);
}

namespace {
/// Gain and table at the points of a block. Between two entries of its table a size is a power of the frequency.
void sizes_in_block(const Filter& filter, double low_hz, double step_hz, double* sizes) {
    if (filter.table_hz.empty()) {
        std::fill_n(sizes, kBlockPoints, filter.gain);
        return;
    }
    const double high_hz = low_hz + step_hz * (kBlockPoints - 1.0);
    const Between low = between_log(filter.table_hz, low_hz), high = between_log(filter.table_hz, high_hz);
    if (filter.gain != 0.0 && low_hz > 0.0 && step_hz > 0.0 && low.low == high.low && low.high == high.high) {
        const double first = filter.size_without_sections(low_hz), last = filter.size_without_sections(high_hz);
        const double exponent = std::log(last / first) / std::log(high_hz / low_hz);
        return HWY_DYNAMIC_DISPATCH(PowerLaw)(first, exponent, low_hz, step_hz, sizes);
    }
    for (std::size_t i = 0; i < kBlockPoints; ++i)
        sizes[i] = filter.size_without_sections(low_hz + step_hz * static_cast<double>(i));
}
}  // namespace

Lanes response_in_block(const Filter& filter, double low_hz, double step_hz) {
    Lanes value;
    double sizes[kBlockPoints];
    sizes_in_block(filter, low_hz, step_hz, sizes);
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
