// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/items/measure_item.h"

#include <QPainter>

#include "app/canvas/plan_scene.h"
#include "app/export/labels.h"

namespace howlmap::app {
namespace {
constexpr double kTickPx = 6.0;
constexpr double kPlatePx = 5.0;

QRectF plate_of(const QLineF& line, const QString& text, const PlanStyle& style) {
    const QSizeF size = text_size_px(text, style.font, style.label_px) * style.px;
    const double pad = kPlatePx * style.px;
    const QPointF middle = line.center() - QPointF(0.0, size.height() + 2 * pad);
    return QRectF(middle - QPointF(size.width() / 2, size.height() / 2), size).adjusted(-pad, -pad, pad, pad);
}
}  // namespace

MeasureItem::MeasureItem(PlanScene& scene) : plan_(scene) {
    setZValue(layer::kGuides);
    setAcceptedMouseButtons(Qt::NoButton);
}

void MeasureItem::show_line(QPointF from, QPointF to, const QString& text) {
    prepareGeometryChange();
    line_ = {from, to};
    text_ = text;
    const double margin = 2 * kTickPx * plan_.style().px;
    bounds_ =
        QRectF(from, to).normalized().adjusted(-margin, -margin, margin, margin) | plate_of(line_, text, plan_.style());
    update();
}

void MeasureItem::clear() {
    prepareGeometryChange();
    bounds_ = {};
}

void MeasureItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (bounds_.isNull()) return;
    const PlanStyle& style = plan_.style();
    painter->setPen(style.pen(style.ink.accent, 1.5));
    painter->drawLine(line_);
    QLineF tick = line_.normalVector().unitVector();
    tick.setLength(kTickPx * style.px);
    const QPointF half(tick.dx(), tick.dy());
    if (line_.length() > 0.0)
        for (const QPointF& end : {line_.p1(), line_.p2()}) painter->drawLine(end - half, end + half);
    const QRectF plate = plate_of(line_, text_, style);
    painter->setPen(style.pen(style.ink.soft, 1.0));
    painter->setBrush(style.ink.paper);
    painter->drawRect(plate);
    draw_text(*painter, plate.center(), text_, style, style.label_px, style.ink.ink);
}

}  // namespace howlmap::app
