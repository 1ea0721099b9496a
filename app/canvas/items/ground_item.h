// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>

#include "app/export/ground.h"

namespace howlmap::app {

class PlanScene;

/// Floor (below the overlay) or edge and words (above it) of the stage.
class GroundItem : public QGraphicsItem {
  public:
    enum class Part { floor, edge };
    GroundItem(PlanScene& scene, Part part);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void look_changed();  ///< stage or scale, or objects for which the words make way

  private:
    PlanScene& plan_;
    Part part_;
    StageWords words_;
    QRectF bounds_;
};

}  // namespace howlmap::app
