// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

#include "app/canvas/tools/snap.h"
#include "app/canvas/tools/tool.h"
#include "core/show/edits.h"

namespace howlmap::app {

/// Moves the selection; the object that was taken hold of snaps, the others keep their places towards it.
class MoveDrag : public Drag {
  public:
    MoveDrag(PlanView& view, const QString& grabbed, const Pointer& from);
    ~MoveDrag() override;
    void update(const Pointer& pointer) override;
    void finish(const Pointer& pointer) override;
    void cancel() override;

  private:
    Vec2 target(const Pointer& pointer);
    void done();

    PlanView& view_;
    Ids ids_;
    Vec2 from_, start_;  ///< of the pointer, of the object taken hold of
    SnapField field_;
    bool moves_ = false;
};

}  // namespace howlmap::app
