// SPDX-License-Identifier: GPL-3.0-or-later
// Snapping of an object to the centre line, to neighbours, to edges and walls, and to the grid. Pure.
#pragma once
#include <optional>
#include <vector>

#include "core/geometry/polygon.h"

namespace howlmap::app {

/// What things come to rest at: an edge of the stage or of a riser, a wall.
struct SnapEdge {
    Vec2 from, to;
};

struct SnapField {
    std::vector<Vec2> neighbours;  ///< positions of objects that stay
    std::vector<SnapEdge> edges;
    Box2 sides;               ///< of the object that moves, seen from its place: they come to rest at edges, too
    double per_metre = 10.0;  ///< grid lines in a metre
    double reach = 0.05;      ///< metres within which the centre line, neighbours and edges pull
};

struct Snapped {
    Vec2 at;
    std::optional<double> guide_x, guide_y;  ///< the line of the centre or a neighbour that pulled, for the eye
    std::optional<Vec2> neighbour_x, neighbour_y;
    std::vector<SnapEdge> edges;  ///< those that pulled
};

/// The field at a zoom: a grid of 10 cm, of 1 cm from 500 pixels a metre on; a few pixels of reach, but never past the
/// next line of the grid, which could not be reached otherwise.
SnapField snap_field_at(double pixels_per_metre);

/// A place without more digits than a hand has: whole millimetres.
Vec2 to_millimetre(Vec2 place);
/// A neighbour, an edge alongside or the centre line within reach wins over the grid, the nearest one first; x and y on
/// their own. An edge aslant holds the place itself where nothing else pulls.
Snapped snapped(Vec2 wanted, const SnapField& field);

}  // namespace howlmap::app
