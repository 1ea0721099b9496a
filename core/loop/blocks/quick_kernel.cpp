// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/quick_kernel.h"

#include <cmath>

// clang-format off
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "core/loop/blocks/quick_kernel.cpp"
#include "hwy/foreach_target.h"  // IWYU pragma: keep
#include "hwy/highway.h"
#include "hwy/contrib/math/math-inl.h"
#include "core/units/complex_lanes-inl.h"
// clang-format on

HWY_BEFORE_NAMESPACE();
namespace howlmap::HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

using F = hn::CappedTag<float, kBlockPoints>;
using V = hn::Vec<F>;

using Q = ComplexLanes<V>;

HWY_INLINE V SetV(float value) { return hn::Set(F(), value); }
HWY_INLINE Q LoadQ(const QuickLanes& value, std::size_t at) {
    return {hn::Load(F(), value.re + at), hn::Load(F(), value.im + at)};
}
HWY_INLINE void StoreQ(Q value, QuickLanes& to, std::size_t at) {
    hn::Store(value.re, F(), to.re + at);
    hn::Store(value.im, F(), to.im + at);
}
HWY_INLINE Q ZeroQ() { return {hn::Zero(F()), hn::Zero(F())}; }

void QuickSteps(const double* HWY_RESTRICT delays, std::size_t count, double step_hz, QuickLanes* HWY_RESTRICT steps) {
    const F f;
    for (std::size_t leg = 0; leg < count; ++leg) {
        const V step = SetV(static_cast<float>(-step_hz * delays[leg]));
        for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(f)) {
            const V turns = hn::Mul(hn::Iota(f, static_cast<float>(at)), step);
            StoreQ(Phasor(F(), hn::Sub(turns, hn::Round(turns))), steps[leg], at);
        }
    }
}

void QuickBetween(const float* HWY_RESTRICT low, const float* HWY_RESTRICT high, std::size_t count, float t, float step,
                  float* HWY_RESTRICT at, float* HWY_RESTRICT rise) {
    const F f;
    for (std::size_t i = 0; i < count; i += hn::Lanes(f)) {
        const V from = hn::LoadU(f, low + i), span = hn::Sub(hn::LoadU(f, high + i), from);
        hn::StoreU(hn::MulAdd(SetV(t), span, from), f, at + i);
        hn::StoreU(hn::Mul(SetV(step), span), f, rise + i);
    }
}

#if HWY_TARGET == HWY_SCALAR
HWY_INLINE V Turns(const double* delays, double low_hz) {
    const double turns = -low_hz * delays[0];
    return SetV(static_cast<float>(turns - std::round(turns)));
}
#else
using DU = hn::RepartitionToWide<hn::RebindToUnsigned<F>>;  // half as many numbers of twice the width
using DD = hn::RebindToFloat<DU>;

/// What is left of the turns of some legs, whole ones taken off.
HWY_INLINE V Turns(const double* delays, double low_hz) {
    const DD dd;
    const hn::Rebind<float, DD> half;
    const auto frequency = hn::Set(dd, -low_hz);
    const auto low = hn::Mul(hn::LoadU(dd, delays), frequency);
    const auto high = hn::Mul(hn::LoadU(dd, delays + hn::Lanes(dd)), frequency);
    return hn::Combine(F(), hn::DemoteTo(half, hn::Sub(high, hn::Round(high))),
                       hn::DemoteTo(half, hn::Sub(low, hn::Round(low))));
}
#endif

void QuickStartsOf(const double* HWY_RESTRICT delays, const float* HWY_RESTRICT gains, const float* HWY_RESTRICT rises,
                   std::size_t count, double low_hz, QuickStarts& starts) {
    const F f;
    for (std::size_t leg = 0; leg < count; leg += hn::Lanes(f)) {
        const Q phasor = Phasor(F(), Turns(delays + leg, low_hz));
        const V gain = hn::LoadU(f, gains + leg), rise = hn::LoadU(f, rises + leg);
        hn::StoreU(hn::Mul(phasor.re, gain), f, starts.re.data() + leg);
        hn::StoreU(hn::Mul(phasor.im, gain), f, starts.im.data() + leg);
        hn::StoreU(hn::Mul(phasor.re, rise), f, starts.rise_re.data() + leg);
        hn::StoreU(hn::Mul(phasor.im, rise), f, starts.rise_im.data() + leg);
    }
}

void QuickPaths(const std::uint32_t* HWY_RESTRICT first, std::size_t pairs, const QuickLanes* HWY_RESTRICT steps,
                const QuickStarts& starts, QuickLanes* HWY_RESTRICT h) {
    const F f;
    const float *re = starts.re.data(), *im = starts.im.data(), *rise_re = starts.rise_re.data(),
                *rise_im = starts.rise_im.data();
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(f)) {
        const V index = hn::Iota(f, static_cast<float>(at));
        for (std::size_t pair = 0; pair < pairs; ++pair) {
            Q sum = ZeroQ(), rising = ZeroQ();
            for (std::size_t leg = first[pair]; leg < first[pair + 1]; ++leg) {
                const Q step = LoadQ(steps[leg], at);
                sum = TimesPlus(step, {SetV(re[leg]), SetV(im[leg])}, sum);
                rising = TimesPlus(step, {SetV(rise_re[leg]), SetV(rise_im[leg])}, rising);
            }
            StoreQ({hn::MulAdd(index, rising.re, sum.re), hn::MulAdd(index, rising.im, sum.im)}, h[pair], at);
        }
    }
}

constexpr std::uint64_t kNext = 0x9E3779B97F4A7C15u;  // from one number of the generator to the next
using U = hn::Vec<hn::RebindToUnsigned<F>>;

// States of the generator, one for each lane of a float, and the upper 32 bits of the outputs that they give.
#if HWY_TARGET == HWY_SCALAR
struct States {
    std::uint64_t z;
};
HWY_INLINE States SetStates(std::uint64_t first, std::uint64_t step) { return (void)step, States{first}; }
HWY_INLINE States LoadStates(const std::uint64_t* states) { return {*states}; }
HWY_INLINE States AddStates(States a, States b) { return {a.z + b.z}; }
HWY_INLINE U Outputs(States states) {
    std::uint64_t z = states.z;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9u;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EBu;
    return hn::Set(hn::RebindToUnsigned<F>(), static_cast<std::uint32_t>((z ^ (z >> 31)) >> 32));
}
#else
struct States {
    hn::Vec<DU> low, high;
};
HWY_INLINE States SetStates(std::uint64_t first, std::uint64_t step) {
    const DU d;
    const auto along = hn::Mul(hn::Iota(d, 0), hn::Set(d, step));
    return {hn::Add(along, hn::Set(d, first)), hn::Add(along, hn::Set(d, first + step * hn::Lanes(d)))};
}
HWY_INLINE States LoadStates(const std::uint64_t* states) {
    const DU d;
    return {hn::LoadU(d, states), hn::LoadU(d, states + hn::Lanes(d))};
}
HWY_INLINE States AddStates(States a, States b) { return {hn::Add(a.low, b.low), hn::Add(a.high, b.high)}; }
HWY_INLINE U Outputs(States states) {
    const hn::RebindToUnsigned<F> du;
    return hn::ConcatOdd(du, hn::BitCast(du, SplitMix(DU(), states.high)), hn::BitCast(du, SplitMix(DU(), states.low)));
}
#endif

/// A complex Gaussian number from two neighbouring outputs, of which the upper 32 bits are enough here.
HWY_INLINE Q Gaussian(States states) {
    const F f;
    const hn::RebindToSigned<F> di;
    const U first = Outputs(states), second = Outputs(AddStates(states, SetStates(kNext, 0)));
    // 1 - u1, by its upper 31 bits and a half of the next
    const V left = hn::Add(hn::ConvertTo(f, hn::BitCast(di, hn::ShiftRight<1>(hn::Not(first)))), SetV(0.5F));
    const V size = hn::Sqrt(hn::Max(hn::Neg(hn::Log(f, hn::Mul(left, SetV(0x1p-31F)))), SetV(0.0F)));
    const Q phasor = Phasor(F(), hn::Mul(hn::ConvertTo(f, hn::BitCast(di, second)), SetV(0x1p-32F)));
    return {hn::Mul(phasor.re, size), hn::Mul(phasor.im, size)};
}

void QuickRoomAtKnots(const std::uint64_t* HWY_RESTRICT states, std::uint64_t offset, std::size_t pairs,
                      const float* HWY_RESTRICT rms, const float* HWY_RESTRICT rise, QuickLanes* HWY_RESTRICT h) {
    const F f;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(f)) {
        const V index = hn::Iota(f, static_cast<float>(at));
        const States along = SetStates(offset + 2 * kNext * at, 2 * kNext);
        for (std::size_t pair = 0; pair < pairs; ++pair) {
            const Q z = Gaussian(AddStates(along, SetStates(states[pair], 0)));
            const V size = hn::MulAdd(index, SetV(rise[pair]), SetV(rms[pair]));
            const Q sum = LoadQ(h[pair], at);
            StoreQ({hn::MulAdd(z.re, size, sum.re), hn::MulAdd(z.im, size, sum.im)}, h[pair], at);
        }
    }
}

void QuickGaussians(const std::uint64_t* HWY_RESTRICT states, std::uint64_t offset, std::size_t count,
                    float* HWY_RESTRICT re, float* HWY_RESTRICT im) {
    const F f;
    const States on = SetStates(offset, 0);
    for (std::size_t i = 0; i < count; i += hn::Lanes(f)) {
        const Q z = Gaussian(AddStates(LoadStates(states + i), on));
        hn::StoreU(z.re, f, re + i);
        hn::StoreU(z.im, f, im + i);
    }
}

void QuickRoom(const float* HWY_RESTRICT re, const float* HWY_RESTRICT im, std::size_t stride, std::size_t knots,
               const QuickRealLanes* HWY_RESTRICT weights, std::size_t pairs, const float* HWY_RESTRICT rms,
               const float* HWY_RESTRICT rise, QuickLanes* HWY_RESTRICT h) {
    const F f;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(f)) {
        const V index = hn::Iota(f, static_cast<float>(at));
        for (std::size_t pair = 0; pair < pairs; ++pair) {
            Q z = ZeroQ();
            for (std::size_t k = 0; k < knots; ++k) {
                const V weight = hn::Load(f, weights[k].v + at);
                z.re = hn::MulAdd(SetV(re[k * stride + pair]), weight, z.re);
                z.im = hn::MulAdd(SetV(im[k * stride + pair]), weight, z.im);
            }
            const V size = hn::MulAdd(index, SetV(rise[pair]), SetV(rms[pair]));
            const Q sum = LoadQ(h[pair], at);
            StoreQ({hn::MulAdd(z.re, size, sum.re), hn::MulAdd(z.im, size, sum.im)}, h[pair], at);
        }
    }
}

/// What each input hears, times B P, of what each bus sends. Slots come bus by bus.
HWY_INLINE void HeardFromBuses(const Wiring& w, const QuickLanes* h, const QuickLanes* hears, const QuickLanes* sent,
                               std::size_t at, QuickLanes* HWY_RESTRICT heard) {
    for (std::size_t c = 0; c < w.inputs; ++c) {
        const Q factor = LoadQ(hears[c], at);
        std::size_t slot = 0;
        for (std::size_t m = 0; m < w.buses; ++m) {
            Q sum = ZeroQ();
            for (; slot < w.slots.size() && w.slots[slot].bus == m; ++slot)
                sum = TimesPlus(LoadQ(h[c * w.speakers + w.slots[slot].speaker], at), LoadQ(sent[slot], at), sum);
            StoreQ(Times(sum, factor), heard[c * w.buses + m], at);
        }
    }
}

void QuickMatrix(const Wiring& w, const QuickSends& sends, const QuickLanes* h, const QuickLanes* hears,
                 const QuickLanes* speaks, const std::complex<float>* phases, const float* factors,
                 QuickLanes* HWY_RESTRICT heard, QuickLanes* HWY_RESTRICT matrix) {
    const F f;
    const std::size_t n = w.size();
    QuickLanes* sent = heard + w.inputs * w.buses;
    // What was heard of a bus lies along a column, what an input heard along a row.
    const std::size_t along = w.by_inputs() ? w.buses : 1, across = w.by_inputs() ? 1 : w.buses;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(f)) {
        for (std::size_t slot = 0; slot < w.slots.size(); ++slot) {
            const std::complex<float> phase = phases[w.slots[slot].speaker];
            StoreQ(Times(LoadQ(speaks[slot], at), {SetV(phase.real()), SetV(phase.imag())}), sent[slot], at);
        }
        HeardFromBuses(w, h, hears, sent, at, heard);
        for (std::size_t a = 0; a < n; ++a)
            for (std::size_t j = 0; j < n; ++j) {
                Q sum = ZeroQ();
                for (std::uint32_t k = sends.first[a]; k < sends.first[a + 1]; ++k) {
                    const V gain = SetV(sends.sends[k].gain);
                    const Q value = LoadQ(heard[sends.sends[k].other * across + j * along], at);
                    sum = {hn::MulAdd(value.re, gain, sum.re), hn::MulAdd(value.im, gain, sum.im)};
                }
                const std::size_t place = w.by_inputs() ? j * n + a : a * n + j;
                const V factor = SetV(factors[place]);
                StoreQ({hn::Mul(sum.re, factor), hn::Mul(sum.im, factor)}, matrix[place], at);
            }
    }
}

/// a a, and returns the square of its Frobenius norm.
HWY_INLINE V Squared(const QuickLanes* HWY_RESTRICT a, std::size_t n, std::size_t at, QuickLanes* HWY_RESTRICT square) {
    V norm = hn::Zero(F());
    for (std::size_t i = 0; i < n; ++i) {
        std::size_t j = 0;
        for (; j + 2 <= n; j += 2) {  // two at a time, so that none waits for itself
            Q s0 = ZeroQ(), s1 = ZeroQ();
            for (std::size_t k = 0; k < n; ++k) {
                const Q x = LoadQ(a[i * n + k], at);
                s0 = TimesPlus(x, LoadQ(a[k * n + j], at), s0);
                s1 = TimesPlus(x, LoadQ(a[k * n + j + 1], at), s1);
            }
            StoreQ(s0, square[i * n + j], at);
            StoreQ(s1, square[i * n + j + 1], at);
            norm = hn::Add(norm, hn::Add(Norm(s0), Norm(s1)));
        }
        if (j == n) continue;
        Q s = ZeroQ();
        for (std::size_t k = 0; k < n; ++k) s = TimesPlus(LoadQ(a[i * n + k], at), LoadQ(a[k * n + j], at), s);
        StoreQ(s, square[i * n + j], at);
        norm = hn::Add(norm, Norm(s));
    }
    return norm;
}

bool QuickBounds(const QuickLanes* HWY_RESTRICT matrix, std::size_t n, float enough, QuickLanes* HWY_RESTRICT scratch,
                 QuickRealLanes& bounds) {
    const F f;
    const V limit = SetV(enough);
    bool any = false;
    for (std::size_t at = 0; at < kBlockPoints; at += hn::Lanes(f)) {
        V norm = hn::Zero(f);
        for (std::size_t i = 0; i < n * n; ++i) norm = hn::Add(norm, Norm(LoadQ(matrix[i], at)));
        V bound = hn::Sqrt(norm);
        if (n > 1 && !hn::AllTrue(f, hn::Lt(bound, limit))) {
            bound = hn::Min(bound, hn::Sqrt(hn::Sqrt(Squared(matrix, n, at, scratch))));
            if (!hn::AllTrue(f, hn::Lt(bound, limit)))
                bound = hn::Min(bound, hn::Sqrt(hn::Sqrt(hn::Sqrt(Squared(scratch, n, at, scratch + n * n)))));
            if (!hn::AllTrue(f, hn::Lt(bound, limit))) {
                const V eighth = hn::Sqrt(hn::Sqrt(Squared(scratch + n * n, n, at, scratch)));
                bound = hn::Min(bound, hn::Sqrt(hn::Sqrt(eighth)));
            }
        }
        any = any || !hn::AllTrue(f, hn::Lt(bound, limit));
        hn::Store(bound, f, bounds.v + at);
    }
    return any;
}

}  // namespace howlmap::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace howlmap {
HWY_EXPORT(QuickSteps);
HWY_EXPORT(QuickBetween);
HWY_EXPORT(QuickStartsOf);
HWY_EXPORT(QuickPaths);
HWY_EXPORT(QuickRoomAtKnots);
HWY_EXPORT(QuickGaussians);
HWY_EXPORT(QuickRoom);
HWY_EXPORT(QuickMatrix);
HWY_EXPORT(QuickBounds);

void QuickStarts::resize(std::size_t legs) {
    for (auto* values : {&re, &im, &rise_re, &rise_im}) values->resize(legs);
}

void QuickSends::set(const Wiring& wiring, const std::vector<double>& gains, double scale) {
    sends.clear();
    first.assign(1, 0);
    const std::size_t others = wiring.by_inputs() ? wiring.buses : wiring.inputs;
    for (std::size_t i = 0; i < wiring.size(); ++i) {
        for (std::size_t other = 0; other < others; ++other) {
            const double gain =
                wiring.by_inputs() ? gains[other * wiring.inputs + i] : gains[i * wiring.inputs + other];
            if (gain != 0.0) sends.push_back({static_cast<std::uint32_t>(other), static_cast<float>(gain / scale)});
        }
        first.push_back(static_cast<std::uint32_t>(sends.size()));
    }
}

void quick_steps(const double* delays, std::size_t count, double step_hz, QuickLanes* steps) {
    HWY_DYNAMIC_DISPATCH(QuickSteps)(delays, count, step_hz, steps);
}
void quick_between(const float* low, const float* high, std::size_t count, float t, float step, float* at,
                   float* rise) {
    HWY_DYNAMIC_DISPATCH(QuickBetween)(low, high, count, t, step, at, rise);
}
void quick_starts(const double* delays, const float* gains, const float* rises, std::size_t count, double low_hz,
                  QuickStarts& starts) {
    HWY_DYNAMIC_DISPATCH(QuickStartsOf)(delays, gains, rises, count, low_hz, starts);
}
void quick_paths(const std::uint32_t* first, std::size_t pairs, const QuickLanes* steps, const QuickStarts& starts,
                 QuickLanes* h) {
    HWY_DYNAMIC_DISPATCH(QuickPaths)(first, pairs, steps, starts, h);
}
void quick_room_at_knots(const std::uint64_t* states, std::uint64_t offset, std::size_t pairs, const float* rms,
                         const float* rise, QuickLanes* h) {
    HWY_DYNAMIC_DISPATCH(QuickRoomAtKnots)(states, offset, pairs, rms, rise, h);
}
void quick_gaussians(const std::uint64_t* states, std::uint64_t offset, std::size_t count, float* re, float* im) {
    HWY_DYNAMIC_DISPATCH(QuickGaussians)(states, offset, count, re, im);
}
void quick_room(const float* re, const float* im, std::size_t stride, std::size_t knots, const QuickRealLanes* weights,
                std::size_t pairs, const float* rms, const float* rise, QuickLanes* h) {
    HWY_DYNAMIC_DISPATCH(QuickRoom)(re, im, stride, knots, weights, pairs, rms, rise, h);
}
void quick_matrix(const Wiring& wiring, const QuickSends& sends, const QuickLanes* h, const QuickLanes* hears,
                  const QuickLanes* speaks, const std::complex<float>* phases, const float* factors, QuickLanes* heard,
                  QuickLanes* matrix) {
    HWY_DYNAMIC_DISPATCH(QuickMatrix)(wiring, sends, h, hears, speaks, phases, factors, heard, matrix);
}
bool quick_bounds(const QuickLanes* matrix, std::size_t n, float enough, QuickLanes* scratch, QuickRealLanes& bounds) {
    return HWY_DYNAMIC_DISPATCH(QuickBounds)(matrix, n, enough, scratch, bounds);
}
}  // namespace howlmap
#endif
