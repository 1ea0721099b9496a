// SPDX-License-Identifier: GPL-3.0-or-later
// Complex numbers side by side in vectors, and phasors of them. Included once for every target.
#if defined(HOWLMAP_COMPLEX_LANES_INL) == defined(HWY_TARGET_TOGGLE)
#ifdef HOWLMAP_COMPLEX_LANES_INL
#undef HOWLMAP_COMPLEX_LANES_INL
#else
#define HOWLMAP_COMPLEX_LANES_INL
#endif

#include "hwy/highway.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::HWY_NAMESPACE {
namespace hn = hwy::HWY_NAMESPACE;

/// A complex number in each lane of two vectors.
template <class V>
struct ComplexLanes {
    V re, im;
};

template <class V>
HWY_INLINE ComplexLanes<V> Plus(ComplexLanes<V> a, ComplexLanes<V> b) {
    return {hn::Add(a.re, b.re), hn::Add(a.im, b.im)};
}
template <class V>
HWY_INLINE ComplexLanes<V> Minus(ComplexLanes<V> a, ComplexLanes<V> b) {
    return {hn::Sub(a.re, b.re), hn::Sub(a.im, b.im)};
}
template <class V>
HWY_INLINE ComplexLanes<V> Times(ComplexLanes<V> a, ComplexLanes<V> b) {
    return {hn::NegMulAdd(a.im, b.im, hn::Mul(a.re, b.re)), hn::MulAdd(a.im, b.re, hn::Mul(a.re, b.im))};
}
/// a b + sum
template <class V>
HWY_INLINE ComplexLanes<V> TimesPlus(ComplexLanes<V> a, ComplexLanes<V> b, ComplexLanes<V> sum) {
    return {hn::NegMulAdd(a.im, b.im, hn::MulAdd(a.re, b.re, sum.re)),
            hn::MulAdd(a.im, b.re, hn::MulAdd(a.re, b.im, sum.im))};
}
template <class V>
HWY_INLINE ComplexLanes<V> Scaled(ComplexLanes<V> a, V scale) {
    return {hn::Mul(a.re, scale), hn::Mul(a.im, scale)};
}
/// |a|^2
template <class V>
HWY_INLINE V Norm(ComplexLanes<V> a) {
    return hn::MulAdd(a.re, a.re, hn::Mul(a.im, a.im));
}
/// 1 / a; |a|^2 counts as `least` at least, so that 1 / 0 is a large number rather than none.
template <class D, class V = hn::Vec<D>>
HWY_INLINE ComplexLanes<V> Inverse(D d, ComplexLanes<V> a, hn::TFromD<D> least) {
    const V over = hn::Div(hn::Set(d, hn::TFromD<D>(1)), hn::Max(Norm(a), hn::Set(d, least)));
    return {hn::Mul(a.re, over), hn::Neg(hn::Mul(a.im, over))};
}

/// exp(2 pi j t) for t of -0.5 .. 0.5: half-angle polynomials (Chebyshev fits, error below 1e-9) of pi t.
template <class D, class V = hn::Vec<D>>
HWY_INLINE ComplexLanes<V> Phasor(D d, V t) {
    using T = hn::TFromD<D>;
    const V u = hn::Mul(t, t);
    V s = hn::Set(d, T(-0.00702838646247983));
    s = hn::MulAdd(s, u, hn::Set(d, T(0.08205040183293022)));
    s = hn::MulAdd(s, u, hn::Set(d, T(-0.599252197826047)));
    s = hn::MulAdd(s, u, hn::Set(d, T(2.550163318946751)));
    s = hn::MulAdd(s, u, hn::Set(d, T(-5.16771276462449)));
    s = hn::Mul(hn::MulAdd(s, u, hn::Set(d, T(3.1415926535362884))), t);
    V c = hn::Set(d, T(-0.024396324351982912));
    c = hn::MulAdd(c, u, hn::Set(d, T(0.23493731381518046)));
    c = hn::MulAdd(c, u, hn::Set(d, T(-1.3352120030493495)));
    c = hn::MulAdd(c, u, hn::Set(d, T(4.058709159556045)));
    c = hn::MulAdd(c, u, hn::Set(d, T(-4.9348021370788)));
    c = hn::MulAdd(c, u, hn::Set(d, T(0.9999999997799037)));
    const V twice = hn::Add(s, s);
    return {hn::NegMulAdd(twice, s, hn::Set(d, T(1))), hn::Mul(twice, c)};
}

/// exp(-2 pi j turns) for any number of turns: the whole ones are taken off.
template <class D, class V = hn::Vec<D>>
HWY_INLINE ComplexLanes<V> Delayed(D d, V turns) {
    return Phasor(d, hn::Sub(hn::Round(turns), turns));
}

/// Output function of SplitMix64 in each lane of 64 bits. Source: Steele, Lea and Flood, OOPSLA 2014.
template <class D64>
HWY_INLINE hn::Vec<D64> SplitMix(D64 d, hn::Vec<D64> z) {
    z = hn::Mul(hn::Xor(z, hn::ShiftRight<30>(z)), hn::Set(d, 0xBF58476D1CE4E5B9u));
    z = hn::Mul(hn::Xor(z, hn::ShiftRight<27>(z)), hn::Set(d, 0x94D049BB133111EBu));
    return hn::Xor(z, hn::ShiftRight<31>(z));
}

}  // namespace howlmap::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#endif
