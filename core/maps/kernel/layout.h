// SPDX-License-Identifier: GPL-3.0-or-later
// How frequencies are laid out for the kernels: in blocks of 16, so that one vector of the widest kind holds a block.
#pragma once
#include <cmath>
#include <cstddef>

#include "core/units/bands.h"

namespace howlmap::maps {

inline constexpr int kBlock = 16;  ///< frequencies in a block, cells in a tile
inline constexpr int kTile = 16;

/// Swept frequencies: 10 octaves of 48, bin b at 20 Hz * 2^(b / 48). The last one lies above 20 kHz and is left out;
/// the fine frequencies reach 20 kHz itself.
inline constexpr int kOctavesSwept = 10;
inline constexpr int kBinsPerOctave = 48;
inline constexpr int kColumns = kBinsPerOctave / kBlock;
inline constexpr int kBins = kOctavesSwept * kBinsPerOctave;
inline constexpr int kLastBin = kBins - 2;

inline double bin_hz(int bin) { return kLowestHz * std::exp2(static_cast<double>(bin) / kBinsPerOctave); }
/// Column (a third of an octave's bins), octave and lane of a bin.
struct BinPlace {
    int column, octave, lane;
};
inline BinPlace place_of(int bin) {
    const int step = bin % kBinsPerOctave;
    return {step / kBlock, bin / kBinsPerOctave, step % kBlock};
}
/// Where the lane of a bin stands among the blocks of all columns and octaves.
inline std::size_t lane_index(const BinPlace& place) {
    const auto block = static_cast<std::size_t>(place.column) * kOctavesSwept + static_cast<std::size_t>(place.octave);
    return block * kBlock + static_cast<std::size_t>(place.lane);
}
/// Blocks follow each other by column, then octave.
inline int bin_of(int column, int octave, int lane) { return octave * kBinsPerOctave + column * kBlock + lane; }

/// A set of frequencies in blocks: hz of (column, octave, lane). Swept: 3 x 10; third-octave bands: 2 x 1.
struct Sweep {
    int columns, octaves;
    double (*hz)(int column, int octave, int lane);
    int blocks() const { return columns * octaves; }
};
inline const Sweep kSwept{kColumns, kOctavesSwept, [](int c, int o, int lane) { return bin_hz(bin_of(c, o, lane)); }};
/// The 31 third-octave centres; the 32nd lane repeats the last.
inline const Sweep kBandSweep{2, 1, [](int c, int, int lane) {
                                  const int band = c * kBlock + lane;
                                  return third_octave_centre(band < kThirdOctaves ? band : kThirdOctaves - 1);
                              }};

}  // namespace howlmap::maps
