// SPDX-License-Identifier: GPL-3.0-or-later
// The tool in hand, and panning, which works with every tool.
#pragma once
#include <QMouseEvent>
#include <memory>

#include "app/canvas/plan_view.h"
#include "app/canvas/tools/tool.h"

namespace howlmap::app {

class PlanTools {
  public:
    explicit PlanTools(PlanView& view);
    ~PlanTools();

    ToolKind kind() const { return kind_; }
    void choose(ToolKind kind);
    void press(const QMouseEvent& event);
    void move(const QMouseEvent& event);
    void release(const QMouseEvent& event);
    void double_click(const QMouseEvent& event);
    /// Space held: the left button pans.
    void set_space(bool held);
    bool cancel();
    bool busy() const { return pressed_ || panning_; }

  private:
    Pointer pointer_of(const QMouseEvent& event) const;
    void begin_pan(QPoint at);
    void show_cursor();

    PlanView& view_;
    ToolKind kind_ = ToolKind::select;
    std::unique_ptr<Tool> tool_;
    bool pressed_ = false, panning_ = false, space_ = false;
    QPoint pan_at_;
};

}  // namespace howlmap::app
