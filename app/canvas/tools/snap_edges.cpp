// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/snap_edges.h"

#include "app/export/object_look.h"

namespace howlmap::app {
namespace {

constexpr double kTrueSize = 1e-6;  ///< metres a pixel at which symbols have the size of the things themselves

void add_outline(std::vector<SnapEdge>& edges, const Outline& outline) {
    for (std::size_t i = 0; i < outline.size(); ++i) edges.push_back({outline[i], outline[(i + 1) % outline.size()]});
}

}  // namespace

std::vector<SnapEdge> snap_edges(const Show& show, const Ids& changing) {
    std::vector<SnapEdge> edges;
    if (!has(changing, {})) add_outline(edges, show.stage.outline);
    for (const Riser& riser : show.stage.risers)
        if (!has(changing, riser.id)) add_outline(edges, riser.outline);
    const Box2 stage = bounds_of(show.stage.outline);
    for (const PlaneSide side : {PlaneSide::back, PlaneSide::front})
        if (const Surface* wall = plane_of(show.stage, side))
            edges.push_back({{stage.low.x, wall->at}, {stage.high.x, wall->at}});
    for (const PlaneSide side : {PlaneSide::left, PlaneSide::right})
        if (const Surface* wall = plane_of(show.stage, side))
            edges.push_back({{wall->at, stage.low.y}, {wall->at, stage.high.y}});
    return edges;
}

Box2 snap_sides(const Show& show, const std::string& id) {
    const auto look = look_of(show, id);
    if (!look || (look->kind != ObjectKind::riser && look->kind != ObjectKind::loudspeaker &&
                  look->kind != ObjectKind::backline))
        return {};
    PlanStyle style;
    style.px = kTrueSize;
    const QRectF box =
        bounds_of(*look, style).translated(-placed_object(show, id)->position.x, placed_object(show, id)->position.y);
    return {to_plan(box.bottomLeft()), to_plan(box.topRight())};
}

}  // namespace howlmap::app
