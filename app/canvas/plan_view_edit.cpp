// SPDX-License-Identifier: GPL-3.0-or-later
// What is done to the selection as a whole: each is one step of undo.
#include <QKeyEvent>
#include <QMenu>
#include <algorithm>

#include "app/canvas/drag_reading.h"
#include "app/canvas/plan_actions.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/canvas/step_names.h"
#include "app/canvas/tools/plan_tools.h"

namespace howlmap::app {
namespace {
constexpr double kNudge = 0.01, kLongNudge = 0.10;     ///< metres
constexpr double kTurnKey = 5.0, kLongTurnKey = 15.0;  ///< degrees
}  // namespace

void PlanView::remove_selected() {
    const Ids ids = selected_ids();
    if (ids.empty()) return;
    if (!document_.edit(step_name(tr("Remove"), document_.show(), ids),
                        [&](Show& show) { remove_objects(show, ids); })) {
        Q_EMIT message(tr("Nothing removed: what is selected is locked."));
        return;
    }
    QStringList left;
    for (const QString& id : selection_.ids())
        if (!scene_->look(id).id.isEmpty()) left.append(id);
    selection_.set(left);
}

void PlanView::select_all() { selection_.set(scene_->ids()); }

void PlanView::select_none() { selection_.clear(); }

void PlanView::select_same_kind() {
    QStringList same;
    for (const QString& id : scene_->ids()) {
        const ObjectLook& look = scene_->look(id);
        const bool like = std::any_of(selection_.ids().begin(), selection_.ids().end(), [&](const QString& chosen) {
            return scene_->look(chosen).kind == look.kind && scene_->look(chosen).symbol == look.symbol;
        });
        if (like) same.append(id);
    }
    selection_.set(same);
}

void PlanView::turn_selected(double by_deg) {
    const Ids ids = selected_ids();
    document_.edit(step_name(tr("Turn"), document_.show(), ids), [&](Show& show) { turn_each_by(show, ids, by_deg); });
}

void PlanView::mirror_selected() {
    const Ids ids = selected_ids();
    document_.edit(step_name(tr("Mirror"), document_.show(), ids), [&](Show& show) { mirror(show, ids); });
}

void PlanView::align_selected(AlignTo to) {
    const Ids ids = selected_ids();
    document_.edit(step_name(tr("Align"), document_.show(), ids), [&](Show& show) { align(show, ids, to); });
}

void PlanView::spread_selected(SpreadAlong along) {
    const Ids ids = selected_ids();
    document_.edit(step_name(tr("Spread"), document_.show(), ids), [&](Show& show) { spread(show, ids, along); });
}

void PlanView::set_selected_locked(bool locked) {
    const Ids ids = selected_ids();
    document_.edit(step_name(locked ? tr("Lock") : tr("Unlock"), document_.show(), ids),
                   [&](Show& show) { set_locked(show, ids, locked); });
}

void PlanView::nudge_selected(Vec2 by) {
    const Ids ids = selected_ids();
    document_.edit(step_name(tr("Nudge"), document_.show(), ids), [&](Show& show) { move_by(show, ids, by); });
}

void PlanView::keyPressEvent(QKeyEvent* event) {
    const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
    const double step = shift ? kLongNudge : kNudge;
    switch (event->key()) {
        case Qt::Key_Left:
            return nudge_selected({-step, 0.0});
        case Qt::Key_Right:
            return nudge_selected({step, 0.0});
        case Qt::Key_Up:
            return nudge_selected({0.0, step});
        case Qt::Key_Down:
            return nudge_selected({0.0, -step});
        case Qt::Key_Escape:
            return escape();
        case Qt::Key_Space:
            if (!event->isAutoRepeat()) tools_->set_space(true);
            return;
        default:
            QGraphicsView::keyPressEvent(event);
    }
}

void PlanView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) tools_->set_space(false);
    QGraphicsView::keyReleaseEvent(event);
}

void PlanView::contextMenuEvent(QContextMenuEvent* event) {
    QMenu menu(this);
    actions_->fill_context_menu(menu);
    menu.exec(event->globalPos());
}

}  // namespace howlmap::app
