// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <memory>

#include "app/export/map_picture.h"

namespace howlmap::app {

class PlanScene;

/// The map under the objects, kept as pixels of the screen until the map or the zoom changes.
class OverlayItem : public QGraphicsItem {
  public:
    explicit OverlayItem(PlanScene& scene);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void show_picture(std::shared_ptr<const MapPicture> picture, double opacity);

  private:
    PlanScene& plan_;
    std::shared_ptr<const MapPicture> picture_;
    double opacity_ = 1.0;
    QRectF bounds_;
};

}  // namespace howlmap::app
