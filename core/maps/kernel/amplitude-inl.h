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

/// Field of a cap on a sphere at a bin, before division by its size on axis.
inline float CapAt(const DirectivityRows& rows, const Terms& t, int image, std::size_t cell, int bin) {
    const BinPlace place = place_of(std::clamp(bin, 0, kBins - 1));
    const int in_row = place.column * rows.low.column_floats + place.octave * kBlock + place.lane;
    const float* row = rows.low.data.data() + t.low_at[image][cell] + in_row;
    float value = 0.0f;
    for (int k = 0; k < 4; ++k, row += rows.low.row_floats) value += t.low[k][image][cell] * *row;
    return value * rows.axis[static_cast<std::size_t>(in_row)];
}

/// Air, reflection, gain and directivity, without that of a cap on a sphere.
inline float SentAt(const DirectivityRows& rows, const AirRows& air, const Terms& t, int image, std::size_t cell,
                    const BinPlace& place) {
    const int at = t.air_at[image][cell] + place.column * air.column_floats + place.octave * kBlock + place.lane;
    const float* row = air.data.data() + at;
    if (place.octave >= rows.octaves)
        return MixedAt(row, air.row_floats, t.high[0][image][cell], t.high[1][image][cell]);
    const float left = MixedAt(row, air.row_floats, t.air[0][image][cell], t.air[1][image][cell]);
    if (rows.kind == DirectivityRows::Kind::cap) return left * t.gain[image][cell];
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

/// Polynomial of fourth degree through five bins: the lobes of a cap bend too much for straight lines.
inline void SetCapNear(const DirectivityRows& rows, const Terms& t, int image, std::size_t cell, int bin,
                       NearPath& path) {
    float y[5];
    for (int i = 0; i < 5; ++i) y[i] = CapAt(rows, t, image, cell, bin + i - 2);
    const float outer = y[0] + y[4], inner = y[1] + y[3], outer_turn = y[4] - y[0], inner_turn = y[3] - y[1];
    path.cap[0] = y[2];
    path.cap[1] = (8.0f * inner_turn - outer_turn) / 12.0f;
    path.cap[2] = (16.0f * inner - outer - 30.0f * y[2]) / 24.0f;
    path.cap[3] = (outer_turn - 2.0f * inner_turn) / 12.0f;
    path.cap[4] = (outer - 4.0f * inner + 6.0f * y[2]) / 24.0f;
}

inline void SetNearPath(const FixedEnd& end, const AirRows& air, const Terms& t, int image, std::size_t cell, int bin,
                        NearPath& path) {
    path.metres = t.metres[image][cell];
    path.metres_rest = t.metres_rest[image][cell];
    path.middle = AmplitudeAt(end, air, t, image, cell, bin);
    path.below = bin > 0 ? path.middle - AmplitudeAt(end, air, t, image, cell, bin - 1) : 0.0f;
    path.above = bin + 1 < kBins ? AmplitudeAt(end, air, t, image, cell, bin + 1) - path.middle : 0.0f;
    if (end.fine.axis) SetCapNear(*end.directivity, t, image, cell, bin, path);
}

/// All paths of a cell near a bin.
inline void SetNear(const Field& field, std::size_t cell, int bin, Scratch::Space& space) {
    space.near.resize(std::max(space.near.size(), field.ends.size() * kVias));
    for (std::size_t i = 0; i < field.ends.size(); ++i)
        for (int image = 0; image < field.ends[i].image_count; ++image)
            SetNearPath(field.ends[i], *field.air, space.terms[i], image, cell, bin,
                        space.near[i * kVias + static_cast<std::size_t>(image)]);
}

/// Amplitude of a path at frequencies so many bins from the bin; `axis`: 1 / size on axis of a cap there, else null.
HWY_INLINE V AmplitudeNear(const NearPath& path, V bins, const float* axis) {
    const V zero = hn::Zero(F());
    const V upper = hn::MulAdd(hn::Max(bins, zero), Number(path.above), Number(path.middle));
    const V rest = hn::MulAdd(hn::Min(bins, zero), Number(path.below), upper);
    if (!axis) return rest;
    V field = Number(path.cap[4]);
    for (int i = 3; i >= 0; --i) field = hn::MulAdd(bins, field, Number(path.cap[i]));
    return hn::Mul(rest, hn::Min(hn::Mul(field, hn::LoadU(F(), axis)), Number(1.0f)));
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
