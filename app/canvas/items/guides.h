// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QLineF>
#include <vector>

#include "app/canvas/tools/snap.h"

namespace howlmap::app {

class PlanScene;

class GuideLine;

/// Thin lines that say what an object snapped to. Each is an item: where two cross, what lies in the rectangle between
/// them need not be painted anew.
class Guides {
  public:
    explicit Guides(PlanScene& scene) : plan_(scene) {}
    void show_snap(const Snapped& snap);
    void clear();
    std::vector<QLineF> lines() const;

  private:
    struct Line {
        QLineF page;
        bool edge = false;  ///< drawn over an edge of the stage, a riser or an object
        friend bool operator==(const Line&, const Line&) = default;
    };
    friend class GuideLine;
    void take(const std::vector<Line>& lines);

    PlanScene& plan_;
    std::vector<GuideLine*> items_;  ///< owned by the scene
};

}  // namespace howlmap::app
