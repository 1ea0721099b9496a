// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <optional>

#include "app/canvas/items/handles.h"
#include "app/canvas/tools/tool.h"

namespace howlmap::app {

/// Picks, moves and turns objects, pulls corners of risers, draws the rubber band.
class SelectTool : public Tool {
  public:
    explicit SelectTool(PlanView& view);
    ~SelectTool() override;
    void press(const Pointer& pointer) override;
    void drag(const Pointer& pointer) override;
    void release(const Pointer& pointer) override;
    void hover(const Pointer& pointer) override;
    bool cancel() override;
    Qt::CursorShape cursor() const override { return cursor_; }

  private:
    std::unique_ptr<Drag> drag_for_press(const Pointer& pointer);
    QString held_at(const Pointer& pointer) const;
    void pick(const Pointer& pointer);

    std::optional<Pointer> pressed_;  ///< where the button went down, until it comes up
    std::optional<Handle> handle_;    ///< that it went down on
    QString id_;                      ///< that it went down on
    bool was_selected_ = false;
    std::unique_ptr<Drag> drag_;  ///< from the first few pixels on
    Qt::CursorShape cursor_ = Qt::ArrowCursor;
};

}  // namespace howlmap::app
