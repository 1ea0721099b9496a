// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/canvas/tools/tool.h"

namespace howlmap::app {

class MeasureItem;

/// Measures between two places or two objects: distance, bearing, travel time, whole waves at the chosen frequency.
class MeasureTool : public Tool {
  public:
    explicit MeasureTool(PlanView& view);
    ~MeasureTool() override;
    void press(const Pointer& pointer) override;
    void drag(const Pointer& pointer) override;
    void release(const Pointer& pointer) override;
    bool cancel() override;
    Qt::CursorShape cursor() const override { return Qt::CrossCursor; }

  private:
    Vec3 place_at(const Pointer& pointer) const;

    MeasureItem* item_;
    Vec3 from_;
};

}  // namespace howlmap::app
