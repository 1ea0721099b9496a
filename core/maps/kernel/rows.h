// SPDX-License-Identifier: GPL-3.0-or-later
// Tables that the kernels look up instead of evaluating directivity, reflection and air at every cell.
#pragma once
#include "core/air/air.h"
#include "core/directivity/receiver_pattern.h"
#include "core/maps/kernel/aligned.h"
#include "core/maps/kernel/layout.h"
#include "core/propagation/transfer.h"

namespace howlmap::maps {

/// Directivity of one kind of loudspeaker over direction and frequency.
///
/// same: 1 everywhere. radial: rows over the angle off axis, linear between two. coverage: nodes over the equivalent
/// angle p and the share kappa of the horizontal, each with its value and slopes; above the frequency where the pattern
/// is under control it does not depend on frequency and is worked out directly.
struct DirectivityRows {
    enum class Kind { same, radial, coverage };
    Kind kind = Kind::same;
    int octaves = 0;        ///< lowest octaves that the rows cover; above them the coverage pattern is under control
    int row_floats = 0;     ///< distance between two rows (nodes)
    int column_floats = 0;  ///< distance between two columns within a row
    Floats data;

    float rows_per_radian = 0.0f;  ///< radial
    int last_row = 0;

    float across = 0.0f, above = 0.0f;     ///< coverage: (2 / H)^2 and (2 / V)^2, 1 / rad^2
    float depth = 0.0f, decay = 0.0f;      ///< gain = exp(depth * (exp(decay * p^2) - 1))
    int angle_nodes = 1, share_nodes = 1;  ///< node = share * angle_nodes + angle
};

/// Rows of a coverage pattern lie at p = kAngleKnee * sinh(i / kAngleNodes): close together on axis, further apart off
/// it.
inline constexpr float kAngleKnee = 1.5f, kAngleNodes = 25.0f;
/// Shares kappa 0..1.
inline constexpr int kShareNodes = 13;
/// Octaves (of ten) for which kernels are made; rows always cover one of these numbers.
inline constexpr int kCoverageOctaves[] = {6, 7, 8, 10};

/// Given: the sweep (swept frequencies or bands), speed of sound in m/s.
DirectivityRows directivity_rows(const Directivity& directivity, const Sweep& sweep, double speed);
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
