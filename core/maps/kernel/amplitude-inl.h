// SPDX-License-Identifier: GPL-3.0-or-later
// Amplitudes of single paths at a bin and around it, for the search between the swept frequencies. Included once for
// every target.
#if defined(HOWLMAP_MAPS_AMPLITUDE_INL) == defined(HWY_TARGET_TOGGLE)
#ifdef HOWLMAP_MAPS_AMPLITUDE_INL
#undef HOWLMAP_MAPS_AMPLITUDE_INL
#else
#define HOWLMAP_MAPS_AMPLITUDE_INL
#endif

#include "core/maps/kernel/sweep-inl.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {

/// Real amplitude of a path at one bin. For a cap on a sphere it comes without its directivity, which stands beside it
/// as it is before division by its value on axis.
struct PathAmplitude {
    float rest, raw;
};

inline float MixedAt(const float* row, int next, float share, float share_of_next) {
    return share * row[0] + share_of_next * row[next];
}

/// Coverage pattern between its control frequencies, with the gain.
inline float NodeAt(const DirectivityRows& rows, const Terms& t, int image, std::size_t cell, const BinPlace& place) {
    const int block = (place.octave - rows.low.octaves) * kColumns + place.column;
    const int at = block * rows.block_floats() + t.middle_at[block][image][cell] + place.lane;
    const float* node = rows.nodes.data() + at;
    const auto& factors = t.middle[block];
    return factors[0][image][cell] * node[0] + factors[1][image][cell] * node[kBlock] +
           factors[2][image][cell] * node[2 * kBlock];
}

inline float RowAt(const Rows& rows, const Terms& t, int image, std::size_t cell, const BinPlace& place) {
    const int at = t.low_at[image][cell] + place.column * rows.column_floats + place.octave * kBlock + place.lane;
    return MixedAt(rows.data.data() + at, rows.row_floats, t.low[0][image][cell], t.low[1][image][cell]);
}

/// Air, reflection, gain and directivity.
inline PathAmplitude SentAt(const DirectivityRows& rows, const AirRows& air, const Terms& t, int image,
                            std::size_t cell, const BinPlace& place) {
    const int at = t.air_at[image][cell] + place.column * air.column_floats + place.octave * kBlock + place.lane;
    const float* row = air.data.data() + at;
    if (place.octave >= rows.octaves)
        return {MixedAt(row, air.row_floats, t.high[0][image][cell], t.high[1][image][cell]), 0.0f};
    const float left = MixedAt(row, air.row_floats, t.air[0][image][cell], t.air[1][image][cell]);
    if (place.octave >= rows.low.octaves) return {left * NodeAt(rows, t, image, cell, place), 0.0f};
    if (!rows.is_cap) return {left * RowAt(rows.low, t, image, cell, place), 0.0f};
    const float gain = t.gain[image][cell];  // rows hold it too
    return {left * gain, gain == 0.0f ? 0.0f : RowAt(rows.raw, t, image, cell, place) / gain};
}

inline PathAmplitude AmplitudeAt(const FixedEnd& end, const AirRows& air, const Terms& t, int image, std::size_t cell,
                                 int bin) {
    const BinPlace place = place_of(bin);
    PathAmplitude amplitude = SentAt(*end.directivity, air, t, image, cell, place);
    if (!HasPattern(end)) return amplitude;
    const Rows& pattern = end.pattern->low;
    const int at =
        t.pattern_at[image][cell] + place.column * pattern.column_floats + place.octave * kBlock + place.lane;
    amplitude.rest *=
        MixedAt(pattern.data.data() + at, pattern.row_floats, t.pattern[0][image][cell], t.pattern[1][image][cell]);
    return amplitude;
}

/// What a quantity is around a bin, from its values there and at the bins beside it: linear to each side.
struct Around {
    float middle, below, above;  // value, slopes a bin
    Around(float low, float at, float high) : middle(at), below(at - low), above(high - at) {}
    HWY_INLINE V At(V bins) const {
        const V zero = hn::Zero(F());
        const V upper = hn::MulAdd(hn::Max(bins, zero), Number(above), Number(middle));
        return hn::MulAdd(hn::Min(bins, zero), Number(below), upper);
    }
};

/// Lobes of a cap bend too much for straight lines: the parabola through the three values.
HWY_INLINE V Curved(float low, float at, float high, V bins) {
    const V bend = Number(0.5f * (low + high) - at), slope = Number(0.5f * (high - low));
    return hn::MulAdd(bins, hn::MulAdd(bins, bend, slope), Number(at));
}

/// Amplitude of a path at frequencies so many bins from a bin. `axis`: of a cap on a sphere, 1 / its value on axis at
/// these frequencies; else null.
HWY_INLINE V AmplitudeNear(const FixedEnd& end, const AirRows& air, const Terms& t, int image, std::size_t cell,
                           int bin, V bins, const float* axis) {
    const PathAmplitude at = AmplitudeAt(end, air, t, image, cell, bin);
    const PathAmplitude low = bin > 0 ? AmplitudeAt(end, air, t, image, cell, bin - 1) : at;
    const PathAmplitude high = bin + 1 < kBins ? AmplitudeAt(end, air, t, image, cell, bin + 1) : at;
    const V rest = Around(low.rest, at.rest, high.rest).At(bins);
    if (!axis) return rest;
    const V directivity = hn::Mul(Curved(low.raw, at.raw, high.raw, bins), hn::LoadU(F(), axis));
    return hn::Mul(rest, hn::Min(directivity, Number(1.0f)));
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
