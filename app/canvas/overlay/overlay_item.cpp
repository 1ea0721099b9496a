// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/overlay_item.h"

#include "app/canvas/plan_scene.h"

namespace howlmap::app {

OverlayItem::OverlayItem(PlanScene& scene) : plan_(scene) {
    setZValue(layer::kOverlay);
    setAcceptedMouseButtons(Qt::NoButton);
    setCacheMode(DeviceCoordinateCache);
}

void OverlayItem::show_picture(std::shared_ptr<const MapPicture> picture, double opacity) {
    const QRectF next = picture ? picture->page : QRectF();
    if (next != bounds_) prepareGeometryChange();
    bounds_ = next;
    picture_ = std::move(picture);
    opacity_ = opacity;
    update();
}

void OverlayItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (picture_) paint_map(*painter, *picture_, plan_.style(), opacity_);
}

}  // namespace howlmap::app
