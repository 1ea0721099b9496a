// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/canvas/tools/tool.h"
#include "core/show/edits.h"

namespace howlmap::app {

/// Turns the selection about its middle by the turn handle; Shift brings the angle to multiples of 15 degrees.
class TurnDrag : public Drag {
  public:
    TurnDrag(PlanView& view, const Pointer& from);
    void update(const Pointer& pointer) override;
    void finish(const Pointer& pointer) override;
    void cancel() override;

  private:
    double turn_for(const Pointer& pointer) const;

    PlanView& view_;
    Ids ids_;
    Vec2 pivot_;
    double start_deg_ = 0.0;  ///< angle of the pointer about the pivot at the press
    double yaw_deg_ = 0.0;    ///< of a single object at the press
    bool single_ = false;
};

}  // namespace howlmap::app
