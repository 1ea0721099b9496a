// SPDX-License-Identifier: GPL-3.0-or-later
// The field of all swept frequencies at the cells of a tile, frequencies in the lanes. Included once for every target.
//
// A path's phasor is kept as C = 2 cos(kr) and S = 2 sin(kr). One octave up it is C' = 2 - S^2, S' = S C: two
// operations and no sine, and well conditioned, so that ten octaves start from one short polynomial. The sums over the
// images of a loudspeaker stay in registers for all octaves; its complex drive is applied once, not once a path.
#if defined(HOWLMAP_MAPS_SWEEP_INL) == defined(HWY_TARGET_TOGGLE)
#ifdef HOWLMAP_MAPS_SWEEP_INL
#undef HOWLMAP_MAPS_SWEEP_INL
#else
#define HOWLMAP_MAPS_SWEEP_INL
#endif

#include <utility>

#include "core/maps/kernel/geometry-inl.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {

/// With 32 registers all ten octaves fit at once; with 16 they take two passes.
#if HWY_TARGET <= HWY_AVX3
inline constexpr int kPasses = 1;
#else
inline constexpr int kPasses = 2;
#endif
inline constexpr int kOctavesAPass = kOctavesSwept / kPasses;

/// What is known of an end at compile time: octaves whose directivity lies in rows, octaves from there on in nodes,
/// whether the receiver has a measured pattern, and whether it is a cap on a sphere. Above both the directivity is one
/// number.
template <int RowOctaves, int NodeOctaves, bool Pattern, bool Cap>
struct Shape {
    static constexpr int kRows = RowOctaves, kNodes = NodeOctaves;
    static constexpr bool kPattern = Pattern, kCap = Cap;
};

/// Octaves in which the nearest air row will do: below 1.3 kHz air takes less than 0.02 dB/m, so that half a row is far
/// below 0.01 dB.
inline constexpr int kStillOctaves = 6;

struct Phasor {
    V c, s;  // 2 cos, 2 sin
};

HWY_INLINE Phasor Doubled(Phasor p) { return {hn::NegMulAdd(p.s, p.s, Number(2.0f)), hn::Mul(p.s, p.c)}; }

/// Phasor of a distance (two floats) at frequencies f / c: whole turns are dropped first. Polynomials through Chebyshev
/// nodes for 2 sin(pi x) and 2 cos(pi x), |x| <= 1/2, largest errors 2e-8 and 1e-7.
HWY_INLINE Phasor PhasorOf(V metres, V metres_rest, V waves) {
    const V turns = hn::Mul(metres, waves);
    const V whole = hn::Round(turns);
    const V x = hn::MulAdd(metres_rest, waves, hn::MulSub(metres, waves, whole));
    const V z = hn::Mul(x, x);
    V s = hn::MulAdd(z, Number(0.1553118246f), Number(-1.196580823f));
    s = hn::MulAdd(z, s, Number(5.100154773f));
    s = hn::MulAdd(z, s, Number(-10.33542015f));
    s = hn::Mul(x, hn::MulAdd(z, s, Number(6.28318528f)));
    V c = hn::MulAdd(z, Number(0.4393648472f), Number(-2.663745946f));
    c = hn::MulAdd(z, c, Number(8.116821582f));
    c = hn::MulAdd(z, c, Number(-9.869585605f));
    c = hn::MulAdd(z, c, Number(1.999999906f));
    return Doubled({c, s});
}

/// A path as one cell sees it.
struct PathRows {
    const float *low, *low_next, *low_third, *low_fourth, *nodes, *air, *air_next, *near, *pattern, *pattern_next;
    const float* middle;            // factors of the first block's nodes
    const std::int32_t* middle_at;  // offset of the first block's nodes
    std::size_t block_floats;       // distance from one octave's nodes to the next one's
    V low_share[4], gain, high[2], air_share[2], pattern_share[2];
};

template <class S>
HWY_INLINE PathRows RowsOf(const FixedEnd& end, const AirRows& air, const Terms& t, int image, std::size_t cell,
                           int column, std::size_t lane) {
    PathRows p;
    const DirectivityRows& rows = *end.directivity;
    p.air = air.data.data() + t.air_at[image][cell] + column * air.column_floats + lane;
    p.air_next = p.air + air.row_floats;
    if constexpr (S::kRows > 0) {
        p.low = rows.low.data.data() + t.low_at[image][cell] + column * rows.low.column_floats + lane;
        p.low_next = p.low + rows.low.row_floats;
    }
    if constexpr (S::kCap) {
        p.low_third = p.low_next + rows.low.row_floats;
        p.low_fourth = p.low_third + rows.low.row_floats;
        for (int k = 2; k < 4; ++k) p.low_share[k] = Number(t.low[k][image][cell]);
        p.gain = Number(t.gain[image][cell]);
    }
    if constexpr (S::kNodes > S::kRows) {
        p.nodes = rows.nodes.data() + static_cast<std::size_t>(column * rows.block_floats()) + lane;
        p.block_floats = static_cast<std::size_t>(kColumns * rows.block_floats());
        p.middle = &t.middle[column][0][image][cell];
        p.middle_at = &t.middle_at[column][image][cell];
    }
    p.near = air.data.data() + t.near_at[image][cell] + column * air.column_floats + lane;
    for (int k = 0; k < 2; ++k) {
        p.low_share[k] = Number(t.low[k][image][cell]);
        p.high[k] = Number(t.high[k][image][cell]);
        p.air_share[k] = Number(t.air[k][image][cell]);
        if constexpr (S::kPattern) p.pattern_share[k] = Number(t.pattern[k][image][cell]);
    }
    if constexpr (S::kPattern) {
        const Rows& pattern = end.pattern->low;
        p.pattern = pattern.data.data() + t.pattern_at[image][cell] + column * pattern.column_floats + lane;
        p.pattern_next = p.pattern + pattern.row_floats;
    }
    return p;
}

HWY_INLINE V Mixed(const float* a, const float* b, const V* shares) {
    const F f;
    return hn::MulAdd(shares[1], hn::Load(f, b), hn::Mul(shares[0], hn::Load(f, a)));
}

/// Directivity and gain of a cap on a sphere in one octave.
HWY_INLINE V CapValue(const PathRows& p, int at) {
    const F f;
    V value = Mixed(p.low + at, p.low_next + at, p.low_share);
    value = hn::MulAdd(p.low_share[2], hn::Load(f, p.low_third + at), value);
    value = hn::MulAdd(p.low_share[3], hn::Load(f, p.low_fourth + at), value);
    return hn::Mul(p.gain, hn::Min(value, Number(1.0f)));
}

/// Directivity and gain of a path in one octave between the control frequencies.
template <class S, int Octave>
HWY_INLINE V NodeValue(const PathRows& p) {
    const F f;
    constexpr std::size_t octave = Octave - S::kRows;
    constexpr std::size_t factors = 3 * kVias * kTile, octave_factors = octave * kColumns * factors;
    const float* node = p.nodes + octave * p.block_floats + p.middle_at[octave * kColumns * kVias * kTile];
    const float* factor = p.middle + octave_factors;
    V value = hn::Mul(Number(factor[0]), hn::Load(f, node));
    value = hn::MulAdd(Number(factor[kVias * kTile]), hn::Load(f, node + kBlock), value);
    return hn::MulAdd(Number(factor[2 * kVias * kTile]), hn::Load(f, node + 2 * kBlock), value);
}

/// Real amplitude of a path in one octave.
template <class S, int Octave>
HWY_INLINE V Amplitude(const PathRows& p) {
    const F f;
    constexpr int at = Octave * kBlock;
    V amplitude;
    if constexpr (Octave < S::kNodes) {
        if constexpr (S::kCap)
            amplitude = CapValue(p, at);
        else if constexpr (Octave < S::kRows)
            amplitude = Mixed(p.low + at, p.low_next + at, p.low_share);
        else
            amplitude = NodeValue<S, Octave>(p);
        if constexpr (Octave < kStillOctaves)
            amplitude = hn::Mul(amplitude, hn::Load(f, p.near + at));
        else
            amplitude = hn::Mul(amplitude, Mixed(p.air + at, p.air_next + at, p.air_share));
    } else {
        amplitude = Mixed(p.air + at, p.air_next + at, p.high);
    }
    if constexpr (S::kPattern)
        amplitude = hn::Mul(amplitude, Mixed(p.pattern + at, p.pattern_next + at, p.pattern_share));
    return amplitude;
}

/// Adds one path to the sums of one octave and goes an octave up.
template <class S, int Octave>
HWY_INLINE void AddOctave(const PathRows& p, Phasor& phasor, V& re, V& im) {
    const V amplitude = Amplitude<S, Octave>(p);
    re = hn::MulAdd(amplitude, phasor.c, re);
    im = hn::MulAdd(amplitude, phasor.s, im);
    phasor = Doubled(phasor);
}

template <class S, int First, int... O>
HWY_INLINE void AddPath(std::integer_sequence<int, O...>, const PathRows& p, Phasor& phasor, V* re, V* im) {
    (AddOctave<S, First + O>(p, phasor, re[O], im[O]), ...);
}

/// Drive times response in one octave, added to a sum.
HWY_INLINE void AddDriven(V h_re, V h_im, const float* weights, V& re, V& im) {
    const F f;
    const V w_re = hn::Load(f, weights), w_im = hn::Load(f, weights + kBlock);
    re = hn::MulAdd(h_im, w_im, hn::MulAdd(h_re, w_re, re));
    im = hn::NegMulAdd(h_im, w_re, hn::MulAdd(h_re, w_im, im));
}
/// The same in some octaves, added to the totals of the cell.
template <bool Begin, int... O>
HWY_INLINE void AddDriven(std::integer_sequence<int, O...>, const float* weights, const V* re, const V* im,
                          float* totals) {
    const F f;
    const auto add = [&](int o) HWY_ATTR {
        float* to = totals + o * 2 * kBlock;
        V sum_re = Begin ? hn::Zero(f) : hn::Load(f, to), sum_im = Begin ? hn::Zero(f) : hn::Load(f, to + kBlock);
        AddDriven(re[o], im[o], weights + o * 2 * kBlock, sum_re, sum_im);
        hn::Store(sum_re, f, to);
        hn::Store(sum_im, f, to + kBlock);
    };
    (add(O), ...);
}

using HalfVector = hn::Rebind<Half, F>;

template <int... O>
HWY_INLINE void Keep(std::integer_sequence<int, O...>, const V* re, const V* im, Half* to) {
    const HalfVector h;
    (hn::Store(hn::DemoteTo(h, re[O]), h, to + O * 2 * kBlock), ...);
    (hn::Store(hn::DemoteTo(h, im[O]), h, to + O * 2 * kBlock + kBlock), ...);
}

/// Where a column's numbers at a cell begin within those of a tile: by column, cell.
inline std::size_t InTile(int column, std::size_t cell) {
    return (static_cast<std::size_t>(column) * kTile + cell) * kOctavesSwept * 2 * kBlock;
}
inline float* TotalsAt(Scratch::Space& space, int column, std::size_t cell) {
    return space.totals.data() + InTile(column, cell);
}
inline Half* KeptAt(const Field& field, const FixedEnd& end, const Tile& tile, int column, std::size_t cell) {
    const std::size_t in_tile = static_cast<std::size_t>(column) * kTile + cell;
    return end.kept + (static_cast<std::size_t>(tile.first * kColumns) + in_tile) * field.kept_stride;
}

using PassOctaves = std::make_integer_sequence<int, kOctavesAPass>;

/// One pass over the octaves from First on: all images of an end at one cell and one column.
template <class S, int First, bool Begin>
HWY_INLINE void SweepPass(const Field& field, const FixedEnd& end, const Terms& t, const Tile& tile, std::size_t cell,
                          int column, std::size_t lane, Scratch::Space& space) {
    const F f;
    V re[kOctavesAPass], im[kOctavesAPass];
    for (int o = 0; o < kOctavesAPass; ++o) re[o] = im[o] = hn::Zero(f);
    const V waves = hn::LoadU(f, field.base_waves.data() + static_cast<std::size_t>(column * kBlock) + lane);
    for (int image = 0; image < end.image_count; ++image) {
        const PathRows p = RowsOf<S>(end, *field.air, t, image, cell, column, lane);
        Phasor phasor;
        if constexpr (First == 0)
            phasor = PhasorOf(Number(t.metres[image][cell]), Number(t.metres_rest[image][cell]), waves);
        else
            phasor = {hn::Load(f, space.saved[image][0]), hn::Load(f, space.saved[image][1])};
        AddPath<S, First>(PassOctaves(), p, phasor, re, im);
        if constexpr (First == 0 && kPasses > 1) {
            hn::Store(phasor.c, f, space.saved[image][0]);
            hn::Store(phasor.s, f, space.saved[image][1]);
        }
    }
    const std::size_t block = static_cast<std::size_t>(column * kOctavesSwept + First) * 2 * kBlock + lane;
    AddDriven<Begin>(PassOctaves(), end.weights + block, re, im,
                     TotalsAt(space, column, cell) + First * 2 * kBlock + lane);
    if (end.kept) Keep(PassOctaves(), re, im, KeptAt(field, end, tile, column, cell) + First * 2 * kBlock + lane);
}

template <class S, bool Begin>
HWY_INLINE void SweepColumns(const Field& field, const FixedEnd& end, const Terms& t, const Tile& tile,
                             Scratch::Space& space) {
    const F f;
    for (int column = 0; column < kColumns; ++column) {
        if (!field.columns[static_cast<std::size_t>(column)]) continue;
        for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f))
            for (std::size_t cell = 0; cell < static_cast<std::size_t>(tile.cells); ++cell) {
                SweepPass<S, 0, Begin>(field, end, t, tile, cell, column, lane, space);
                if constexpr (kPasses > 1)
                    SweepPass<S, kOctavesAPass, Begin>(field, end, t, tile, cell, column, lane, space);
            }
    }
}

template <int RowOctaves, int NodeOctaves, bool Pattern, bool Cap = false>
HWY_NOINLINE void SweepEnd(const Field& field, const FixedEnd& end, const Terms& t, const Tile& tile, bool begin,
                           Scratch::Space& space) {
    using S = Shape<RowOctaves, NodeOctaves, Pattern, Cap>;
    if (begin)
        SweepColumns<S, true>(field, end, t, tile, space);
    else
        SweepColumns<S, false>(field, end, t, tile, space);
}

/// All ends whose responses are known, at one cell and one column, octaves from First on.
template <int First, int... O>
HWY_INLINE void AddKnownPass(std::integer_sequence<int, O...>, const Field& field, const Tile& tile, std::size_t cell,
                             int column, std::size_t lane, float* totals) {
    const F f;
    const HalfVector h;
    V re[kOctavesAPass], im[kOctavesAPass];
    ((re[O] = hn::Load(f, totals + O * 2 * kBlock), im[O] = hn::Load(f, totals + O * 2 * kBlock + kBlock)), ...);
    const std::size_t block = static_cast<std::size_t>(column * kOctavesSwept + First) * 2 * kBlock + lane;
    for (const FixedEnd& end : field.ends) {
        if (!end.known) continue;
        const Half* kept = KeptAt(field, end, tile, column, cell) + First * 2 * kBlock + lane;
        const auto add = [&](int o) HWY_ATTR {
            const int at = o * 2 * kBlock;
            hwy::Prefetch(kept + at + kFetchedAhead);
            AddDriven(hn::PromoteTo(f, hn::Load(h, kept + at)), hn::PromoteTo(f, hn::Load(h, kept + at + kBlock)),
                      end.weights + block + at, re[o], im[o]);
        };
        (add(O), ...);
    }
    ((hn::Store(re[O], f, totals + O * 2 * kBlock), hn::Store(im[O], f, totals + O * 2 * kBlock + kBlock)), ...);
}

HWY_NOINLINE void AddKnown(const Field& field, const Tile& tile, Scratch::Space& space) {
    const F f;
    for (int column = 0; column < kColumns; ++column) {
        if (!field.columns[static_cast<std::size_t>(column)]) continue;
        for (std::size_t cell = 0; cell < static_cast<std::size_t>(tile.cells); ++cell)
            for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
                float* totals = TotalsAt(space, column, cell) + lane;
                AddKnownPass<0>(PassOctaves(), field, tile, cell, column, lane, totals);
                if constexpr (kPasses > 1)
                    AddKnownPass<kOctavesAPass>(PassOctaves(), field, tile, cell, column, lane,
                                                totals + kOctavesAPass * 2 * kBlock);
            }
    }
}

using SweepFunction = void (*)(const Field&, const FixedEnd&, const Terms&, const Tile&, bool, Scratch::Space&);

template <bool Pattern, std::size_t... Split>
SweepFunction CoverageSweep(std::index_sequence<Split...>, const DirectivityRows& rows) {
    SweepFunction function = nullptr;
    ((kSplits[Split].low == rows.low.octaves && kSplits[Split].high == rows.octaves
          ? void(function = SweepEnd<kSplits[Split].low, kSplits[Split].high, Pattern>)
          : void()),
     ...);
    return function;
}

template <bool Pattern>
SweepFunction SweepFor(const DirectivityRows& rows) {
    if (rows.kind == DirectivityRows::Kind::same) return SweepEnd<0, 0, Pattern>;
    if (rows.kind == DirectivityRows::Kind::radial) return SweepEnd<kOctavesSwept, kOctavesSwept, Pattern>;
    if (rows.kind == DirectivityRows::Kind::cap) return SweepEnd<kOctavesSwept, kOctavesSwept, Pattern, true>;
    return CoverageSweep<Pattern>(std::make_index_sequence<std::size(kSplits)>(), rows);
}

inline bool HasPattern(const FixedEnd& end) { return end.pattern && end.pattern->kind != DirectivityRows::Kind::same; }

/// Totals of all ends, the constant part of the field included.
inline void SweepField(const Field& field, const Tile& tile, Scratch::Space& space) {
    const std::size_t cell_floats = kOctavesSwept * 2 * kBlock;
    if (field.offset)
        for (std::size_t column = 0; column < kColumns; ++column)
            for (std::size_t cell = 0; cell < kTile; ++cell)
                std::copy_n(field.offset + column * cell_floats, cell_floats,
                            space.totals.data() + (column * kTile + cell) * cell_floats);
    bool begin = field.offset == nullptr;
    for (std::size_t i = 0; i < field.ends.size(); ++i) {
        const FixedEnd& end = field.ends[i];
        if (end.known) continue;
        const SweepFunction sweep =
            HasPattern(end) ? SweepFor<true>(*end.directivity) : SweepFor<false>(*end.directivity);
        sweep(field, end, space.terms[i], tile, begin, space);
        begin = false;
    }
    if (begin) std::fill(space.totals.begin(), space.totals.end(), 0.0f);
    if (field.kept_stride > 0) AddKnown(field, tile, space);
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
