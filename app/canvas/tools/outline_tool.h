// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>

#include "app/canvas/tools/tool.h"

namespace howlmap::app {

/// Reshapes the stage: pull a corner, pull a new one out of an edge, double-click one to take it away, pull a wall.
class OutlineTool : public Tool {
  public:
    explicit OutlineTool(PlanView& view);
    ~OutlineTool() override;
    void press(const Pointer& pointer) override;
    void drag(const Pointer& pointer) override;
    void release(const Pointer& pointer) override;
    void hover(const Pointer& pointer) override;
    void double_click(const Pointer& pointer) override;
    bool cancel() override;
    Qt::CursorShape cursor() const override { return cursor_; }

  private:
    std::unique_ptr<Drag> drag_;
    Qt::CursorShape cursor_ = Qt::ArrowCursor;
};

}  // namespace howlmap::app
