// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/directivity/coverage.h"

#include <algorithm>
#include <cmath>

#include "core/units/level.h"

namespace howlmap {

double control_hz(double angle_deg, double size_m) { return 25400.0 / (angle_deg * size_m); }

double inverse_square_half_angle(double angle_deg, double size_m, double hz) {
    // angle * max(1, control / hz), in which the angle cancels out where the mouth is too small for it
    const double half = radians(0.5 * std::max(angle_deg, 25400.0 / (size_m * hz)));
    return 1.0 / (half * half);
}

CoverageSlice::CoverageSlice(const Coverage& coverage, double hz)
    : across_(inverse_square_half_angle(coverage.horizontal_deg, coverage.width_m, hz)),
      above_(inverse_square_half_angle(coverage.vertical_deg, coverage.height_m, hz)),
      floor_db_(coverage.floor_db),
      decay_(std::log1p(-6.0 / coverage.floor_db)) {}

double CoverageSlice::db(const LocalAngles& angles) const {
    const double c = std::cos(angles.turn), s = std::sin(angles.turn);
    const double square = angles.off_axis * angles.off_axis * (c * c * across_ + s * s * above_);  // (th / th6)^2
    return floor_db_ * std::expm1(decay_ * square);
}

double CoverageSlice::gain(const LocalAngles& angles) const { return std::exp(kNepersPerDb * db(angles)); }

}  // namespace howlmap
