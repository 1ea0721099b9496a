// SPDX-License-Identifier: GPL-3.0-or-later
// The largest magnitude of a swept field at each cell, sought again at fine frequencies around the swept one and at
// narrow blocks. Included once for every target.
#if defined(HOWLMAP_MAPS_PEAKS_INL) == defined(HWY_TARGET_TOGGLE)
#ifdef HOWLMAP_MAPS_PEAKS_INL
#undef HOWLMAP_MAPS_PEAKS_INL
#else
#define HOWLMAP_MAPS_PEAKS_INL
#endif

#include "core/maps/kernel/sweep-inl.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {

struct BinPeak {
    float square = 0.0f;
    int bin = 0;
};

/// Largest of the swept totals of a cell.
inline BinPeak LargestBin(const Field& field, std::size_t cell, const Scratch::Space& space) {
    const F f;
    alignas(64) float most[kBlock], where[kBlock];
    BinPeak peak;
    for (int column = 0; column < kColumns; ++column) {
        if (!field.columns[static_cast<std::size_t>(column)]) continue;
        const float* totals =
            space.totals.data() + (static_cast<std::size_t>(column) * kTile + cell) * kOctavesSwept * 2 * kBlock;
        for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
            V largest = Number(-1.0f), octave = hn::Zero(f);
            for (int o = 0; o < kOctavesSwept; ++o) {
                const V re = hn::Load(f, totals + o * 2 * kBlock + lane),
                        im = hn::Load(f, totals + o * 2 * kBlock + kBlock + lane);
                const V square = hn::MulAdd(im, im, hn::Mul(re, re));
                const auto more = hn::Gt(square, largest);
                largest = hn::IfThenElse(more, square, largest);
                octave = hn::IfThenElse(more, Number(static_cast<float>(o)), octave);
            }
            hn::Store(largest, f, most + lane);
            hn::Store(octave, f, where + lane);
        }
        for (int lane = 0; lane < kBlock; ++lane)
            if (most[lane] > peak.square) peak = {most[lane], bin_of(column, static_cast<int>(where[lane]), lane)};
    }
    return peak;
}

/// Real amplitude of a path at one bin.
inline float AmplitudeAt(const FixedEnd& end, const AirRows& air, const Terms& t, int image, std::size_t cell,
                         int bin) {
    const BinPlace place = place_of(bin);
    const int at = place.octave * kBlock + place.lane;
    const float* air_row = air.data.data() + t.air_at[image][cell] + place.column * air.column_floats + at;
    const DirectivityRows& rows = *end.directivity;
    float amplitude;
    if (place.octave < rows.octaves) {
        const float left = t.air[0][image][cell] * air_row[0] + t.air[1][image][cell] * air_row[air.row_floats];
        const float* row = rows.data.data() + t.low_at[image][cell] + place.column * rows.column_floats;
        if (rows.kind == DirectivityRows::Kind::coverage) {
            row += place.octave * 3 * kBlock + place.lane;
            amplitude = left * (t.low[0][image][cell] * row[0] + t.low[1][image][cell] * row[kBlock] +
                                t.low[2][image][cell] * row[2 * kBlock]);
        } else {
            amplitude = left * (t.low[0][image][cell] * row[at] + t.low[1][image][cell] * row[rows.row_floats + at]);
        }
    } else {
        amplitude = t.high[0][image][cell] * air_row[0] + t.high[1][image][cell] * air_row[air.row_floats];
    }
    if (HasPattern(end)) {
        const float* row =
            end.pattern->data.data() + t.pattern_at[image][cell] + place.column * end.pattern->column_floats + at;
        amplitude *= t.pattern[0][image][cell] * row[0] + t.pattern[1][image][cell] * row[end.pattern->row_floats];
    }
    return amplitude;
}

/// 16 frequencies near a bin: where they are and what drives the ends there.
struct Near {
    int bin;
    const float* waves;  // f / c
    const float* bins;   // distance from the bin in bins
};

/// Sum over the images of an end at 16 frequencies near a bin; amplitudes vary linearly around it.
HWY_INLINE void NearResponse(const FixedEnd& end, const AirRows& air, const Terms& t, std::size_t cell,
                             const Near& near, std::size_t lane, V& re, V& im) {
    const F f;
    const V waves = hn::LoadU(f, near.waves + lane), bins = hn::LoadU(f, near.bins + lane);
    const int below = std::max(near.bin - 1, 0), above = std::min(near.bin + 1, kBins - 1);
    re = im = hn::Zero(f);
    for (int image = 0; image < end.image_count; ++image) {
        const float low = AmplitudeAt(end, air, t, image, cell, below),
                    high = AmplitudeAt(end, air, t, image, cell, above);
        const float slope = (high - low) / static_cast<float>(above - below);
        const float middle = low + slope * static_cast<float>(near.bin - below);
        const V amplitude = hn::MulAdd(bins, Number(slope), Number(middle));
        const Phasor phasor = PhasorOf(Number(t.metres[image][cell]), Number(t.metres_rest[image][cell]), waves);
        re = hn::MulAdd(amplitude, phasor.c, re);
        im = hn::MulAdd(amplitude, phasor.s, im);
    }
}

struct NearPeak {
    float square = 0.0f, waves = 0.0f;
};

/// Largest of 16 squares, with the vertex of the parabola through it and its neighbours.
inline NearPeak Vertex(const float* squares, const float* waves) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < kBlock; ++i)
        if (squares[i] > squares[best]) best = i;
    NearPeak peak{squares[best], waves[best]};
    if (best == 0 || best + 1 == kBlock) return peak;
    const float before = squares[best - 1], after = squares[best + 1];
    const float bend = before + after - 2.0f * peak.square;
    const bool even =
        waves[best + 1] - waves[best] < 1.5f * (waves[best] - waves[best - 1]) && waves[best - 1] < waves[best];
    if (!(bend < 0.0f) || !even) return peak;
    const float shift = 0.5f * (before - after) / bend;  // in steps, -1/2..1/2
    peak.square -= 0.25f * (before - after) * shift;
    peak.waves += shift * 0.5f * (waves[best + 1] - waves[best - 1]);
    return peak;
}

/// Weights of an end, and the constant part, at the 16 frequencies: functions of the end and of the lane.
template <class Weights>
HWY_INLINE NearPeak PeakNear(const Field& field, std::size_t cell, const Near& near, const Weights& weights,
                             const float* offset_re, const float* offset_im, const Scratch::Space& space) {
    const F f;
    alignas(64) float squares[kBlock];
    for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
        V sum_re = offset_re ? hn::LoadU(f, offset_re + lane) : hn::Zero(f);
        V sum_im = offset_im ? hn::LoadU(f, offset_im + lane) : hn::Zero(f);
        for (std::size_t i = 0; i < field.ends.size(); ++i) {
            V re, im;
            NearResponse(field.ends[i], *field.air, space.terms[i], cell, near, lane, re, im);
            const auto [w_re, w_im] = weights(field.ends[i]);
            const V wr = hn::LoadU(f, w_re + lane), wi = hn::LoadU(f, w_im + lane);
            sum_re = hn::MulAdd(im, wi, hn::MulAdd(re, wr, sum_re));
            sum_im = hn::NegMulAdd(im, wr, hn::MulAdd(re, wi, sum_im));
        }
        hn::Store(hn::MulAdd(sum_im, sum_im, hn::Mul(sum_re, sum_re)), f, squares + lane);
    }
    return Vertex(squares, near.waves);
}

/// The peak again, at the fine frequencies within one bin to each side.
inline NearPeak Refined(const Field& field, std::size_t cell, int bin, const Scratch::Space& space) {
    alignas(64) float bins[kBlock];
    const int start = std::clamp(bin * kFinePerBin - kBlock / 2, 0, kFine - kBlock);
    for (int i = 0; i < kBlock; ++i) bins[i] = static_cast<float>(start + i) / kFinePerBin - static_cast<float>(bin);
    const Near near{bin, field.fine_waves + start, bins};
    const auto weights = [&](const FixedEnd& end) { return std::pair(end.fine_re + start, end.fine_im + start); };
    return PeakNear(field, cell, near, weights, field.offset_fine_re ? field.offset_fine_re + start : nullptr,
                    field.offset_fine_im ? field.offset_fine_im + start : nullptr, space);
}

inline NearPeak NarrowPeak(const Field& field, std::size_t cell, std::size_t block, const Scratch::Space& space) {
    const NarrowBlock& narrow = field.narrow[block];
    const std::size_t at = block * 2 * kBlock;
    const auto weights = [&](const FixedEnd& end) { return std::pair(end.narrow + at, end.narrow + at + kBlock); };
    const float* offset = field.offset_narrow ? field.offset_narrow + at : nullptr;
    return PeakNear(field, cell, {narrow.bin, narrow.waves.data(), narrow.bins.data()}, weights, offset,
                    offset ? offset + kBlock : nullptr, space);
}

inline float WavesOf(const Field& field, int bin) {
    const BinPlace place = place_of(bin);
    return std::ldexp(field.base_waves[static_cast<std::size_t>(bin % kBinsPerOctave)], place.octave);
}

/// A peak found later must be higher by more than rounding, so that flat fields name their lowest frequency.
inline constexpr float kAbove = 1.00001f;

inline NearPeak CellPeak(const Field& field, std::size_t cell, const Scratch::Space& space) {
    NearPeak peak;
    if (field.sweep) {
        const BinPeak swept = LargestBin(field, cell, space);
        peak = {swept.square, WavesOf(field, swept.bin)};
        if (field.refine) {
            const NearPeak refined = Refined(field, cell, swept.bin, space);
            if (refined.square > kAbove * peak.square) peak = refined;
        }
    }
    for (std::size_t block = 0; block < field.narrow.size(); ++block) {
        const NearPeak narrow = NarrowPeak(field, cell, block, space);
        if (narrow.square > kAbove * peak.square) peak = narrow;
    }
    return peak;
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
