// SPDX-License-Identifier: GPL-3.0-or-later
// Stage and riser outlines through Boost.Geometry, which stays behind polygon.cpp.
#pragma once
#include <vector>

#include "core/geometry/vec3.h"

namespace howlmap {

using Outline = std::vector<Vec2>;  ///< corners in order, not closed, metres

struct Box2 {
    Vec2 low, high;
    friend bool operator==(const Box2&, const Box2&) = default;
};

/// Smallest box around the corners; an empty outline gives a box of size 0 at the origin.
Box2 bounds_of(const Outline& outline);
/// Whether a point lies inside or on the outline.
bool covers(const Outline& outline, Vec2 point);
/// Whether the outline is a simple polygon: 3 corners or more, edges do not cross or touch, area not 0.
bool is_simple(const Outline& outline);
/// Area in m2, positive whichever way the corners turn.
double area_of(const Outline& outline);
/// The point of the outline's area nearest to the given one (itself when inside). Outline of 3 corners or more.
Vec2 nearest_inside(const Outline& outline, Vec2 point);

}  // namespace howlmap
