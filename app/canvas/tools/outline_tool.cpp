// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/outline_tool.h"

#include "app/canvas/items/handles.h"
#include "app/canvas/plan_view.h"
#include "app/canvas/tools/corner_drag.h"
#include "app/canvas/tools/plane_drag.h"
#include "app/export/plan_style.h"
#include "core/show/edits.h"

namespace howlmap::app {

OutlineTool::OutlineTool(PlanView& view) : Tool(view) { view_.handles().set_outline_mode(true); }

OutlineTool::~OutlineTool() { view_.handles().set_outline_mode(false); }

void OutlineTool::press(const Pointer& pointer) {
    const auto handle = view_.handles().handle_at(to_page(pointer.at));
    if (!handle) return;
    if (handle->kind == Handle::Kind::plane)
        drag_ = std::make_unique<PlaneDrag>(view_, static_cast<PlaneSide>(handle->index));
    else
        drag_ = std::make_unique<CornerDrag>(view_, *handle);
}

void OutlineTool::drag(const Pointer& pointer) {
    if (drag_) drag_->update(pointer);
}

void OutlineTool::release(const Pointer& pointer) {
    if (drag_) drag_->finish(pointer);
    drag_.reset();
}

void OutlineTool::hover(const Pointer& pointer) {
    cursor_ = view_.handles().handle_at(to_page(pointer.at)) ? Qt::SizeAllCursor : Qt::ArrowCursor;
}

void OutlineTool::double_click(const Pointer& pointer) {
    const auto handle = view_.handles().handle_at(to_page(pointer.at));
    if (!handle || handle->kind != Handle::Kind::corner) return;
    view_.document().edit(PlanView::tr("Remove corner"),
                          [&](Show& show) { remove_corner(show, handle->id.toStdString(), handle->index); });
}

bool OutlineTool::cancel() {
    const bool any = drag_ != nullptr;
    if (drag_) drag_->cancel();
    drag_.reset();
    return any;
}

}  // namespace howlmap::app
