// SPDX-License-Identifier: GPL-3.0-or-later
// Snapping of a point to the centre line, to neighbours and to the grid. Pure.
#pragma once
#include <optional>
#include <vector>

#include "core/geometry/vec3.h"

namespace howlmap::app {

struct SnapField {
    std::vector<Vec2> neighbours;  ///< positions of objects that stay
    double per_metre = 10.0;       ///< grid lines in a metre
    double reach = 0.05;           ///< metres within which the centre line and neighbours pull
};

struct Snapped {
    Vec2 at;
    std::optional<double> guide_x, guide_y;  ///< the line that pulled (centre line or neighbour), for the eye
    std::optional<Vec2> neighbour_x, neighbour_y;
};

/// The field at a zoom: a grid of 10 cm, of 1 cm from 500 pixels a metre on; a few pixels of reach, but never past the
/// next line of the grid, which could not be reached otherwise.
SnapField snap_field_at(double pixels_per_metre);

/// A place without more digits than a hand has: whole millimetres.
Vec2 to_millimetre(Vec2 place);
/// A neighbour or the centre line within reach wins over the grid, the nearest one first; x and y on their own.
Snapped snapped(Vec2 wanted, const SnapField& field);

}  // namespace howlmap::app
