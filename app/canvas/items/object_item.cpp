// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/items/object_item.h"

#include <QPainter>
#include <algorithm>
#include <utility>

#include "app/canvas/plan_scene.h"
#include "app/export/labels.h"

namespace howlmap::app {
namespace {
constexpr double kRingPx = 2.0;     ///< selection ring
constexpr double kRingGapPx = 4.0;  ///< between object and ring
constexpr double kAirPx = 1.0;      ///< around a drawing without a ring
constexpr double kCachePx = 160.0;  ///< up to this size a drawing is kept as a picture; larger ones would eat memory

/// What does not change is not painted anew when something moves across it.
void keep_picture(QGraphicsItem& item, const QRectF& bounds, double px) {
    const bool small = std::max(bounds.width(), bounds.height()) <= kCachePx * px;
    item.setCacheMode(small ? QGraphicsItem::DeviceCoordinateCache : QGraphicsItem::NoCache);
}
}  // namespace

ObjectItem::ObjectItem(PlanScene& scene, QString id) : plan_(scene), id_(std::move(id)) { take_bounds(); }

void ObjectItem::take_bounds() {
    const double ring = 1.5 * (kRingGapPx + kRingPx + 1.0);  // it may stand on a corner
    const double margin = (plan_.ringed(id_) ? ring : kAirPx) * plan_.style().px;
    bounds_ = bounds_of(plan_.look(id_), plan_.style()).adjusted(-margin, -margin, margin, margin);
    keep_picture(*this, bounds_, plan_.style().px);
}

void ObjectItem::look_changed() {
    prepareGeometryChange();
    take_bounds();
    update();
}

QRectF ObjectItem::boundingRect() const { return bounds_; }

QPainterPath ObjectItem::shape() const {
    QPainterPath path;
    path.addRect(shape_of(plan_.look(id_), plan_.style()).boundingRect());
    return path;
}

void ObjectItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    const ObjectLook& look = plan_.look(id_);
    const PlanStyle& style = plan_.style();
    paint_object(*painter, look, style, style.ink.ink);
    if (!plan_.ringed(id_)) return;
    const bool selected = plan_.selection().contains(id_);
    const QPen pen = style.pen(style.ink.accent, selected ? kRingPx : 1.0, selected ? Qt::SolidLine : Qt::DotLine);
    paint_ring(*painter, look, style, kRingGapPx, pen);
}

LabelItem::LabelItem(PlanScene& scene, QString id) : plan_(scene), id_(std::move(id)) {
    setAcceptedMouseButtons(Qt::NoButton);
    hide();
}

void LabelItem::set_name(const PageLabel& place, const QString& text, int side) {
    side_ = side;
    if (place == place_ && text == text_) return;
    place_ = place;
    text_ = text;
    take_place();
}

void LabelItem::take_place() {
    prepareGeometryChange();
    const PlanStyle& style = plan_.style();
    bounds_ = label_rect({place_.rect, 0}, style);
    if (!place_.leader.isNull())
        bounds_ |= QRectF(place_.leader.p1() * style.px, place_.leader.p2() * style.px).normalized();
    const double air = bounds_.isEmpty() ? 0.0 : style.px;
    bounds_.adjust(-air, -air, air, air);
    keep_picture(*this, bounds_, style.px);
    setVisible(!bounds_.isEmpty());  // or all for which there is no room would be painted at the origin
    update();
}

void LabelItem::shift(QPointF by) {
    if (bounds_.isEmpty()) return;
    const QPointF px = by / plan_.style().px;
    place_.rect.translate(px);
    place_.leader.translate(px);
    take_place();
}

void LabelItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    paint_name(*painter, plan_.look(id_), place_, text_, plan_.style());
}

}  // namespace howlmap::app
