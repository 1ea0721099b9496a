// SPDX-License-Identifier: GPL-3.0-or-later
// What is done to the selection as a whole: each is one step of undo.
#include <QKeyEvent>
#include <QMenu>
#include <algorithm>

#include "app/canvas/drag_reading.h"
#include "app/canvas/nudge.h"
#include "app/canvas/plan_actions.h"
#include "app/canvas/plan_furniture.h"
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

void PlanView::nudge_selected(Vec2 by) { nudge_->by(selected_ids(), by); }

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
        case Qt::Key_F10:
            if (shift) return open_context_menu(menu_place());
            break;
        case Qt::Key_Space:
            if (!event->isAutoRepeat()) tools_->set_space(true);
            return;
        default:
            break;
    }
    QGraphicsView::keyPressEvent(event);
}

void PlanView::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) tools_->set_space(false);
    if (nudge_->active() && !event->isAutoRepeat()) nudge_->rest();
    QGraphicsView::keyReleaseEvent(event);
}

/// A shortcut is about to run: what the arrows did must be on the stack before, say, undo.
bool PlanView::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && nudge_) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        const bool arrow = key >= Qt::Key_Left && key <= Qt::Key_Down;
        if (!arrow && key != Qt::Key_Shift) nudge_->finish();
    }
    return QGraphicsView::event(event);
}

void PlanView::focusInEvent(QFocusEvent* event) {
    scene_->set_focused(true);
    furniture_->update();
    QGraphicsView::focusInEvent(event);
}

void PlanView::focusOutEvent(QFocusEvent* event) {
    nudge_->finish();
    tools_->set_space(false);
    scene_->set_focused(false);
    furniture_->update();
    QGraphicsView::focusOutEvent(event);
}

bool PlanView::focusNextPrevChild(bool next) {
    QStringList ids = scene_->ids();
    std::stable_sort(ids.begin(), ids.end(), [this](const QString& a, const QString& b) {
        const QPointF p = scene_->look(a).at, q = scene_->look(b).at;
        return p.y() != q.y() ? p.y() < q.y() : p.x() < q.x();
    });
    const qsizetype now = selection_.ids().isEmpty() ? -1 : ids.indexOf(selection_.ids().back());
    const qsizetype to = now < 0 ? (next ? 0 : ids.size() - 1) : now + (next ? 1 : -1);
    if (to < 0 || to >= ids.size()) return QAbstractScrollArea::focusNextPrevChild(next);
    selection_.set({ids[to]});
    ensureVisible(scene_->bounds_of({ids[to]}), 40, 40);
    return true;
}

/// Where the menu opens by key: at the selection, else in the middle.
QPoint PlanView::menu_place() const {
    const QRectF box = scene_->bounds_of(selection_.ids());
    const QPoint at = box.isNull() ? viewport()->rect().center() : mapFromScene(box.center());
    return viewport()->mapToGlobal(viewport()->rect().contains(at) ? at : viewport()->rect().center());
}

void PlanView::open_context_menu(QPoint global) {
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    actions_->fill_context_menu(*menu);
    menu->popup(global);
}

void PlanView::contextMenuEvent(QContextMenuEvent* event) {
    if (tools_->busy()) return;
    if (event->reason() == QContextMenuEvent::Keyboard) return open_context_menu(menu_place());
    const QString id = scene_->id_at(to_page(plan_point(event->pos())));
    if (!id.isEmpty() && !selection_.contains(id)) selection_.set({id});
    open_context_menu(event->globalPos());
}

}  // namespace howlmap::app
