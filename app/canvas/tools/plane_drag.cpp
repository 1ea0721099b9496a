// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/plane_drag.h"

#include "app/canvas/plan_view.h"
#include "app/canvas/tools/snap.h"

namespace howlmap::app {

PlaneDrag::PlaneDrag(PlanView& view, PlaneSide side) : view_(view), side_(side) {
    view_.document().begin_gesture(PlanView::tr("Move wall"));
}

void PlaneDrag::update(const Pointer& pointer) {
    Vec2 to = to_millimetre(pointer.at);
    SnapField grid;
    grid.reach = 0.0;
    if (view_.snapping() && !pointer.alt()) to = snapped(pointer.at, grid).at;
    const bool across = side_ == PlaneSide::back || side_ == PlaneSide::front;
    view_.document().update_gesture([&](Show& show) { move_plane(show, side_, across ? to.y : to.x); });
}

void PlaneDrag::finish(const Pointer& pointer) {
    update(pointer);
    view_.document().end_gesture();
}

void PlaneDrag::cancel() { view_.document().cancel_gesture(); }

}  // namespace howlmap::app
