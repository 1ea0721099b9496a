// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <vector>

#include "app/export/lobes.h"

namespace howlmap::app {

class PlanScene;

/// Pickup and coverage lobes of the selection at one frequency, with the directions from which nothing is heard.
class LobeItem : public QGraphicsItem {
  public:
    explicit LobeItem(PlanScene& scene);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void refresh(double hz);
    const std::vector<Lobe>& lobes() const { return lobes_; }

  private:
    PlanScene& plan_;
    std::vector<Lobe> lobes_;
    QRectF bounds_;
};

}  // namespace howlmap::app
