// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that the kernels look up instead of evaluating directivity, reflection and air at every cell.
#pragma once
#include <array>
#include <vector>

#include "core/air/air.h"
#include "core/directivity/receiver_pattern.h"
#include "core/maps/kernel/aligned.h"
#include "core/maps/kernel/layout.h"
#include "core/propagation/transfer.h"

namespace howlmap::maps {

/// Rows of numbers over frequency: one a step of some coordinate. By row, column, octave, lane.
struct Rows {
    int last = 0;           ///< coordinate of the last row; more follow, so that the rows after it can be read
    int octaves = 0;        ///< lowest octaves that they hold
    int row_floats = 0;     ///< distance between two rows
    int column_floats = 0;  ///< distance between two columns within a row
    Floats data;
};

/// Directivity of one kind of loudspeaker (or measured pattern of a receiver) over direction and frequency.
///
/// same: 1 everywhere. radial: rows over the angle off axis, linear between them. cap: the same for a cap on a sphere,
/// whose lobes are round: the cubic through four rows, then held at 1. coverage: the gain is exp(depth (exp(decay q) -
/// 1)) with q = X A(f) + Y B(f), where X and Y are squares of the angle off axis as a share of the half-angles, split
/// by the turn about the axis, and A = min(1, f / fH)^2, B = min(1, f / fV)^2. Below both control frequencies q is a
/// function of one coordinate (rows), above both it does not depend on frequency (worked out directly). Between them
/// every block of 16 frequencies has nodes over its own coordinate, q at its middle, and over the share of X in it.
struct DirectivityRows {
    enum class Kind { same, radial, cap, coverage };
    Kind kind = Kind::same;

    Rows low;                      ///< radial, cap: all octaves; coverage: those below control
    float rows_per_radian = 0.0f;  ///< radial, cap
    Floats axis;                   ///< cap: size on axis by bin, by which its rows are divided

    float across = 0.0f, above = 0.0f;          ///< coverage: (2 / H)^2 and (2 / V)^2, 1 / rad^2
    float depth = 0.0f, decay = 0.0f;           ///< coverage
    float low_across = 0.0f, low_above = 0.0f;  ///< A and B over (f / smaller control frequency)^2, below control

    struct Middle {
        float across = 1.0f, above = 1.0f;  ///< A and B in the middle of the block
    };
    int octaves = 0;    ///< octaves below `low.octaves` have rows, those from there to here have nodes
    int last_node = 0;  ///< of the coordinate; a block has (last_node + 1) x kShareNodes nodes of three vectors
    std::array<Middle, std::size_t{kColumns} * kOctavesSwept> middles;  ///< by octave - low.octaves, column
    Floats nodes;  ///< by octave - low.octaves, column, share, coordinate, (value, slope, slope by share), lane

    Floats control;  ///< coverage over bands: by column, (A, B), lane

    int node_floats() const { return 3 * kBlock; }
    int block_floats() const { return (last_node + 1) * kShareNodes * node_floats(); }
    static constexpr int kShareNodes = 9;
};

/// Coverage coordinates: sqrt(q) = kAngleKnee * sinh(i / kAngleRows): close together on axis, further apart off it.
inline constexpr float kAngleKnee = 1.5f, kAngleRows = 32.0f;

/// Octaves (first with nodes, first without) for which kernels are made; a coverage pattern takes the first pair that
/// encloses its control frequencies.
struct OctaveSplit {
    int low, high;
};
inline constexpr OctaveSplit kSplits[] = {{5, 6}, {5, 7}, {4, 6}, {4, 7}, {4, 8}, {3, 8}, {0, 10}};

/// Given: the sweep (swept frequencies or bands), speed of sound in m/s.
DirectivityRows directivity_rows(const Directivity& directivity, const Sweep& sweep, double speed);
/// 1 / the size on axis of a cap on a sphere, at frequencies in Hz.
Floats cap_axis(const CapOnSphere& cap, const std::vector<double>& hz, double speed);
/// Rows of a receiver's measured pattern; `same` for first-order ones, which do not depend on frequency.
DirectivityRows pattern_rows(const ReceiverPattern& pattern, const Sweep& sweep);

/// Reflection factor times what the air leaves, by via and distance. Rows lie at r = kAirKnee * sinh(i / kAirRows).
inline constexpr float kAirKnee = 25.0f, kAirRows = 100.0f;
struct AirRows {
    int rows = 0;  ///< a via and column
    int row_floats = 0;
    int column_floats = 0;
    int via_floats = 0;
    Floats data;
};
/// Given: the farthest distance in m that will be asked for.
AirRows air_rows(const Surroundings& surroundings, const Sweep& sweep, double farthest_m);

}  // namespace howlmap::maps
