// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/block_kernel.h"

#include <cmath>

// clang-format off
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/loop/blocks/block_kernel.cpp"
#include "hwy/foreach_target.h"  // IWYU pragma: keep
#include "hwy/highway.h"
#include "hwy/contrib/math/math-inl.h"
#include "core/units/complex_lanes-inl.h"
// clang-format on

HWY_BEFORE_NAMESPACE();
namespace howlmap::HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

using D = hn::CappedTag<double, kBlockPoints>;
using V = hn::Vec<D>;

using C = ComplexLanes<V>;

HWY_INLINE C LoadC(const Lanes& value, std::size_t at) {
    const D d;
    return {hn::Load(d, value.re + at), hn::Load(d, value.im + at)};
}
HWY_INLINE void StoreC(C value, Lanes& to, std::size_t at) {
    const D d;
    hn::Store(value.re, d, to.re + at);
    hn::Store(value.im, d, to.im + at);
}
HWY_INLINE C ZeroC() {
    const D d;
    return {hn::Zero(d), hn::Zero(d)};
}
/// A tiny denominator is held, so that equal guesses give a large number rather than infinity.
HWY_INLINE C InverseC(C a) { return Inverse(D(), a, 1e-60); }

void SumLegs(const LegInBlock* HWY_RESTRICT legs, std::size_t count, Lanes& sum) {
    const D d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        const V index = hn::Iota(d, static_cast<double>(at));
        C total = ZeroC();
        for (std::size_t i = 0; i < count; ++i) {
            const V turns = hn::MulAdd(index, hn::Set(d, legs[i].turns_step), hn::Set(d, legs[i].turns));
            const V gain = legs[i].by_point ? hn::LoadU(d, legs[i].by_point + at)
                                            : hn::MulAdd(index, hn::Set(d, legs[i].slope), hn::Set(d, legs[i].gain));
            const C phasor = Delayed(d, turns);
            total.re = hn::MulAdd(phasor.re, gain, total.re);
            total.im = hn::MulAdd(phasor.im, gain, total.im);
        }
        StoreC(total, sum, at);
    }
}

/// The upper 53 bits as a number in [0, 1).
template <class DU>
HWY_INLINE V Unit(DU du, hn::Vec<DU> z) {
    const D d;
    const hn::RebindToSigned<D> di;
    (void)du;
    return hn::Mul(hn::ConvertTo(d, hn::BitCast(di, hn::ShiftRight<11>(z))), hn::Set(d, 0x1p-53));
}

void GaussianKnots(const std::uint64_t* HWY_RESTRICT states, std::uint64_t offset, std::size_t count,
                   double* HWY_RESTRICT re, double* HWY_RESTRICT im) {
    const D d;
    const hn::RebindToUnsigned<D> du;
    for (std::size_t i = 0; i < count; i += hn::Lanes(d)) {
        const auto state = hn::Add(hn::LoadU(du, states + i), hn::Set(du, offset));
        const V u1 = Unit(du, SplitMix(du, state));
        const V u2 = Unit(du, SplitMix(du, hn::Add(state, hn::Set(du, 0x9E3779B97F4A7C15u))));
        const V size = hn::Sqrt(hn::Neg(hn::Log(d, hn::Sub(hn::Set(d, 1.0), u1))));
        const C phasor = Delayed(d, hn::Neg(u2));
        hn::StoreU(hn::Mul(phasor.re, size), d, re + i);
        hn::StoreU(hn::Mul(phasor.im, size), d, im + i);
    }
}

void AddRoom(const double* re, const double* im, std::size_t stride, std::size_t knots,
             const RealLanes* HWY_RESTRICT weights, Complex scale, double rms, double rise, Lanes& sum) {
    const D d;
    const C turn{hn::Set(d, scale.real()), hn::Set(d, scale.imag())};
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        C z = ZeroC();
        for (std::size_t k = 0; k < knots; ++k) {
            const V weight = hn::Load(d, weights[k].v + at);
            z.re = hn::MulAdd(hn::Set(d, re[k * stride]), weight, z.re);
            z.im = hn::MulAdd(hn::Set(d, im[k * stride]), weight, z.im);
        }
        const V size = hn::MulAdd(hn::Iota(d, static_cast<double>(at)), hn::Set(d, rise), hn::Set(d, rms));
        StoreC(Plus(LoadC(sum, at), Times(Scaled(z, size), turn)), sum, at);
    }
}

using DF = hn::CappedTag<float, 16>;
using VF = hn::Vec<DF>;

/// exp(x) for x <= 0; what is fainter than -80 Np counts as that.
HWY_INLINE VF ExpDown(VF x) {
    const DF d;
    return hn::Exp(d, hn::Max(x, hn::Set(d, -80.0F)));
}

void GainsOfLeg(const LegGains& leg, std::size_t count, float* HWY_RESTRICT gains) {
    const DF d;
    // Arrays are padded to whole vectors by their owner.
    for (std::size_t i = 0; i < count; i += hn::Lanes(d)) {
        VF exponent = hn::Mul(hn::LoadU(d, leg.air + i), hn::Set(d, -leg.metres));
        if (leg.across) {
            const VF square = hn::MulAdd(hn::LoadU(d, leg.across + i), hn::Set(d, leg.across_weight),
                                         hn::Mul(hn::LoadU(d, leg.above + i), hn::Set(d, leg.above_weight)));
            const VF left = ExpDown(hn::Mul(square, hn::Set(d, leg.decay)));
            exponent = hn::NegMulAdd(hn::Set(d, leg.depth), hn::Sub(hn::Set(d, 1.0F), left), exponent);
        }
        VF gain = hn::Mul(ExpDown(exponent), hn::Set(d, leg.factor));
        if (leg.scale) gain = hn::Mul(gain, hn::LoadU(d, leg.scale + i));
        hn::StoreU(gain, d, gains + i);
    }
}

/// A[input, bus]: what each input hears, times B P, of what each bus sends. Slots come bus by bus.
HWY_INLINE void HeardFromBuses(const Wiring& w, const Lanes* h, const Lanes* hears, const Lanes* speaks, std::size_t at,
                               Lanes* heard) {
    for (std::size_t c = 0; c < w.inputs; ++c) {
        const C factor = LoadC(hears[c], at);
        std::size_t slot = 0;
        for (std::size_t m = 0; m < w.buses; ++m) {
            C sum = ZeroC();
            for (; slot < w.slots.size() && w.slots[slot].bus == m; ++slot)
                sum = TimesPlus(LoadC(h[c * w.speakers + w.slots[slot].speaker], at), LoadC(speaks[slot], at), sum);
            StoreC(Times(sum, factor), heard[c * w.buses + m], at);
        }
    }
}

void LoopMatrix(const Wiring& w, const Lanes* h, const Lanes* hears, const Lanes* speaks, Lanes* heard,
                Lanes* HWY_RESTRICT matrix) {
    const D d;
    const std::size_t n = w.size();
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        HeardFromBuses(w, h, hears, speaks, at, heard);
        for (std::size_t i = 0; i < n * n; ++i) StoreC(ZeroC(), matrix[i], at);
        for (std::size_t m = 0; m < w.buses; ++m)
            for (std::size_t c = 0; c < w.inputs; ++c) {
                if (w.sends[m * w.inputs + c] == 0.0) continue;
                const V send = hn::Set(d, w.sends[m * w.inputs + c]);
                // By buses: row m gains what input c hears of every bus. By inputs: column c gains what each input
                // hears of bus m.
                const Lanes* from = w.by_inputs() ? heard + m : heard + c * w.buses;
                Lanes* to = w.by_inputs() ? matrix + c : matrix + m * n;
                const std::size_t step_from = w.by_inputs() ? w.buses : 1, step_to = w.by_inputs() ? n : 1;
                for (std::size_t j = 0; j < n; ++j, from += step_from, to += step_to) {
                    const C value = LoadC(*from, at), sum = LoadC(*to, at);
                    StoreC({hn::MulAdd(value.re, send, sum.re), hn::MulAdd(value.im, send, sum.im)}, *to, at);
                }
            }
    }
}

/// Magnitudes of one row, and their sum.
HWY_INLINE V RowSizes(const Wiring& w, const Lanes* HWY_RESTRICT heard, std::size_t at, RealLanes* HWY_RESTRICT row) {
    const D d;
    V total = hn::Zero(d);
    for (std::size_t from = 0; from < w.inputs; ++from) {
        C sum = ZeroC();
        for (std::size_t m = 0; m < w.buses; ++m) {
            const double send = w.sends[m * w.inputs + from];
            if (send == 0.0) continue;
            const C value = LoadC(heard[m], at);
            sum = {hn::MulAdd(value.re, hn::Set(d, send), sum.re), hn::MulAdd(value.im, hn::Set(d, send), sum.im)};
        }
        const V size = hn::Sqrt(Norm(sum));
        hn::Store(size, d, row[from].v + at);
        total = hn::Add(total, size);
    }
    return total;
}

void LoopSizes(const Wiring& w, const Lanes* HWY_RESTRICT heard, RealLanes* HWY_RESTRICT sizes, RealLanes& bounds) {
    const D d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        V rows = hn::Zero(d), columns = hn::Zero(d);
        for (std::size_t c = 0; c < w.inputs; ++c)
            rows = hn::Max(rows, RowSizes(w, heard + c * w.buses, at, sizes + c * w.inputs));
        for (std::size_t from = 0; from < w.inputs; ++from) {
            V sum = hn::Zero(d);
            for (std::size_t c = 0; c < w.inputs; ++c)
                sum = hn::Add(sum, hn::Load(d, sizes[c * w.inputs + from].v + at));
            columns = hn::Max(columns, sum);
        }
        hn::Store(hn::Min(rows, columns), d, bounds.v + at);
    }
}

void MultiplyMatrices(const Lanes* HWY_RESTRICT a, const Lanes* HWY_RESTRICT b, std::size_t n,
                      Lanes* HWY_RESTRICT product) {
    const D d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d))
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t j = 0; j < n; ++j) {
                C sum = ZeroC();
                for (std::size_t k = 0; k < n; ++k)
                    sum = TimesPlus(LoadC(a[i * n + k], at), LoadC(b[k * n + j], at), sum);
                StoreC(sum, product[i * n + j], at);
            }
}

void FrobeniusSquare(const Lanes* HWY_RESTRICT matrix, std::size_t n, RealLanes& square) {
    const D d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        V sum = hn::Zero(d);
        for (std::size_t i = 0; i < n * n; ++i) sum = hn::Add(sum, Norm(LoadC(matrix[i], at)));
        hn::Store(sum, d, square.v + at);
    }
}

void BoundsFromSquares(const RealLanes* HWY_RESTRICT squares, std::size_t count, RealLanes& bounds) {
    const D d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        V least = hn::Set(d, 1e300);
        for (std::size_t k = 0; k < count; ++k) {
            const V square = hn::Max(hn::Load(d, squares[k].v + at), hn::Set(d, 1e-280));
            const double root = 0.5 / static_cast<double>(k + 1);
            least = hn::Min(least, hn::Mul(hn::Log(d, square), hn::Set(d, root)));
        }
        hn::Store(hn::Exp(d, least), d, bounds.v + at);
    }
}

void TraceOfProduct(const Lanes* HWY_RESTRICT a, const Lanes* HWY_RESTRICT b, std::size_t n, Lanes& trace) {
    const D d;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        C sum = ZeroC();
        for (std::size_t i = 0; i < n; ++i)
            for (std::size_t k = 0; k < n; ++k) sum = TimesPlus(LoadC(a[i * n + k], at), LoadC(b[k * n + i], at), sum);
        StoreC(sum, trace, at);
    }
}

/// Coefficients a_1 .. a_n of z^n + a_1 z^(n-1) + .. + a_n from the power sums of its roots.
HWY_INLINE void NewtonIdentities(const Lanes* sums, std::size_t n, std::size_t at, Lanes* coefficients) {
    const D d;
    for (std::size_t k = 1; k <= n; ++k) {
        C total = LoadC(sums[k - 1], at);
        for (std::size_t i = 1; i < k; ++i)
            total = TimesPlus(LoadC(coefficients[i - 1], at), LoadC(sums[k - i - 1], at), total);
        StoreC(Scaled(total, hn::Set(d, -1.0 / static_cast<double>(k))), coefficients[k - 1], at);
    }
}

/// One step of Aberth's iteration for root i; returns the square of its change.
HWY_INLINE V AberthStep(const Lanes* coefficients, std::size_t n, std::size_t i, std::size_t at, Lanes* roots) {
    const D d;
    const C z = LoadC(roots[i], at);
    C value = {hn::Set(d, 1.0), hn::Zero(d)}, slope = ZeroC();
    for (std::size_t k = 0; k < n; ++k) {
        slope = TimesPlus(slope, z, value);
        value = TimesPlus(value, z, LoadC(coefficients[k], at));
    }
    C others = ZeroC();
    for (std::size_t j = 0; j < n; ++j)
        if (j != i) others = Plus(others, InverseC(Minus(z, LoadC(roots[j], at))));
    // w = p / (p' - p sum 1 / (z - z_j))
    const C change = Times(value, InverseC(Minus(slope, Times(value, others))));
    StoreC(Minus(z, change), roots[i], at);
    // Roots close to 0 do not matter and converge slowly where there are several.
    const V counts = hn::IfThenElseZero(hn::Gt(Norm(z), hn::Set(d, 0.01)), Norm(change));
    return counts;
}

void RootsFromPowerSums(const Lanes* HWY_RESTRICT sums, std::size_t n, Lanes* HWY_RESTRICT roots, RealLanes& moved) {
    const D d;
    Lanes coefficients[kMostRoots];
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(d)) {
        NewtonIdentities(sums, n, at, coefficients);
        for (std::size_t i = 0; i < n; ++i) {
            const double angle = 6.283185307179586 * static_cast<double>(i) / static_cast<double>(n) + 0.4;
            StoreC({hn::Set(d, 0.7 * std::cos(angle)), hn::Set(d, 0.7 * std::sin(angle))}, roots[i], at);
        }
        V largest = hn::Zero(d);
        for (int pass = 0; pass < 40; ++pass) {
            largest = hn::Zero(d);
            for (std::size_t i = 0; i < n; ++i) largest = hn::Max(largest, AberthStep(coefficients, n, i, at, roots));
            if (hn::AllTrue(d, hn::Lt(largest, hn::Set(d, 1e-12)))) break;  // the next step would be 1e-18 or so
        }
        hn::Store(largest, d, moved.v + at);
    }
}

}  // namespace howlmap::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap {
HWY_EXPORT(SumLegs);
HWY_EXPORT(GainsOfLeg);
HWY_EXPORT(GaussianKnots);
HWY_EXPORT(AddRoom);
HWY_EXPORT(LoopMatrix);
HWY_EXPORT(LoopSizes);
HWY_EXPORT(MultiplyMatrices);
HWY_EXPORT(FrobeniusSquare);
HWY_EXPORT(BoundsFromSquares);
HWY_EXPORT(TraceOfProduct);
HWY_EXPORT(RootsFromPowerSums);

void sum_legs(const LegInBlock* legs, std::size_t count, Lanes& sum) {
    HWY_DYNAMIC_DISPATCH(SumLegs)(legs, count, sum);
}
void leg_gains(const LegGains& leg, std::size_t count, float* gains) {
    HWY_DYNAMIC_DISPATCH(GainsOfLeg)(leg, count, gains);
}
void gaussian_knots(const std::uint64_t* states, std::uint64_t offset, std::size_t count, double* re, double* im) {
    HWY_DYNAMIC_DISPATCH(GaussianKnots)(states, offset, count, re, im);
}
void add_room(const double* re, const double* im, std::size_t stride, std::size_t knots, const RealLanes* weights,
              Complex scale, double rms, double rise, Lanes& sum) {
    HWY_DYNAMIC_DISPATCH(AddRoom)(re, im, stride, knots, weights, scale, rms, rise, sum);
}
void loop_matrix(const Wiring& wiring, const Lanes* h, const Lanes* hears, const Lanes* speaks, Lanes* scratch,
                 Lanes* matrix) {
    HWY_DYNAMIC_DISPATCH(LoopMatrix)(wiring, h, hears, speaks, scratch, matrix);
}
RealLanes loop_sizes(const Wiring& wiring, const Lanes* heard, RealLanes* sizes) {
    RealLanes bounds;
    HWY_DYNAMIC_DISPATCH(LoopSizes)(wiring, heard, sizes, bounds);
    return bounds;
}
void multiply_matrices(const Lanes* a, const Lanes* b, std::size_t n, Lanes* product) {
    HWY_DYNAMIC_DISPATCH(MultiplyMatrices)(a, b, n, product);
}
RealLanes frobenius_square(const Lanes* matrix, std::size_t n) {
    RealLanes square;
    HWY_DYNAMIC_DISPATCH(FrobeniusSquare)(matrix, n, square);
    return square;
}
RealLanes bounds_from_squares(const RealLanes* squares, std::size_t count) {
    RealLanes bounds;
    HWY_DYNAMIC_DISPATCH(BoundsFromSquares)(squares, count, bounds);
    return bounds;
}
void trace_of_product(const Lanes* a, const Lanes* b, std::size_t n, Lanes& trace) {
    HWY_DYNAMIC_DISPATCH(TraceOfProduct)(a, b, n, trace);
}
RealLanes roots_from_power_sums(const Lanes* sums, std::size_t n, Lanes* roots) {
    RealLanes moved;
    HWY_DYNAMIC_DISPATCH(RootsFromPowerSums)(sums, n, roots, moved);
    return moved;
}
}  // namespace howlmap
#endif
