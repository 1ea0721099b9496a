// SPDX-License-Identifier: GPL-3.0-or-later
// What a kernel is given: plain arrays, no show.
#pragma once
#include <array>
#include <cstdint>
#include <vector>

#include "core/geometry/pose.h"
#include "core/maps/kernel/fine.h"
#include "core/maps/kernel/rows.h"
#include "hwy/base.h"

namespace howlmap::maps {

/// Up to 16 places. Coordinates in m; surplus ones repeat the last.
struct Tile {
    alignas(64) std::array<double, kTile> x, y, z;
    int cells = 0;
    int first = 0;  ///< index of its first cell in the order of the tiles
};

/// One way to a cell: the fixed end mirrored in a plane. For the floor, whose height may depend on the cell, `plane` is
/// not used.
struct Image {
    Via via = Via::direct;
    double plane = 0.0;
};

/// Drives, or a constant part, at a list of frequencies; null: none.
struct Samples {
    const float* re = nullptr;
    const float* im = nullptr;
    const float* axis = nullptr;  ///< cap on a sphere: 1 / its value on axis
};

using Half = hwy::float16_t;

/// Numbers that the responses of one end at one cell take in one column: by octave, (re, im), lane.
inline constexpr std::size_t kColumnResponses = static_cast<std::size_t>(kOctavesSwept) * 2 * kBlock;
/// How far ahead kept responses are fetched, in numbers, and so how much room there is behind the last: a page, which
/// the machine itself does not look beyond.
inline constexpr std::size_t kFetchedAhead = 2048;

/// A list of frequencies.
struct Places {
    const float* waves = nullptr;  ///< f / c, 1/m
    const float* bins = nullptr;   ///< place in bins
};

/// What stays where it is while the other end stands at the cells: a loudspeaker (cells hear) or a receiver (cells
/// sound).
struct FixedEnd {
    Vec3 position;
    Frame frame;
    std::array<Image, kVias> images{};
    int image_count = 0;
    const double* floor_z = nullptr;  ///< height of the common floor by cell, in the order of the tiles; null: 0
    const DirectivityRows* directivity = nullptr;  ///< of the loudspeaker, at whichever end
    const DirectivityRows* pattern = nullptr;      ///< of the receiver; null: first order
    float first_order = 1.0f;                      ///< a of the receiver

    const float* weights = nullptr;  ///< by column, octave, (re, im), lane: drive of this end, halved
    Samples sparse, fine, narrow;    ///< the same at the listed frequencies, halved

    Half* kept = nullptr;  ///< its responses, by tile, column, cell; null: not kept
    bool known = false;    ///< they are there already: nothing else of this end is looked at
};

/// What is at the cells: a receiver, or a loudspeaker.
struct CellEnd {
    bool sounds = false;
    Frame frame;         ///< its axes, unless it is aimed
    bool aimed = false;  ///< at `target`, wherever it stands, with its roll
    Vec3 target;
    double roll_deg = 0.0;
};

/// Sum over all ends and images of a swept field, of which the largest magnitude is wanted.
struct Field {
    std::vector<FixedEnd> ends;
    std::size_t kept_stride = 0;  ///< from one cell's kept responses to the next one's, in numbers; 0: none are kept
    CellEnd cell;
    const AirRows* air = nullptr;                          ///< for kSwept
    std::array<float, kBinsPerOctave> base_waves{};        ///< f / c of the lowest octave's bins, 1/m
    std::array<bool, kColumns> columns{true, true, true};  ///< columns that hold wanted frequencies
    const float* rise = nullptr;  ///< by column, octave, lane: how far the drives rise around a bin, squared; null: 1
    const FineGrid* grid = nullptr;
    Places sparse, fine, narrow;    ///< narrow: blocks of 16 frequencies that the fine ones may step over
    std::vector<int> narrow_bins;   ///< the swept bin nearest to each block
    bool sweep = true;              ///< false: the narrow blocks alone
    bool refine = true;             ///< look around the peak at the fine frequencies
    const float* offset = nullptr;  ///< constant part of the field, laid out like weights; null: none
    Samples offset_sparse, offset_fine, offset_narrow;
    const Field* divisor = nullptr;  ///< this field is divided by it: the same ends with other drives
};

/// Largest squared magnitude of a field at a cell, and where: f / c in 1/m.
struct Peaks {
    alignas(64) std::array<float, kTile> square{}, waves{};
};

/// Sum of energies over ends, images and third-octave bands. Weights of an end: energy at 1 m on axis by band, 32 of
/// them.
struct EnergyField {
    std::vector<FixedEnd> ends;
    CellEnd cell;
    const AirRows* air = nullptr;  ///< for kBandSweep
};

}  // namespace howlmap::maps
