// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/ground.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <cmath>
#include <optional>

#include "core/show/placed.h"

namespace howlmap::app {
namespace {
constexpr double kLeastGridPx = 14.0;
constexpr double kMetresPerFoot = 0.3048;
constexpr double kWordPx = 11.0;

QPainterPath outline_path(const Outline& outline) {
    QPolygonF polygon;
    for (const Vec2& corner : outline) polygon << to_page(corner);
    QPainterPath path;
    path.addPolygon(polygon);
    path.closeSubpath();
    return path;
}

/// A plane as a long dash-dotted line a little longer than the stage.
void paint_plane(QPainter& painter, const QLineF& line, const QString& name, const PlanStyle& style, double turn_deg) {
    painter.setPen(style.pen(style.ink.soft, kThinPx, Qt::DashDotLine));
    painter.drawLine(line);
    const QPointF beside =
        turn_deg == 0.0 ? line.p1() + QPointF(0.0, -8.0 * style.px) : line.p1() + QPointF(-8.0 * style.px, 0.0);
    draw_text(painter, beside, name, style, kWordPx, style.ink.soft, Anchor::left, turn_deg);
}
}  // namespace

double grid_step(const PlanStyle& style) {
    const double unit = style.units == Units::metric ? 0.5 : kMetresPerFoot;
    double step = unit;
    for (const double factor : {1.0, 2.0, 4.0, 10.0, 20.0, 40.0, 100.0, 200.0}) {
        step = unit * factor;
        if (step / style.px >= kLeastGridPx) break;
    }
    return step;
}

QRectF extent_of(const Show& show) {
    const Box2 stage = bounds_of(show.stage.outline);
    QRectF area(QPointF(stage.low.x, -stage.high.y), QPointF(stage.high.x, -stage.low.y));
    for (const Riser& riser : show.stage.risers) area |= outline_path(riser.outline).boundingRect();
    for (const Placed& object : placed_objects(show)) {
        const QPointF at = to_page(object.position);
        area |= QRectF(at - QPointF(0.3, 0.3), at + QPointF(0.3, 0.3));
    }
    return area;
}

void paint_grid(QPainter& painter, const QRectF& area, const PlanStyle& style) {
    const double step = grid_step(style);
    painter.setPen(style.pen(style.ink.faint, 1.0));
    for (double x = std::floor(area.left() / step) * step; x <= area.right(); x += step)
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()));
    for (double y = std::floor(area.top() / step) * step; y <= area.bottom(); y += step)
        painter.drawLine(QLineF(area.left(), y, area.right(), y));
}

void paint_stage_floor(QPainter& painter, const Show& show, const PlanStyle& style) {
    painter.fillPath(outline_path(show.stage.outline), style.ink.stage);
}

void paint_stage_edge(QPainter& painter, const Show& show, const PlanStyle& style) {
    painter.save();
    painter.setBrush(Qt::NoBrush);
    const QPainterPath outline = outline_path(show.stage.outline);
    painter.setPen(style.pen(style.ink.soft, kThinPx * 1.4));
    painter.drawPath(outline);
    const double over = 14.0 * style.px;
    const QRectF box = outline.boundingRect().adjusted(-over, -over, over, over);
    const Surfaces& planes = show.stage.surfaces;
    if (planes.back)
        paint_plane(painter, {box.left(), -planes.back->at, box.right(), -planes.back->at},
                    QCoreApplication::translate("Plan", "back wall"), style, 0.0);
    if (planes.front)
        paint_plane(painter, {box.left(), -planes.front->at, box.right(), -planes.front->at},
                    QCoreApplication::translate("Plan", "front wall"), style, 0.0);
    if (planes.left)
        paint_plane(painter, {planes.left->at, box.bottom(), planes.left->at, box.top()},
                    QCoreApplication::translate("Plan", "left wall"), style, -90.0);
    if (planes.right)
        paint_plane(painter, {planes.right->at, box.bottom(), planes.right->at, box.top()},
                    QCoreApplication::translate("Plan", "right wall"), style, -90.0);
    painter.restore();
}

void paint_stage_words(QPainter& painter, const Show& show, const PlanStyle& style) {
    const QRectF box = outline_path(show.stage.outline).boundingRect();
    const double gap = 24.0 * style.px;
    const QColor& colour = style.ink.soft;
    draw_text(painter, {box.center().x(), box.bottom() + gap}, QCoreApplication::translate("Plan", "AUDIENCE"), style,
              kWordPx, colour);
    draw_text(painter, {box.center().x(), box.top() - gap}, QCoreApplication::translate("Plan", "UPSTAGE"), style,
              kWordPx, colour);
    draw_text(painter, {box.right() + gap, box.center().y()}, QCoreApplication::translate("Plan", "STAGE LEFT"), style,
              kWordPx, colour, Anchor::centre, 90.0);
    draw_text(painter, {box.left() - gap, box.center().y()}, QCoreApplication::translate("Plan", "STAGE RIGHT"), style,
              kWordPx, colour, Anchor::centre, -90.0);
}

}  // namespace howlmap::app
