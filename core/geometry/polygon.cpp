// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/polygon.h"

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <limits>

namespace howlmap {
namespace {
namespace bg = boost::geometry;
using Point = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<Point>;

Polygon polygon_of(const Outline& outline) {
    Polygon polygon;
    for (const Vec2& corner : outline) bg::append(polygon.outer(), Point(corner.x, corner.y));
    if (!outline.empty()) bg::append(polygon.outer(), Point(outline.front().x, outline.front().y));
    bg::correct(polygon);
    return polygon;
}

Vec2 nearest_on_edge(Vec2 a, Vec2 b, Vec2 p) {
    const Vec2 edge = b - a, to = p - a;
    const double square = edge.x * edge.x + edge.y * edge.y;
    if (square == 0.0) return a;
    const double t = std::clamp((to.x * edge.x + to.y * edge.y) / square, 0.0, 1.0);
    return a + edge * t;
}
}  // namespace

Box2 bounds_of(const Outline& outline) {
    if (outline.empty()) return {};
    Box2 box{outline.front(), outline.front()};
    for (const Vec2& corner : outline) {
        box.low = {std::min(box.low.x, corner.x), std::min(box.low.y, corner.y)};
        box.high = {std::max(box.high.x, corner.x), std::max(box.high.y, corner.y)};
    }
    return box;
}

bool covers(const Outline& outline, Vec2 point) {
    return outline.size() >= 3 && bg::covered_by(Point(point.x, point.y), polygon_of(outline));
}

bool is_simple(const Outline& outline) {
    return outline.size() >= 3 && bg::is_valid(polygon_of(outline)) && area_of(outline) > 0.0;
}

double area_of(const Outline& outline) { return std::abs(bg::area(polygon_of(outline))); }

Vec2 nearest_inside(const Outline& outline, Vec2 point) {
    if (covers(outline, point)) return point;
    Vec2 best = outline.front();
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 near = nearest_on_edge(outline[i], outline[(i + 1) % outline.size()], point);
        const double distance = length(near - point);
        if (distance < least) {
            least = distance;
            best = near;
        }
    }
    return best;
}

}  // namespace howlmap
