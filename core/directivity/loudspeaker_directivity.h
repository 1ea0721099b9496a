// SPDX-License-Identifier: GPL-3.0-or-later
// Directivity of a loudspeaker: real, 1 on axis, 0..1 elsewhere (a table may say more).
#pragma once
#include <variant>

#include "core/directivity/cap_on_sphere.h"
#include "core/directivity/coverage.h"
#include "core/directivity/table.h"

namespace howlmap {

/// A loudspeaker's directivity at one frequency, for many directions. Refers to the directivity it was cut from.
class LoudspeakerSlice {
  public:
    /// Given: what the show says, frequency in Hz above 0, speed of sound in m/s.
    LoudspeakerSlice(const Directivity& directivity, double hz, double speed);
    /// Amplitude ratio to the axis.
    double gain(const LocalAngles& angles) const;

  private:
    struct TableRow {
        const DirectivityTable* table;
        Between place;
    };
    std::variant<std::monostate, CoverageSlice, CapSlice, TableRow> slice_;
};

/// Amplitude ratio to the axis for one direction and frequency; a slice is cheaper for many directions.
double directivity_gain(const Directivity& directivity, const LocalAngles& angles, double hz, double speed);

/// Directivity factor Q of a loudspeaker: 4 pi over the integral of the squared gain over all directions.
/// Source: Beranek, Acoustics, 1954. Numerical, relative error below 1e-4.
double directivity_factor(const Directivity& directivity, double hz, double speed);

}  // namespace howlmap
