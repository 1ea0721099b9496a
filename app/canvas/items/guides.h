// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <QLineF>
#include <vector>

#include "app/canvas/tools/snap.h"

namespace howlmap::app {

class PlanScene;

/// Thin lines that say what an object snapped to.
class Guides : public QGraphicsItem {
  public:
    explicit Guides(PlanScene& scene);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void show_snap(const Snapped& snap);
    void clear();
    const std::vector<QLineF>& lines() const { return lines_; }

  private:
    void take(std::vector<QLineF> lines);

    PlanScene& plan_;
    std::vector<QLineF> lines_;
    std::size_t edges_ = 0;  ///< so many of the first lines run along edges
    QRectF bounds_;
};

}  // namespace howlmap::app
