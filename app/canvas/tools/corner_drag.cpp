// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/corner_drag.h"

#include "app/canvas/items/guides.h"
#include "app/canvas/plan_view.h"
#include "app/canvas/tools/snap_edges.h"
#include "core/show/edits.h"

namespace howlmap::app {
namespace {
SnapField field_for_corner(PlanView& view, const std::string& id, std::size_t corner, bool all) {
    SnapField field = snap_field_at(view.pixels_per_metre());
    const Show& before = view.document().before_gesture();
    const Outline& outline = *outline_of(before, id);
    field.edges = snap_edges(before, {id});
    for (std::size_t i = 0; i < outline.size(); ++i)
        if (i != corner || all) field.neighbours.push_back(outline[i]);
    return field;
}
}  // namespace

CornerDrag::CornerDrag(PlanView& view, const Handle& handle)
    : view_(view), id_(handle.id.toStdString()), corner_(handle.index), from_edge_(handle.kind == Handle::Kind::edge) {
    view_.document().begin_gesture(handle.id.isEmpty() ? PlanView::tr("Reshape stage") : PlanView::tr("Reshape riser"));
}

Vec2 CornerDrag::target(const Pointer& pointer) {
    if (!view_.snapping() || pointer.alt()) {
        view_.guides().clear();
        return to_millimetre(pointer.at);
    }
    const Snapped snap = snapped(pointer.at, field_for_corner(view_, id_, corner_, from_edge_));
    view_.guides().show_snap(snap);
    return snap.at;
}

void CornerDrag::update(const Pointer& pointer) {
    if (!outline_of(view_.document().before_gesture(), id_)) return;
    const Vec2 to = target(pointer);
    view_.document().update_gesture([&](Show& show) {
        if (from_edge_)
            insert_corner(show, id_, corner_, to);
        else
            move_corner(show, id_, corner_, to);
    });
}

void CornerDrag::finish(const Pointer& pointer) {
    update(pointer);
    view_.document().end_gesture();
    view_.guides().clear();
}

void CornerDrag::cancel() {
    view_.document().cancel_gesture();
    view_.guides().clear();
}

}  // namespace howlmap::app
