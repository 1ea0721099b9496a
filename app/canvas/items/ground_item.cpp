// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/items/ground_item.h"

#include <QPainter>

#include "app/canvas/plan_scene.h"
#include "app/export/ground.h"

namespace howlmap::app {
namespace {
constexpr double kWordsPx = 60.0;  ///< the words and planes reach this far beyond the outline

QRectF planes_of(const Surfaces& surfaces, QRectF area) {
    if (surfaces.back) area |= QRectF(area.left(), -surfaces.back->at, area.width(), 0.01);
    if (surfaces.front) area |= QRectF(area.left(), -surfaces.front->at, area.width(), 0.01);
    if (surfaces.left) area |= QRectF(surfaces.left->at, area.top(), 0.01, area.height());
    if (surfaces.right) area |= QRectF(surfaces.right->at, area.top(), 0.01, area.height());
    return area;
}
}  // namespace

GroundItem::GroundItem(PlanScene& scene, Part part) : plan_(scene), part_(part) {
    setAcceptedMouseButtons(Qt::NoButton);
    setZValue(part == Part::floor ? layer::kGround : layer::kEdge);
    look_changed();
}

void GroundItem::look_changed() {
    prepareGeometryChange();
    const Stage& stage = plan_.document().show().stage;
    const Box2 box = bounds_of(stage.outline);
    const double margin = kWordsPx * plan_.style().px;
    bounds_ = planes_of(stage.surfaces, QRectF(QPointF(box.low.x, -box.high.y), QPointF(box.high.x, -box.low.y)))
                  .adjusted(-margin, -margin, margin, margin);
    if (part_ == Part::edge) words_ = stage_words(plan_.document().show(), plan_.style());
    update();
}

void GroundItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    const Show& show = plan_.document().show();
    if (part_ == Part::floor) return paint_stage_floor(*painter, show, plan_.style());
    paint_stage_edge(*painter, show.stage.outline, words_, plan_.style());
    paint_stage_words(*painter, words_, plan_.style());
}

}  // namespace howlmap::app
