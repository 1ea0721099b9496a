// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/move_drag.h"

#include <algorithm>

#include "app/canvas/drag_reading.h"
#include "app/canvas/items/guides.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/canvas/step_names.h"
#include "app/canvas/tools/snap_edges.h"
#include "core/show/placed.h"

namespace howlmap::app {
namespace {
SnapField field_for_move(PlanView& view, const Ids& moving) {
    SnapField field = snap_field_at(view.pixels_per_metre());
    for (const Placed& object : placed_objects(view.document().show()))
        if (object.kind != ObjectKind::riser && std::find(moving.begin(), moving.end(), object.id) == moving.end())
            field.neighbours.push_back(object.position);
    field.edges = snap_edges(view.document().show(), moving);
    return field;
}
}  // namespace

MoveDrag::MoveDrag(PlanView& view, const QString& grabbed, const Pointer& from) : view_(view), from_(from.at) {
    const Show& show = view.document().show();
    for (const QString& id : view.selection().ids()) {
        const auto object = placed_object(show, id.toStdString());
        if (object && !object->locked) ids_.push_back(object->id);
    }
    const auto held = placed_object(show, grabbed.toStdString());
    if (!held || held->locked || ids_.empty()) {
        Q_EMIT view_.message(PlanView::tr("It is locked: unlock it to move it."));
        return;
    }
    moves_ = true;
    start_ = held->position;
    field_ = field_for_move(view, ids_);
    field_.sides = snap_sides(show, held->id);
    view_.document().begin_gesture(step_name(PlanView::tr("Move"), show, ids_));
    view_.reading().begin(ids_);
}

MoveDrag::~MoveDrag() = default;

Vec2 MoveDrag::target(const Pointer& pointer) {
    const Vec2 wanted = start_ + (pointer.at - from_);
    if (!view_.snapping() || pointer.alt()) {
        view_.guides().clear();
        return to_millimetre(wanted);
    }
    const Snapped snap = snapped(wanted, field_);
    view_.guides().show_snap(snap);
    return snap.at;
}

void MoveDrag::update(const Pointer& pointer) {
    if (!moves_) return;
    const Vec2 by = target(pointer) - start_;
    view_.document().update_gesture([&](Show& show) { move_by(show, ids_, by); });
    view_.reading().update_at(pointer.pixel);
}

void MoveDrag::finish(const Pointer& pointer) {
    if (!moves_) return;
    update(pointer);
    view_.document().end_gesture();
    done();
}

void MoveDrag::cancel() {
    if (!moves_) return;
    view_.document().cancel_gesture();
    done();
}

void MoveDrag::done() {
    view_.guides().clear();
    view_.reading().end();
}

}  // namespace howlmap::app
