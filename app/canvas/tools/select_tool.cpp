// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/select_tool.h"

#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/canvas/tools/band_drag.h"
#include "app/canvas/tools/corner_drag.h"
#include "app/canvas/tools/move_drag.h"
#include "app/canvas/tools/turn_drag.h"

namespace howlmap::app {
namespace {
constexpr int kDeadPixels = 3;  ///< a click shakes less than this
}

SelectTool::SelectTool(PlanView& view) : Tool(view) {}

SelectTool::~SelectTool() = default;

void SelectTool::press(const Pointer& pointer) {
    pressed_ = pointer;
    handle_ = view_.handles().handle_at(to_page(pointer.at));
    id_ = handle_ ? QString() : held_at(pointer);
    was_selected_ = view_.selection().contains(id_);
    if (handle_ || id_.isEmpty()) return;
    if (!was_selected_ && !pointer.control() && !pointer.shift()) view_.selection().set({id_});
    if (!was_selected_ && (pointer.control() || pointer.shift())) view_.selection().toggle(id_);
}

/// What a press takes hold of: a selected object even where another lies on it, else the uppermost.
QString SelectTool::held_at(const Pointer& pointer) const {
    const QStringList there = view_.plan_scene().ids_at(to_page(pointer.at));
    if (!pointer.control() && !pointer.shift())
        for (const QString& id : there)
            if (view_.selection().contains(id)) return id;
    return there.value(0);
}

void SelectTool::drag(const Pointer& pointer) {
    if (!pressed_) return;
    if (!drag_) {
        if ((pointer.pixel - pressed_->pixel).manhattanLength() < kDeadPixels) return;
        drag_ = drag_for_press(*pressed_);
    }
    drag_->update(pointer);
}

std::unique_ptr<Drag> SelectTool::drag_for_press(const Pointer& pointer) {
    if (handle_ && handle_->kind == Handle::Kind::turn) return std::make_unique<TurnDrag>(view_, pointer);
    if (handle_) return std::make_unique<CornerDrag>(view_, *handle_);
    if (!id_.isEmpty()) return std::make_unique<MoveDrag>(view_, id_, pointer);
    return std::make_unique<BandDrag>(view_, pointer);
}

void SelectTool::release(const Pointer& pointer) {
    if (drag_) {
        drag_->finish(pointer);
        drag_.reset();
    } else if (pressed_) {
        pick(pointer);
    }
    pressed_.reset();
}

/// A click without a drag. Clicked again, what lies under the selected object is selected, and so around.
void SelectTool::pick(const Pointer& pointer) {
    if (handle_) return;
    if (id_.isEmpty()) {
        if (!pointer.shift() && !pointer.control()) view_.selection().clear();
        return;
    }
    const bool toggles = pointer.control() || pointer.shift();
    if (was_selected_ && toggles) view_.selection().toggle(id_);
    if (!was_selected_ || toggles) return;
    const QStringList there = view_.plan_scene().ids_at(to_page(pointer.at));
    const bool alone = view_.selection().ids() == QStringList{id_};
    view_.selection().set({alone ? there.value((there.indexOf(id_) + 1) % there.size(), id_) : id_});
}

void SelectTool::hover(const Pointer& pointer) {
    const QPointF page = to_page(pointer.at);
    const std::optional<Handle> handle = view_.handles().handle_at(page);
    const QString id = handle ? QString() : view_.plan_scene().id_at(page);
    view_.plan_scene().set_hovered(id);
    cursor_ = handle ? (handle->kind == Handle::Kind::turn ? Qt::CrossCursor : Qt::SizeAllCursor) : Qt::ArrowCursor;
}

bool SelectTool::cancel() {
    const bool any = drag_ != nullptr;
    if (drag_) drag_->cancel();
    drag_.reset();
    pressed_.reset();
    return any;
}

}  // namespace howlmap::app
