// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/canvas/tools/tool.h"
#include "core/show/edits.h"

namespace howlmap::app {

/// Pulls a wall of the room nearer or further away.
class PlaneDrag : public Drag {
  public:
    PlaneDrag(PlanView& view, PlaneSide side);
    void update(const Pointer& pointer) override;
    void finish(const Pointer& pointer) override;
    void cancel() override;

  private:
    PlanView& view_;
    PlaneSide side_;
};

}  // namespace howlmap::app
