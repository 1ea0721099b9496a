// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/snap.h"

#include <algorithm>
#include <cmath>

namespace howlmap::app {
namespace {
constexpr double kReachPx = 6.0;
constexpr double kFinePixels = 500.0;

struct Pull {
    double to;
    std::optional<Vec2> from;
};

/// Nearest of the offered lines within reach.
template <class Coordinate>
std::optional<Pull> pull(double wanted, const SnapField& field, bool with_centre, Coordinate coordinate) {
    std::optional<Pull> best;
    double least = field.reach;
    const auto offer = [&](double line, std::optional<Vec2> from) {
        const double away = std::abs(wanted - line);
        if (away > least || (best && away == least)) return;
        least = away;
        best = Pull{line, from};
    };
    if (with_centre) offer(0.0, std::nullopt);
    for (const Vec2& neighbour : field.neighbours) offer(coordinate(neighbour), neighbour);
    return best;
}
}  // namespace

SnapField snap_field_at(double pixels_per_metre) {
    SnapField field;
    field.per_metre = pixels_per_metre < kFinePixels ? 10.0 : 100.0;
    field.reach = std::min(kReachPx / pixels_per_metre, 0.5 / field.per_metre);
    return field;
}

Vec2 to_millimetre(Vec2 place) {
    const auto whole = [](double v) { return std::round(v * 1000.0) / 1000.0 + 0.0; };
    return {whole(place.x), whole(place.y)};
}

Snapped snapped(Vec2 wanted, const SnapField& field) {
    const auto on_grid = [&](double v) { return std::round(v * field.per_metre) / field.per_metre + 0.0; };
    Snapped result{{on_grid(wanted.x), on_grid(wanted.y)}, {}, {}, {}, {}};
    if (const auto x = pull(wanted.x, field, true, [](Vec2 p) { return p.x; })) {
        result.at.x = x->to;
        result.guide_x = x->to;
        result.neighbour_x = x->from;
    }
    if (const auto y = pull(wanted.y, field, false, [](Vec2 p) { return p.y; })) {
        result.at.y = y->to;
        result.guide_y = y->to;
        result.neighbour_y = y->from;
    }
    return result;
}

}  // namespace howlmap::app
