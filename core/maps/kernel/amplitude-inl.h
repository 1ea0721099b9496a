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

/// Air, reflection, gain and directivity, without that of a cap on a sphere.
inline float SentAt(const DirectivityRows& rows, const AirRows& air, const Terms& t, int image, std::size_t cell,
                    const BinPlace& place) {
    const int at = t.air_at[image][cell] + place.column * air.column_floats + place.octave * kBlock + place.lane;
    const float* row = air.data.data() + at;
    if (place.octave >= rows.octaves)
        return MixedAt(row, air.row_floats, t.high[0][image][cell], t.high[1][image][cell]);
    const float left = MixedAt(row, air.row_floats, t.air[0][image][cell], t.air[1][image][cell]);
    if (rows.is_cap) return left * t.gain[image][cell];
    if (place.octave >= rows.low.octaves) return left * NodeAt(rows, t, image, cell, place);
    return left * RowAt(rows.low, t, image, cell, place);
}

/// Real amplitude of a path at one bin, without the directivity of a cap on a sphere.
inline float AmplitudeAt(const FixedEnd& end, const AirRows& air, const Terms& t, int image, std::size_t cell,
                         int bin) {
    const BinPlace place = place_of(bin);
    const float sent = SentAt(*end.directivity, air, t, image, cell, place);
    if (!HasPattern(end)) return sent;
    const Rows& pattern = end.pattern->low;
    const int at =
        t.pattern_at[image][cell] + place.column * pattern.column_floats + place.octave * kBlock + place.lane;
    return sent *
           MixedAt(pattern.data.data() + at, pattern.row_floats, t.pattern[0][image][cell], t.pattern[1][image][cell]);
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

/// Field of a cap on a sphere around a bin, before division by its value on axis. Its lobes bend too much for straight
/// lines: the polynomial of fourth degree through five bins.
HWY_INLINE V CapNear(const DirectivityRows& rows, const Terms& t, int image, std::size_t cell, int bin, V bins) {
    const float gain = t.gain[image][cell];  // rows hold it too
    if (gain == 0.0f) return hn::Zero(F());
    float y[5];
    for (int i = 0; i < 5; ++i)
        y[i] = RowAt(rows.raw, t, image, cell, place_of(std::clamp(bin + i - 2, 0, kBins - 1))) / gain;
    const float outer = y[0] + y[4], inner = y[1] + y[3], outer_turn = y[4] - y[0], inner_turn = y[3] - y[1];
    const float c4 = (outer - 4.0f * inner + 6.0f * y[2]) / 24.0f, c3 = (outer_turn - 2.0f * inner_turn) / 12.0f;
    const float c2 = (16.0f * inner - outer - 30.0f * y[2]) / 24.0f, c1 = (8.0f * inner_turn - outer_turn) / 12.0f;
    V value = hn::MulAdd(bins, Number(c4), Number(c3));
    value = hn::MulAdd(bins, value, Number(c2));
    value = hn::MulAdd(bins, value, Number(c1));
    return hn::MulAdd(bins, value, Number(y[2]));
}

/// Amplitude of a path at frequencies so many bins from a bin. `axis`: of a cap on a sphere, 1 / its value on axis at
/// these frequencies; else null.
HWY_INLINE V AmplitudeNear(const FixedEnd& end, const AirRows& air, const Terms& t, int image, std::size_t cell,
                           int bin, V bins, const float* axis) {
    const float at = AmplitudeAt(end, air, t, image, cell, bin);
    const float low = bin > 0 ? AmplitudeAt(end, air, t, image, cell, bin - 1) : at;
    const float high = bin + 1 < kBins ? AmplitudeAt(end, air, t, image, cell, bin + 1) : at;
    const V rest = Around(low, at, high).At(bins);
    if (!axis) return rest;
    const V directivity = hn::Mul(CapNear(*end.directivity, t, image, cell, bin, bins), hn::LoadU(F(), axis));
    return hn::Mul(rest, hn::Min(directivity, Number(1.0f)));
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
