// SPDX-License-Identifier: GPL-3.0-or-later
// The largest magnitude of a swept field at each cell, sought again at fine frequencies around the swept one and at
// narrow blocks. Included once for every target.
#if defined(HOWLMAP_MAPS_PEAKS_INL) == defined(HWY_TARGET_TOGGLE)
#ifdef HOWLMAP_MAPS_PEAKS_INL
#undef HOWLMAP_MAPS_PEAKS_INL
#else
#define HOWLMAP_MAPS_PEAKS_INL
#endif

#include "core/maps/kernel/amplitude-inl.h"

HWY_BEFORE_NAMESPACE();
namespace howlmap::maps {
namespace HWY_NAMESPACE {

struct BinPeak {
    float square = 0.0f;
    int bin = 0;
};

/// Largest of the swept totals of a cell: one a lane of every column.
struct LanePeaks {
    BinPeak peaks[kColumns * kBlock];
    int count = 0;
};

HWY_INLINE V SquareAt(const float* totals) {
    const F f;
    const V re = hn::Load(f, totals), im = hn::Load(f, totals + kBlock);
    return hn::MulAdd(im, im, hn::Mul(re, re));
}

/// Divisors: null where there are none.
HWY_INLINE void LargestOfColumn(const float* totals, const float* divisors, int column, LanePeaks& found) {
    const F f;
    alignas(64) float most[kBlock], where[kBlock];
    for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
        V largest = Number(-1.0f), octave = hn::Zero(f);
        for (int o = 0; o < kOctavesSwept; ++o) {
            const std::size_t at = static_cast<std::size_t>(o * 2 * kBlock) + lane;
            V square = SquareAt(totals + at);
            if (divisors) square = hn::Div(square, SquareAt(divisors + at));
            const auto more = hn::Gt(square, largest);
            largest = hn::IfThenElse(more, square, largest);
            octave = hn::IfThenElse(more, Number(static_cast<float>(o)), octave);
        }
        hn::Store(largest, f, most + lane);
        hn::Store(octave, f, where + lane);
    }
    for (int lane = 0; lane < kBlock; ++lane)
        found.peaks[found.count++] = {most[lane], bin_of(column, static_cast<int>(where[lane]), lane)};
}

inline LanePeaks LargestBins(const Field& field, std::size_t cell, const Scratch::Space& space) {
    constexpr std::size_t cell_floats = kOctavesSwept * 2 * kBlock;
    LanePeaks found;
    for (std::size_t column = 0; column < kColumns; ++column) {
        if (!field.columns[column]) continue;
        const std::size_t at = (column * kTile + cell) * cell_floats;
        const float* divisors = field.divisor ? space.divisors.data() + at : nullptr;
        LargestOfColumn(space.totals.data() + at, divisors, static_cast<int>(column), found);
    }
    return found;
}

/// 16 frequencies near a bin.
struct Near {
    int bin;
    const float* waves;  // f / c
    const float* bins;   // place in bins
};

/// Drives of an end, or the constant part, at 16 frequencies; null where there is none.
struct NearDrive {
    const float *re, *im, *axis;
};

inline const float* Shifted(const float* from, std::size_t by) { return from ? from + by : nullptr; }

/// Sum over the images of an end at frequencies near a bin.
HWY_INLINE Phasor NearResponse(const FixedEnd& end, const AirRows& air, const Terms& t, std::size_t cell,
                               const Near& near, std::size_t lane, const float* axis) {
    const F f;
    const V waves = hn::LoadU(f, near.waves + lane);
    const V bins = hn::Sub(hn::LoadU(f, near.bins + lane), Number(static_cast<float>(near.bin)));
    Phasor sum{hn::Zero(f), hn::Zero(f)};
    for (int image = 0; image < end.image_count; ++image) {
        const V amplitude = AmplitudeNear(end, air, t, image, cell, near.bin, bins, axis);
        const Phasor phasor = PhasorOf(Number(t.metres[image][cell]), Number(t.metres_rest[image][cell]), waves);
        sum.c = hn::MulAdd(amplitude, phasor.c, sum.c);
        sum.s = hn::MulAdd(amplitude, phasor.s, sum.s);
    }
    return sum;
}

struct NearPeak {
    float square = 0.0f, waves = 0.0f;
};

/// Largest of 16 squares; where they are smooth, with the vertex of the parabola through it and its neighbours.
inline NearPeak Vertex(const float* squares, const float* waves, bool smooth) {
    std::size_t best = 0;
    for (std::size_t i = 1; i < kBlock; ++i)
        if (squares[i] > squares[best]) best = i;
    NearPeak peak{squares[best], waves[best]};
    if (!smooth || best == 0 || best + 1 == kBlock) return peak;
    const float before = squares[best - 1], after = squares[best + 1];
    const float bend = before + after - 2.0f * peak.square;
    const float step_before = waves[best] - waves[best - 1], step_after = waves[best + 1] - waves[best];
    const bool even =
        step_before > 0.0f && step_after > 0.0f && step_after < 1.5f * step_before && step_before < 1.5f * step_after;
    if (!(bend < 0.0f) || !even) return peak;
    const float shift = 0.5f * (before - after) / bend;  // in steps, -1/2..1/2
    peak.square -= 0.25f * (before - after) * shift;
    peak.waves += shift * (shift > 0.0f ? step_after : step_before);
    return peak;
}

/// Where the drives of ends and the constant part lie at 16 fine frequencies.
struct FineDrives {
    std::size_t start;
    NearDrive operator()(const FixedEnd& end) const {
        return {end.fine_re + start, end.fine_im + start, Shifted(end.fine_axis, start)};
    }
    NearDrive Offset(const Field& field) const {
        return {Shifted(field.offset_fine_re, start), Shifted(field.offset_fine_im, start), nullptr};
    }
};

/// The same at those of a narrow block.
struct NarrowDrives {
    std::size_t block;
    NearDrive operator()(const FixedEnd& end) const {
        const float* at = end.narrow + block * 2 * kBlock;
        return {at, at + kBlock, Shifted(end.narrow_axis, block * kBlock)};
    }
    NearDrive Offset(const Field& field) const {
        const float* at = Shifted(field.offset_narrow, block * 2 * kBlock);
        return {at, Shifted(at, kBlock), nullptr};
    }
};

/// Squared magnitudes of a field at 16 frequencies near a bin, without its divisor.
template <class Drives>
HWY_INLINE void SquaresNear(const Field& field, std::size_t cell, const Near& near, const Drives& drives,
                            const Scratch::Space& space, float* squares) {
    const F f;
    const NearDrive offset = drives.Offset(field);
    for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
        V sum_re = offset.re ? hn::LoadU(f, offset.re + lane) : hn::Zero(f);
        V sum_im = offset.im ? hn::LoadU(f, offset.im + lane) : hn::Zero(f);
        for (std::size_t i = 0; i < field.ends.size(); ++i) {
            const NearDrive drive = drives(field.ends[i]);
            const float* axis = Shifted(drive.axis, lane);
            const Phasor h = NearResponse(field.ends[i], *field.air, space.terms[i], cell, near, lane, axis);
            const V re = hn::LoadU(f, drive.re + lane), im = hn::LoadU(f, drive.im + lane);
            sum_re = hn::MulAdd(h.s, im, hn::MulAdd(h.c, re, sum_re));
            sum_im = hn::NegMulAdd(h.s, re, hn::MulAdd(h.c, im, sum_im));
        }
        hn::Store(hn::MulAdd(sum_im, sum_im, hn::Mul(sum_re, sum_re)), f, squares + lane);
    }
}

/// Largest of 16 frequencies near a bin.
template <class Drives>
HWY_INLINE NearPeak PeakNear(const Field& field, std::size_t cell, const Near& near, const Drives& drives,
                             const Scratch::Space& space) {
    alignas(64) float squares[kBlock], divisors[kBlock];
    SquaresNear(field, cell, near, drives, space, squares);
    if (field.divisor) {
        SquaresNear(*field.divisor, cell, near, drives, space, divisors);
        for (std::size_t i = 0; i < kBlock; ++i) squares[i] /= divisors[i];
    }
    bool smooth = true;  // the directivity of a cap has kinks where it reaches 1
    for (const FixedEnd& end : field.ends) smooth = smooth && !end.fine_axis;
    return Vertex(squares, near.waves, smooth);
}

/// The peak around a bin, at the fine frequencies between the bins beside it. Windows overlap by two, so that every
/// frequency has its neighbours in one of them.
inline NearPeak Refined(const Field& field, std::size_t cell, int bin, const Scratch::Space& space) {
    const FineGrid& fine = *field.fine;
    const int from = bin > 0 ? fine.of_bin[static_cast<std::size_t>(bin - 1)] + 1 : 0;
    const int to = fine.of_bin[static_cast<std::size_t>(bin + 1)] + (bin == kLastBin ? 1 : 0);
    NearPeak peak;
    for (int first = from; first == from || first + 2 < to; first += kBlock - 2) {
        const auto start = static_cast<std::size_t>(std::min(first, fine.count() - kBlock));
        const Near near{bin, field.fine_waves + start, fine.bins.data() + start};
        const NearPeak found = PeakNear(field, cell, near, FineDrives{start}, space);
        if (found.square > peak.square) peak = found;
    }
    return peak;
}

inline NearPeak NarrowPeak(const Field& field, std::size_t cell, std::size_t block, const Scratch::Space& space) {
    const NarrowBlock& narrow = field.narrow[block];
    const Near near{narrow.bin, narrow.waves.data(), narrow.bins.data()};
    return PeakNear(field, cell, near, NarrowDrives{block}, space);
}

inline float WavesOf(const Field& field, int bin) {
    const BinPlace place = place_of(bin);
    return std::ldexp(field.base_waves[static_cast<std::size_t>(bin % kBinsPerOctave)], place.octave);
}

/// A peak found later must be higher by more than rounding, so that flat fields name their lowest frequency.
inline constexpr float kAbove = 1.00001f;
/// Most that a peak stands above its bin (2 dB): others that could overtake the best so far are refined too.
inline constexpr float kUnderRead = 1.6f;
inline constexpr int kMostRefined = 6;

/// Takes the largest of the lanes out, with those beside it.
inline BinPeak TakeLargest(LanePeaks& lanes) {
    BinPeak best;
    for (int i = 0; i < lanes.count; ++i)
        if (lanes.peaks[i].square > best.square) best = lanes.peaks[i];
    for (int i = 0; i < lanes.count; ++i)
        if (std::abs(lanes.peaks[i].bin - best.bin) <= 1) lanes.peaks[i].square = 0.0f;
    return best;
}

inline NearPeak SweptPeak(const Field& field, std::size_t cell, const Scratch::Space& space) {
    LanePeaks lanes = LargestBins(field, cell, space);
    NearPeak peak;
    for (int i = 0; i < kMostRefined; ++i) {
        const BinPeak swept = TakeLargest(lanes);
        if (!(swept.square * kUnderRead > peak.square)) break;
        if (swept.square > kAbove * peak.square) peak = {swept.square, WavesOf(field, swept.bin)};
        if (!field.refine) break;
        const NearPeak refined = Refined(field, cell, swept.bin, space);
        if (refined.square > kAbove * peak.square) peak = refined;
    }
    return peak;
}

inline NearPeak CellPeak(const Field& field, std::size_t cell, const Scratch::Space& space) {
    NearPeak peak;
    if (field.sweep) peak = SweptPeak(field, cell, space);
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
