// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QRubberBand>
#include <QStringList>

#include "app/canvas/tools/tool.h"

namespace howlmap::app {

/// The rubber band: selects what lies inside; Shift adds to what was selected, Ctrl toggles.
class BandDrag : public Drag {
  public:
    BandDrag(PlanView& view, const Pointer& from);
    void update(const Pointer& pointer) override;
    void finish(const Pointer& pointer) override;
    void cancel() override;

  private:
    PlanView& view_;
    QRubberBand band_;
    Pointer from_;
    QStringList before_;
};

}  // namespace howlmap::app
