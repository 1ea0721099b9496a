// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <vector>

#include "core/maps/kernel/aligned.h"
#include "core/maps/kernel/kernel.h"
#include "core/propagation/paths.h"

namespace howlmap::maps {

inline constexpr int kMiddles = kColumns * kOctavesSwept;

/// Everything about the paths between one fixed end and the cells of a tile that does not depend on frequency.
struct Terms {
    using Row = float[kTile];
    using Offsets = std::int32_t[kTile];
    alignas(64) Row metres[kVias], metres_rest[kVias];  ///< distance as the sum of two numbers
    alignas(64) Row gain[kVias];    ///< what does not depend on frequency: pattern and 1 / r; 0 where there is no image
    alignas(64) Row low[4][kVias];  ///< factors of the directivity rows: two with the gain, or a cap's four without
    alignas(64) Row squares[2][kVias];           ///< X and Y of a coverage pattern
    alignas(64) Row middle[kMiddles][3][kVias];  ///< factors of the nodes of each block between the control frequencies
    alignas(64) Row high[2][kVias];              ///< factors of the two air rows where directivity is one number
    alignas(64) Row air[2][kVias];               ///< shares of the two air rows
    alignas(64) Row pattern[2][kVias];
    alignas(64) Offsets low_at[kVias], air_at[kVias], near_at[kVias], pattern_at[kVias];
    alignas(64) Offsets middle_at[kMiddles][kVias];
};

/// A path near one bin, for the search between the bins.
struct NearPath {
    float metres, metres_rest;
    float middle, below, above;  ///< amplitude there and its slopes to both sides, by bin; without a cap's directivity
    float cap[5];                ///< polynomial of a cap's field over the bins from there on
};

/// Axes of what is at the cells of a tile.
struct CellAxes {
    alignas(64) float forward[3][kTile], right[3][kTile], up[3][kTile];
};

struct Scratch::Space {
    std::vector<Terms, LineAllocator<Terms>> terms;  ///< one an end
    CellAxes axes;
    std::vector<NearPath> near;                      ///< by end and image: kVias an end
    Floats divisors;                                 ///< the same of the field that divides, when there is one
    Floats totals;                                   ///< by column, cell, octave, (re, im), lane
    alignas(64) float saved[kVias][2][kBlock];       ///< phasors between two passes over the octaves
    alignas(64) float unit[3][kTile], there[kTile];  ///< direction to the cell; 1 where the image exists
};

}  // namespace howlmap::maps
