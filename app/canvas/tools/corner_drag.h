// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <cstddef>
#include <string>

#include "app/canvas/items/handles.h"
#include "app/canvas/tools/tool.h"

namespace howlmap::app {

/// Pulls one corner of a riser or of the stage, or a new one out of an edge. A place where the outline would cross
/// itself is not taken.
class CornerDrag : public Drag {
  public:
    CornerDrag(PlanView& view, const Handle& handle);
    void update(const Pointer& pointer) override;
    void finish(const Pointer& pointer) override;
    void cancel() override;

  private:
    Vec2 target(const Pointer& pointer);

    PlanView& view_;
    std::string id_;
    std::size_t corner_;  ///< or where the edge starts
    bool from_edge_;
};

}  // namespace howlmap::app
