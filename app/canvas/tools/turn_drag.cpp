// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/turn_drag.h"

#include <cmath>

#include "app/canvas/drag_reading.h"
#include "app/canvas/items/handles.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/canvas/step_names.h"
#include "core/geometry/pose.h"

namespace howlmap::app {
namespace {
constexpr double kStepDeg = 15.0;  ///< with Shift
constexpr double kFineDeg = 1.0;   ///< without: no stand is turned more finely

double bearing(Vec2 from, Vec2 to) { return degrees(std::atan2(to.x - from.x, -(to.y - from.y))); }
double to_step(double angle, double step) { return std::round(angle / step) * step; }
}  // namespace

TurnDrag::TurnDrag(PlanView& view, const Pointer& from) : view_(view), pivot_(to_plan(view.handles().pivot())) {
    const Show& show = view.document().show();
    for (const QString& id : view.selection().ids())
        if (const auto object = placed_object(show, id.toStdString()); object && !object->locked)
            ids_.push_back(object->id);
    start_deg_ = bearing(pivot_, from.at);
    const auto only = ids_.size() == 1 ? placed_object(show, ids_.front()) : std::nullopt;
    single_ = only && only->has_yaw;
    if (single_) yaw_deg_ = only->yaw_deg;
    view_.document().begin_gesture(step_name(PlanView::tr("Turn"), show, ids_));
    view_.reading().begin(ids_);
}

/// A single object ends at a round yaw, a group turns by a round angle.
double TurnDrag::turn_for(const Pointer& pointer) const {
    const double turn = bearing(pivot_, pointer.at) - start_deg_;
    const double step = pointer.shift() ? kStepDeg : kFineDeg;
    if (pointer.alt()) return turn;
    return single_ ? to_step(yaw_deg_ + turn, step) - yaw_deg_ : to_step(turn, step);
}

void TurnDrag::update(const Pointer& pointer) {
    const double turn = turn_for(pointer);
    view_.document().update_gesture([&](Show& show) {
        if (single_)
            turn_each_by(show, ids_, turn);
        else
            turn_by(show, ids_, turn, pivot_);
    });
    view_.reading().update_at(pointer.pixel);
}

void TurnDrag::finish(const Pointer& pointer) {
    update(pointer);
    view_.document().end_gesture();
    view_.reading().end();
}

void TurnDrag::cancel() {
    view_.document().cancel_gesture();
    view_.reading().end();
}

}  // namespace howlmap::app
