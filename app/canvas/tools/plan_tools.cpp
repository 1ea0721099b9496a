// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/plan_tools.h"

#include <QScrollBar>

#include "app/canvas/tools/measure_tool.h"
#include "app/canvas/tools/outline_tool.h"
#include "app/canvas/tools/select_tool.h"

namespace howlmap::app {

PlanTools::PlanTools(PlanView& view) : view_(view), tool_(std::make_unique<SelectTool>(view)) {}

PlanTools::~PlanTools() = default;

void PlanTools::choose(ToolKind kind) {
    cancel();
    kind_ = kind;
    switch (kind) {
        case ToolKind::select:
            tool_ = std::make_unique<SelectTool>(view_);
            break;
        case ToolKind::measure:
            tool_ = std::make_unique<MeasureTool>(view_);
            break;
        case ToolKind::outline:
            tool_ = std::make_unique<OutlineTool>(view_);
            break;
    }
    show_cursor();
}

Pointer PlanTools::pointer_of(const QMouseEvent& event) const {
    const QPoint pixel = event.position().toPoint();
    return {pixel, view_.plan_point(pixel), event.modifiers()};
}

void PlanTools::begin_pan(QPoint at) {
    panning_ = true;
    pan_at_ = at;
    show_cursor();
}

void PlanTools::press(const QMouseEvent& event) {
    if (busy()) return;
    const bool pan = event.button() == Qt::MiddleButton || (space_ && event.button() == Qt::LeftButton);
    if (pan) return begin_pan(event.position().toPoint());
    if (event.button() != Qt::LeftButton) return;
    pressed_ = true;
    tool_->press(pointer_of(event));
}

void PlanTools::move(const QMouseEvent& event) {
    if (panning_) {
        const QPoint way = event.position().toPoint() - pan_at_;
        pan_at_ = event.position().toPoint();
        view_.panned();
        view_.horizontalScrollBar()->setValue(view_.horizontalScrollBar()->value() - way.x());
        view_.verticalScrollBar()->setValue(view_.verticalScrollBar()->value() - way.y());
        return;
    }
    const Pointer pointer = pointer_of(event);
    if (pressed_)
        tool_->drag(pointer);
    else
        tool_->hover(pointer);
    show_cursor();
}

void PlanTools::release(const QMouseEvent& event) {
    if (panning_ && (event.button() == Qt::MiddleButton || event.button() == Qt::LeftButton)) {
        panning_ = false;
    } else if (pressed_ && event.button() == Qt::LeftButton) {
        pressed_ = false;
        tool_->release(pointer_of(event));
    }
    show_cursor();
}

void PlanTools::double_click(const QMouseEvent& event) {
    if (event.button() == Qt::LeftButton && !busy()) tool_->double_click(pointer_of(event));
}

void PlanTools::set_space(bool held) {
    space_ = held;
    show_cursor();
}

bool PlanTools::cancel() {
    const bool any = panning_ || tool_->cancel();
    panning_ = pressed_ = false;
    return any;
}

void PlanTools::show_cursor() {
    view_.viewport()->setCursor(panning_ ? Qt::ClosedHandCursor : space_ ? Qt::OpenHandCursor : tool_->cursor());
}

}  // namespace howlmap::app
