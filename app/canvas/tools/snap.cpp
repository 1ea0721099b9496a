// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/snap.h"

#include <algorithm>
#include <cmath>

namespace howlmap::app {
namespace {
constexpr double kReachPx = 6.0;
constexpr double kFinePixels = 500.0;

constexpr double kStraight = 1e-6;

struct Pull {
    double to = 0.0;
    std::optional<Vec2> from = {};
    std::optional<SnapEdge> edge = {};
};

using Axis = double Vec2::*;

/// Whether an edge runs square to an axis and the object is beside it.
bool alongside(const SnapEdge& edge, Vec2 wanted, const SnapField& field, Axis axis, Axis other) {
    if (std::abs(edge.from.*axis - edge.to.*axis) > kStraight) return false;
    const auto [low, high] = std::minmax(edge.from.*other, edge.to.*other);
    return wanted.*other + field.sides.high.*other >= low - field.reach &&
           wanted.*other + field.sides.low.*other <= high + field.reach;
}

/// Nearest of the offered lines within reach.
std::optional<Pull> pull(Vec2 wanted, const SnapField& field, bool with_centre, Axis axis, Axis other) {
    std::optional<Pull> best;
    double least = field.reach;
    const auto offer = [&](const Pull& pull) {
        const double away = std::abs(wanted.*axis - pull.to);
        if (away > least || (best && away == least)) return;
        least = away;
        best = pull;
    };
    if (with_centre) offer({});
    for (const Vec2& neighbour : field.neighbours) offer({neighbour.*axis, neighbour});
    for (const SnapEdge& edge : field.edges) {
        if (!alongside(edge, wanted, field, axis, other)) continue;
        for (const double side : {0.0, field.sides.low.*axis, field.sides.high.*axis})
            offer({edge.from.*axis - side, {}, edge});
    }
    return best;
}

Vec2 nearest_on(const SnapEdge& edge, Vec2 point) {
    const Vec2 along = edge.to - edge.from, to_point = point - edge.from;
    const double square = along.x * along.x + along.y * along.y;
    const double part = square > 0.0 ? (to_point.x * along.x + to_point.y * along.y) / square : 0.0;
    return edge.from + along * std::clamp(part, 0.0, 1.0);
}

/// Onto the nearest edge, whichever way it runs.
void pull_onto_edge(Vec2 wanted, const SnapField& field, Snapped& result) {
    double least = field.reach;
    for (const SnapEdge& edge : field.edges) {
        const Vec2 foot = nearest_on(edge, wanted);
        const double away = std::hypot(foot.x - wanted.x, foot.y - wanted.y);
        if (away >= least) continue;
        least = away;
        result.at = to_millimetre(foot);
        result.edges = {edge};
    }
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
    Snapped result{{on_grid(wanted.x), on_grid(wanted.y)}, {}, {}, {}, {}, {}};
    const auto x = pull(wanted, field, true, &Vec2::x, &Vec2::y), y = pull(wanted, field, false, &Vec2::y, &Vec2::x);
    if (x) {
        result.at.x = x->to;
        result.neighbour_x = x->from;
        if (!x->edge) result.guide_x = x->to;
    }
    if (y) {
        result.at.y = y->to;
        result.neighbour_y = y->from;
        if (!y->edge) result.guide_y = y->to;
    }
    for (const auto& pulled : {x, y})
        if (pulled && pulled->edge) result.edges.push_back(*pulled->edge);
    if (!result.edges.empty()) result.at = to_millimetre(result.at);
    if (!x && !y) pull_onto_edge(wanted, field, result);
    return result;
}

}  // namespace howlmap::app
