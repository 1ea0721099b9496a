// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/kernel/loops.h"

#include <algorithm>
#include <cmath>

#undef HWY_DISABLED_TARGETS
#define HWY_DISABLED_TARGETS (HWY_SSSE3 | HWY_AVX3_DL)
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/maps/kernel/loops.cpp"
#include "hwy/foreach_target.h"
// After foreach_target.h, which includes this file once for every target.
#include "core/units/complex_lanes-inl.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

using D = hn::CappedTag<double, kOctet>;
using V = hn::Vec<D>;

using howlmap::HWY_NAMESPACE::ComplexLanes;
using C = ComplexLanes<V>;
using howlmap::HWY_NAMESPACE::Delayed;

HWY_INLINE C InverseOf(C a) { return Inverse(D(), a, 1e-280); }
HWY_INLINE C None() { return {hn::Zero(D()), hn::Zero(D())}; }
/// Complex values stored by (re, im), eight each.
HWY_INLINE C Load(const double* from, std::size_t lane) {
    return {hn::Load(D(), from + lane), hn::Load(D(), from + kOctet + lane)};
}
HWY_INLINE void Store(C value, double* to, std::size_t lane) {
    hn::Store(value.re, D(), to + lane);
    hn::Store(value.im, D(), to + kOctet + lane);
}
HWY_INLINE C At(const Curve& curve, std::size_t at) {
    return {hn::Load(D(), curve.re.data() + at), hn::Load(D(), curve.im.data() + at)};
}

void AddLeg(const Leg8& leg, const Octet* octets, std::size_t count, Curve& curve) {
    const D d;
    for (std::size_t o = 0; o < count; ++o)
        for (std::size_t lane = 0; lane < kOctet; lane += hn::Lanes(d)) {
            const Octet& octet = octets[o];
            const std::size_t at = o * kOctet + lane;
            const V point = hn::Iota(d, static_cast<double>(lane));
            const V hz = hn::MulAdd(point, hn::Set(d, octet.step_hz), hn::Set(d, octet.low_hz));
            const C phasor = Delayed(d, hn::Mul(hz, hn::Set(d, leg.delay_s)));
            V gain;
            if (leg.bin_gains) {
                const double below = leg.bin_gains[octet.bin], above = leg.bin_gains[octet.bin + 1];
                const V share = hn::MulAdd(point, hn::Set(d, octet.rise), hn::Set(d, octet.at));
                gain = hn::MulAdd(share, hn::Set(d, above - below), hn::Set(d, below));
            } else {
                gain = hn::LoadU(d, leg.fine_gains + at);
            }
            hn::Store(hn::MulAdd(gain, phasor.re, hn::Load(d, curve.re.data() + at)), d, curve.re.data() + at);
            hn::Store(hn::MulAdd(gain, phasor.im, hn::Load(d, curve.im.data() + at)), d, curve.im.data() + at);
        }
}

/// heard[c, m] = B_c P_c sum over the bus's loudspeakers of H Rl, for all inputs but one.
HWY_INLINE void Hear(const Wiring& w, const LoopCurves& curves, std::size_t at, std::size_t opened, std::size_t lane,
                     double* heard) {
    for (std::size_t c = 0; c < w.inputs; ++c) {
        if (c == opened) continue;
        const C factor = Times(At(*curves.b[c], at), At(*curves.p[c], at));
        std::size_t slot = 0;
        for (std::size_t m = 0; m < w.buses; ++m) {
            C sum = None();
            for (; slot < w.slots.size() && w.slots[slot].bus == m; ++slot) {
                const std::size_t speaker = w.slots[slot].speaker;
                sum = TimesPlus(At(*curves.h[c * w.speakers + speaker], at), At(*curves.r[speaker], at), sum);
            }
            Store(Times(sum, factor), heard + (c * w.buses + m) * 2 * kOctet, lane);
        }
    }
}

/// G[m, n] = E_m sum over the inputs but one of S[m, c] heard[c, n].
HWY_INLINE void BringBack(const Wiring& w, const LoopCurves& curves, std::size_t at, std::size_t opened,
                          std::size_t lane, const double* heard, double* matrix) {
    for (std::size_t m = 0; m < w.buses; ++m)
        for (std::size_t n = 0; n < w.buses; ++n) {
            C sum = None();
            for (std::size_t c = 0; c < w.inputs; ++c) {
                const double send = w.sends[m * w.inputs + c];
                if (c == opened || send == 0.0) continue;
                sum = Plus(sum, Scaled(Load(heard + (c * w.buses + n) * 2 * kOctet, lane), hn::Set(D(), send)));
            }
            Store(Times(sum, At(*curves.e[m], at)), matrix + (m * w.buses + n) * 2 * kOctet, lane);
        }
}

HWY_INLINE void Square(const double* matrix, std::size_t n, std::size_t lane, double* square) {
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j) {
            C sum = None();
            for (std::size_t k = 0; k < n; ++k)
                sum = TimesPlus(Load(matrix + (i * n + k) * 2 * kOctet, lane),
                                Load(matrix + (k * n + j) * 2 * kOctet, lane), sum);
            Store(sum, square + (i * n + j) * 2 * kOctet, lane);
        }
}

/// Eighth power by squaring three times; the norm of G^8 to the power 1/8 is at least the largest eigenvalue.
HWY_INLINE void Bound(std::size_t n, std::size_t lane, LoopScratch& scratch, double* bound) {
    const D d;
    Square(scratch.matrix.data(), n, lane, scratch.power.data());
    Square(scratch.power.data(), n, lane, scratch.square.data());
    Square(scratch.square.data(), n, lane, scratch.power.data());
    V sum = hn::Zero(d);
    for (std::size_t i = 0; i < n * n; ++i) sum = hn::Add(sum, Norm(Load(scratch.power.data() + i * 2 * kOctet, lane)));
    const V fourth = hn::Sqrt(hn::Sqrt(sum));  // |.|^2 to the power 1/16
    hn::Store(hn::Sqrt(hn::Sqrt(fourth)), d, bound + lane);
}

/// Rows i and k exchanged in the lanes of a mask, from column k on and in the right-hand side.
template <class M>
HWY_INLINE void Exchange(M mask, double* matrix, double* column, std::size_t n, std::size_t i, std::size_t k,
                         std::size_t lane) {
    const auto swap = [&](double* a, double* b) HWY_ATTR {
        const C x = Load(a, lane), y = Load(b, lane);
        Store({hn::IfThenElse(mask, y.re, x.re), hn::IfThenElse(mask, y.im, x.im)}, a, lane);
        Store({hn::IfThenElse(mask, x.re, y.re), hn::IfThenElse(mask, x.im, y.im)}, b, lane);
    };
    for (std::size_t j = k; j < n; ++j) swap(matrix + (i * n + j) * 2 * kOctet, matrix + (k * n + j) * 2 * kOctet);
    swap(column + i * 2 * kOctet, column + k * 2 * kOctet);
}

/// Gaussian elimination with the largest pivot of each lane; the solution stands in `column`.
HWY_INLINE void Solve(double* matrix, double* column, std::size_t n, std::size_t lane) {
    const D d;
    const auto cell = [&](std::size_t i, std::size_t j) { return matrix + (i * n + j) * 2 * kOctet; };
    for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t i = k + 1; i < n; ++i) {
            const auto larger = hn::Gt(Norm(Load(cell(i, k), lane)), Norm(Load(cell(k, k), lane)));
            if (!hn::AllFalse(d, larger)) Exchange(larger, matrix, column, n, i, k, lane);
        }
        const C over = InverseOf(Load(cell(k, k), lane));
        for (std::size_t i = k + 1; i < n; ++i) {
            const C factor = Times(Load(cell(i, k), lane), over);
            for (std::size_t j = k + 1; j < n; ++j)
                Store(Minus(Load(cell(i, j), lane), Times(factor, Load(cell(k, j), lane))), cell(i, j), lane);
            Store(Minus(Load(column + i * 2 * kOctet, lane), Times(factor, Load(column + k * 2 * kOctet, lane))),
                  column + i * 2 * kOctet, lane);
        }
    }
    for (std::size_t k = n; k-- > 0;) {
        C sum = Load(column + k * 2 * kOctet, lane);
        for (std::size_t j = k + 1; j < n; ++j)
            sum = Minus(sum, Times(Load(cell(k, j), lane), Load(column + j * 2 * kOctet, lane)));
        Store(Times(sum, InverseOf(Load(cell(k, k), lane))), column + k * 2 * kOctet, lane);
    }
}

HWY_INLINE void OneMinus(double* matrix, std::size_t n, std::size_t lane) {
    const D d;
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j) {
            double* cell = matrix + (i * n + j) * 2 * kOctet;
            const C value = Load(cell, lane);
            Store({hn::Sub(hn::Set(d, i == j ? 1.0 : 0.0), value.re), hn::Neg(value.im)}, cell, lane);
        }
}

HWY_INLINE void FeedbackLanes(const Wiring& w, const LoopCurves& curves, std::size_t at, std::size_t input,
                              std::size_t lane, LoopScratch& scratch, double* drives, double* bound) {
    Hear(w, curves, at, input, lane, scratch.heard.data());
    BringBack(w, curves, at, input, lane, scratch.heard.data(), scratch.matrix.data());
    if (bound) Bound(w.buses, lane, scratch, bound);
    for (std::size_t m = 0; m < w.buses; ++m) {
        const C sent = Times(At(*curves.e[m], at), At(*curves.p[input], at));
        Store(Scaled(sent, hn::Set(D(), w.sends[m * w.inputs + input])), scratch.column.data() + m * 2 * kOctet, lane);
    }
    OneMinus(scratch.matrix.data(), w.buses, lane);
    Solve(scratch.matrix.data(), scratch.column.data(), w.buses, lane);
    for (std::size_t l = 0; l < w.speakers; ++l) {
        C sum = None();
        for (const Wiring::Slot& slot : w.slots)
            if (slot.speaker == l) sum = Plus(sum, Load(scratch.column.data() + slot.bus * 2 * kOctet, lane));
        Store(Times(Times(sum, At(*curves.r[l], at)), At(*curves.b[input], at)), drives + l * 2 * kOctet, lane);
    }
}

void FeedbackOctet(const Wiring& w, const LoopCurves& curves, std::size_t octet, std::size_t input,
                   LoopScratch& scratch, double* drives, double* bound) {
    for (std::size_t lane = 0; lane < kOctet; lane += hn::Lanes(D()))
        FeedbackLanes(w, curves, octet * kOctet + lane, input, lane, scratch, drives, bound);
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap::maps {
HWY_EXPORT(AddLeg);
HWY_EXPORT(FeedbackOctet);

void add_leg(const Leg8& leg, const Octet* octets, std::size_t count, Curve& curve) {
    HWY_DYNAMIC_DISPATCH(AddLeg)(leg, octets, count, curve);
}

void feedback_octet(const Wiring& wiring, const LoopCurves& curves, std::size_t octet, std::size_t input,
                    LoopScratch& scratch, double* drives, double* bound) {
    const std::size_t matrix = wiring.buses * wiring.buses * 2 * kOctet;
    scratch.heard.resize(wiring.inputs * wiring.buses * 2 * kOctet);
    scratch.matrix.resize(matrix);
    scratch.power.resize(matrix);
    scratch.square.resize(matrix);
    scratch.column.resize(wiring.buses * 2 * kOctet);
    HWY_DYNAMIC_DISPATCH(FeedbackOctet)(wiring, curves, octet, input, scratch, drives, bound);
}

}  // namespace howlmap::maps
#endif
