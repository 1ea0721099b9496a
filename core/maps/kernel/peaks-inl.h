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
    float promise = 0.0f;  ///< its square, times how far the drives rise around it
    int bin = 0;
};

/// The most promising of the swept totals of a cell: two a lane of every column.
struct LanePeaks {
    BinPeak peaks[2 * kColumns * kBlock];
    int count = 0;
};

HWY_INLINE V SquareAt(const float* totals) {
    const F f;
    const V re = hn::Load(f, totals), im = hn::Load(f, totals + kBlock);
    return hn::MulAdd(im, im, hn::Mul(re, re));
}

/// Divisors and rise: null where there are none.
HWY_INLINE void LargestOfColumn(const float* totals, const float* divisors, const float* rise, int column,
                                LanePeaks& found) {
    const F f;
    alignas(64) float most[2][kBlock], where[2][kBlock];
    for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
        V largest = Number(-1.0f), octave = hn::Zero(f), second = largest, second_octave = octave;
        for (int o = 0; o < kOctavesSwept; ++o) {
            const std::size_t at = static_cast<std::size_t>(o * 2 * kBlock) + lane;
            V square = SquareAt(totals + at);
            if (divisors) square = hn::Div(square, SquareAt(divisors + at));
            if (rise) square = hn::Mul(square, hn::Load(f, rise + static_cast<std::size_t>(o * kBlock) + lane));
            const V here = Number(static_cast<float>(o));
            const auto more = hn::Gt(square, largest), some = hn::Gt(square, second);
            second_octave = hn::IfThenElse(more, octave, hn::IfThenElse(some, here, second_octave));
            second = hn::IfThenElse(more, largest, hn::Max(square, second));
            largest = hn::IfThenElse(more, square, largest);
            octave = hn::IfThenElse(more, here, octave);
        }
        hn::Store(largest, f, most[0] + lane);
        hn::Store(octave, f, where[0] + lane);
        hn::Store(second, f, most[1] + lane);
        hn::Store(second_octave, f, where[1] + lane);
    }
    for (int i = 0; i < 2; ++i)
        for (int lane = 0; lane < kBlock; ++lane)
            found.peaks[found.count++] = {most[i][lane], bin_of(column, static_cast<int>(where[i][lane]), lane)};
}

constexpr std::size_t kCellFloats = kOctavesSwept * 2 * kBlock;

inline LanePeaks LargestBins(const Field& field, std::size_t cell, const Scratch::Space& space) {
    LanePeaks found;
    for (std::size_t column = 0; column < kColumns; ++column) {
        if (!field.columns[column]) continue;
        const std::size_t at = (column * kTile + cell) * kCellFloats;
        const float* divisors = field.divisor ? space.divisors.data() + at : nullptr;
        const float* rise = field.rise ? field.rise + column * kOctavesSwept * kBlock : nullptr;
        LargestOfColumn(space.totals.data() + at, divisors, rise, static_cast<int>(column), found);
    }
    return found;
}

/// Swept square at a bin.
inline float SquareOfBin(const Field& field, std::size_t cell, int bin, const Scratch::Space& space) {
    const BinPlace place = place_of(bin);
    const std::size_t at = (static_cast<std::size_t>(place.column) * kTile + cell) * kCellFloats +
                           static_cast<std::size_t>(place.octave * 2 * kBlock + place.lane);
    const auto square = [at](const Floats& totals) {
        return totals[at] * totals[at] + totals[at + kBlock] * totals[at + kBlock];
    };
    return field.divisor ? square(space.totals) / square(space.divisors) : square(space.totals);
}

/// One of the lists of frequencies.
struct List {
    Samples FixedEnd::*drives;
    Samples Field::*offset;
    Places Field::*places;
};
constexpr List kSparseList{&FixedEnd::sparse, &Field::offset_sparse, &Field::sparse};
constexpr List kFineList{&FixedEnd::fine, &Field::offset_fine, &Field::fine};
constexpr List kNarrowList{&FixedEnd::narrow, &Field::offset_narrow, &Field::narrow};

/// 16 frequencies near a bin: those of a list from a place on.
struct Near {
    const List& list;
    std::size_t start;
    int bin;
};

inline const float* Shifted(const float* from, std::size_t by) { return from ? from + by : nullptr; }

/// Sum over the images of an end at frequencies near a bin.
HWY_INLINE Phasor NearResponse(const NearPath* paths, int count, V waves, V bins, const float* axis) {
    const F f;
    Phasor sum{hn::Zero(f), hn::Zero(f)};
    for (int image = 0; image < count; ++image) {
        const NearPath& path = paths[image];
        const V amplitude = AmplitudeNear(path, bins, axis);
        const Phasor phasor = PhasorOf(Number(path.metres), Number(path.metres_rest), waves);
        sum.c = hn::MulAdd(amplitude, phasor.c, sum.c);
        sum.s = hn::MulAdd(amplitude, phasor.s, sum.s);
    }
    return sum;
}

/// Squared magnitudes of a field at 16 frequencies near a bin, without its divisor.
HWY_INLINE void SquaresNear(const Field& field, const Near& near, const Scratch::Space& space, float* squares) {
    const F f;
    const Places& places = field.*near.list.places;
    const Samples& offset = field.*near.list.offset;
    for (std::size_t lane = 0; lane < kBlock; lane += hn::Lanes(f)) {
        const std::size_t at = near.start + lane;
        const V waves = hn::LoadU(f, places.waves + at);
        const V bins = hn::Sub(hn::LoadU(f, places.bins + at), Number(static_cast<float>(near.bin)));
        V sum_re = offset.re ? hn::LoadU(f, offset.re + at) : hn::Zero(f);
        V sum_im = offset.im ? hn::LoadU(f, offset.im + at) : hn::Zero(f);
        for (std::size_t i = 0; i < field.ends.size(); ++i) {
            const Samples& drive = field.ends[i].*near.list.drives;
            const Phasor h = NearResponse(space.near.data() + i * kVias, field.ends[i].image_count, waves, bins,
                                          Shifted(drive.axis, at));
            const V re = hn::LoadU(f, drive.re + at), im = hn::LoadU(f, drive.im + at);
            sum_re = hn::MulAdd(h.s, im, hn::MulAdd(h.c, re, sum_re));
            sum_im = hn::NegMulAdd(h.s, re, hn::MulAdd(h.c, im, sum_im));
        }
        hn::Store(hn::MulAdd(sum_im, sum_im, hn::Mul(sum_re, sum_re)), f, squares + lane);
    }
}

struct NearPeak {
    float square = 0.0f, waves = 0.0f;
    std::size_t at = 0;  // of the largest sample, in its list
};

/// A peak that falls by more than this to a neighbour (1.5 dB) is not resolved: its largest sample counts.
inline constexpr float kGentle = 0.7f;

/// Vertex of the parabola through the decibels of the largest of 16 squares and its neighbours.
inline NearPeak Vertex(const float* squares, const float* waves, std::size_t best, NearPeak peak) {
    if (best == 0 || best + 1 == kBlock) return peak;
    const float step_before = waves[best] - waves[best - 1], step_after = waves[best + 1] - waves[best];
    const bool even =
        step_before > 0.0f && step_after > 0.0f && step_after < 1.5f * step_before && step_before < 1.5f * step_after;
    const float before = squares[best - 1] / peak.square, after = squares[best + 1] / peak.square;
    if (!even || !(std::min(before, after) > kGentle)) return peak;
    const float low = std::log(before), high = std::log(after), bend = low + high;
    if (!(bend < 0.0f)) return peak;
    const float shift = 0.5f * (low - high) / bend;  // in steps, -1/2..1/2
    peak.square *= std::exp(-0.25f * (low - high) * shift);
    peak.waves += shift * (shift > 0.0f ? step_after : step_before);
    return peak;
}

/// Largest of 16 frequencies near the bin that the paths have been set for.
HWY_INLINE NearPeak PeakNear(const Field& field, const Near& near, const Scratch::Space& space) {
    alignas(64) float squares[kBlock], divisors[kBlock];
    SquaresNear(field, near, space, squares);
    if (field.divisor) {
        SquaresNear(*field.divisor, near, space, divisors);
        for (std::size_t i = 0; i < kBlock; ++i) squares[i] /= divisors[i];
    }
    const auto best = static_cast<std::size_t>(std::max_element(squares, squares + kBlock) - squares);
    const float* waves = (field.*near.list.places).waves + near.start;
    const NearPeak peak{squares[best], waves[best], near.start + best};
    // The directivity of a cap has kinks where it reaches 1.
    const auto has_kinks = [](const FixedEnd& end) { return end.fine.axis != nullptr; };
    const bool smooth = std::none_of(field.ends.begin(), field.ends.end(), has_kinks);
    return smooth || near.list.drives == &FixedEnd::fine ? Vertex(squares, waves, best, peak) : peak;
}

/// The peak around a bin among the sparse frequencies between the bins beside it. Windows overlap by two, so that every
/// frequency has its neighbours in one of them.
inline NearPeak SparsePeak(const Field& field, int bin, const Scratch::Space& space) {
    const FineGrid& grid = *field.grid;
    const int from = bin > 0 ? grid.sparse_of_bin[static_cast<std::size_t>(bin - 1)] + 1 : 0;
    const int to = grid.sparse_of_bin[static_cast<std::size_t>(bin + 1)] + (bin == kLastBin ? 1 : 0);
    NearPeak peak;
    for (int first = from; first == from || first + 2 < to; first += kBlock - 2) {
        const auto start = static_cast<std::size_t>(std::min(first, grid.sparse_count() - kBlock));
        const NearPeak found = PeakNear(field, {kSparseList, start, bin}, space);
        if (found.square > peak.square) peak = found;
    }
    return peak;
}

/// The peak around a bin: sparse frequencies first, then the fine ones around the best of them.
inline NearPeak Refined(const Field& field, std::size_t cell, int bin, Scratch::Space& space) {
    SetNear(field, cell, bin, space);
    const NearPeak sparse = SparsePeak(field, bin, space);
    const FineGrid& grid = *field.grid;
    const int centre = grid.sparse[sparse.at];
    if (sparse.at + 1 < grid.sparse.size() && grid.sparse[sparse.at + 1] == centre + 1) return sparse;
    const auto start = static_cast<std::size_t>(std::clamp(centre - kBlock / 2, 0, grid.count() - kBlock));
    return PeakNear(field, {kFineList, start, bin}, space);
}

inline NearPeak NarrowPeak(const Field& field, std::size_t cell, std::size_t block, Scratch::Space& space) {
    const int bin = field.narrow_bins[block];
    SetNear(field, cell, bin, space);
    return PeakNear(field, {kNarrowList, block * kBlock, bin}, space);
}

inline float WavesOf(const Field& field, int bin) {
    const BinPlace place = place_of(bin);
    return std::ldexp(field.base_waves[static_cast<std::size_t>(bin % kBinsPerOctave)], place.octave);
}

/// A peak found later must be higher by more than rounding, so that flat fields name their lowest frequency.
inline constexpr float kAbove = 1.00001f;
/// Most that a peak stands above its bin (3 dB) where the drives do not rise: others that could overtake the best so
/// far are refined too.
inline constexpr float kUnderRead = 2.0f;
inline constexpr int kMostRefined = 12;

/// Takes the most promising of the lanes out, with those beside it.
inline BinPeak TakeLargest(LanePeaks& lanes) {
    BinPeak best;
    for (int i = 0; i < lanes.count; ++i)
        if (lanes.peaks[i].promise > best.promise) best = lanes.peaks[i];
    for (int i = 0; i < lanes.count; ++i)
        if (std::abs(lanes.peaks[i].bin - best.bin) <= 1) lanes.peaks[i].promise = 0.0f;
    return best;
}

inline NearPeak SweptPeak(const Field& field, std::size_t cell, Scratch::Space& space) {
    LanePeaks lanes = LargestBins(field, cell, space);
    NearPeak peak;
    for (int i = 0; i < kMostRefined; ++i) {
        const BinPeak swept = TakeLargest(lanes);
        if (!(swept.promise * kUnderRead > peak.square)) break;
        const float square = SquareOfBin(field, cell, swept.bin, space);
        if (square > kAbove * peak.square) peak = {square, WavesOf(field, swept.bin), 0};
        if (!field.refine) break;
        const NearPeak refined = Refined(field, cell, swept.bin, space);
        if (refined.square > kAbove * peak.square) peak = refined;
    }
    return peak;
}

inline NearPeak CellPeak(const Field& field, std::size_t cell, Scratch::Space& space) {
    NearPeak peak;
    if (field.sweep) peak = SweptPeak(field, cell, space);
    for (std::size_t block = 0; block < field.narrow_bins.size(); ++block) {
        const NearPeak narrow = NarrowPeak(field, cell, block, space);
        if (narrow.square > kAbove * peak.square) peak = narrow;
    }
    return peak;
}

}  // namespace HWY_NAMESPACE
}  // namespace howlmap::maps
HWY_AFTER_NAMESPACE();

#endif
