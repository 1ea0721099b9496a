// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/ground.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <optional>

#include "app/export/length_text.h"
#include "core/show/placed.h"
#include "core/units/lengths.h"

namespace howlmap::app {
namespace {
constexpr double kLeastGridPx = 14.0;
constexpr double kWordPx = 11.0;
constexpr double kObjectReach = 0.45;  ///< metres that an object may take to each side
constexpr double kWordGapPx = 24.0;    ///< from the edge of the stage

QPainterPath outline_path(const Outline& outline) {
    QPolygonF polygon;
    for (const Vec2& corner : outline) polygon << to_page(corner);
    QPainterPath path;
    path.addPolygon(polygon);
    path.closeSubpath();
    return path;
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

namespace {
constexpr double kHouseShown = 2.0;  ///< metres in front of the stage

QRectF extent(const Show& show, bool with_house) {
    const Box2 stage = bounds_of(show.stage.outline);
    QRectF area(QPointF(stage.low.x, -stage.high.y), QPointF(stage.high.x, -stage.low.y));
    const QRectF near = area.adjusted(-kHouseShown, -kHouseShown, kHouseShown, kHouseShown);
    for (const Riser& riser : show.stage.risers) area |= outline_path(riser.outline).boundingRect();
    for (const Placed& object : placed_objects(show)) {
        const QPointF at = to_page(object.position);
        if (object.kind == ObjectKind::listener && !with_house && !near.contains(at)) continue;
        area |= QRectF(at - QPointF(0.3, 0.3), at + QPointF(0.3, 0.3));
    }
    return area;
}
}  // namespace

QRectF extent_of(const Show& show) { return extent(show, false); }

QRectF extent_with_house(const Show& show) { return extent(show, true); }

void paint_grid(QPainter& painter, const QRectF& area, const PlanStyle& style) {
    const double step = grid_step(style);
    painter.setPen(style.pen(style.ink.faint, 1.0));
    for (double x = std::ceil(area.left() / step) * step; x <= area.right(); x += step)
        painter.drawLine(QLineF(x, area.top(), x, area.bottom()));
    for (double y = std::ceil(area.top() / step) * step; y <= area.bottom(); y += step)
        painter.drawLine(QLineF(area.left(), y, area.right(), y));
}

void paint_stage_floor(QPainter& painter, const Show& show, const PlanStyle& style) {
    painter.fillPath(outline_path(show.stage.outline), style.ink.stage);
}

namespace {
/// Of the name, which reads along its line from the point where it begins.
QRectF box_of(const PlaneMark& plane, const PlanStyle& style) {
    const QSizeF size = text_size_px(plane.name, style.font, kWordPx) * style.px;
    const QPointF at = plane.name_at;
    if (plane.turn_deg == 0.0) return {at - QPointF(0.0, size.height() / 2), size};
    return {at - QPointF(size.height() / 2, size.width()), size.transposed()};
}
}  // namespace

void paint_stage_edge(QPainter& painter, const Outline& stage, const StageWords& words, const PlanStyle& style) {
    painter.save();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(style.pen(style.ink.soft, kThinPx * 1.4));
    painter.drawPath(outline_path(stage));
    for (const PlaneMark& plane : words.planes) {
        painter.setPen(style.pen(style.ink.soft, kThinPx, Qt::DashDotLine));
        painter.drawLine(plane.line);
        // A name that is cut away altogether would still be found in the text of a page.
        if (!painter.hasClipping() || painter.clipBoundingRect().intersects(box_of(plane, style)))
            draw_text(painter, plane.name_at, plane.name, style, kWordPx, style.ink.soft, Anchor::left, plane.turn_deg);
    }
    painter.restore();
}

namespace {
/// Beyond the edge of the stage, and beyond a wall that stands close to it.
double word_gap(const std::optional<Surface>& plane, double edge, const PlanStyle& style) {
    const double gap = kWordGapPx * style.px;
    const double wall = plane ? std::abs(plane->at - edge) : 0.0;
    return wall < 2.0 * gap ? std::max(gap, wall + 0.6 * gap) : gap;
}

/// The middle of the front edge, or a place beside it when something stands there.
double audience_x(const Show& show, double y, double half_word) {
    const Box2 box = bounds_of(show.stage.outline);
    const std::vector<Placed> objects = placed_objects(show);
    for (const double part : {0.5, 0.35, 0.65, 0.2, 0.8}) {
        const double x = box.low.x + (box.high.x - box.low.x) * part;
        const bool taken = std::any_of(objects.begin(), objects.end(), [&](const Placed& object) {
            return std::abs(object.position.x - x) < half_word + kObjectReach &&
                   std::abs(object.position.y - y) < kObjectReach;
        });
        if (!taken) return x;
    }
    return (box.low.x + box.high.x) * 0.5;
}

std::vector<StageWord> words_of(const Show& show, const PlanStyle& style) {
    const Box2 box = bounds_of(show.stage.outline);
    const Surfaces& planes = show.stage.surfaces;
    const double front_y = box.low.y - word_gap(planes.front, box.low.y, style);
    const QString audience = QCoreApplication::translate("Plan", "AUDIENCE");
    const double half_word = text_size_px(audience, style.font, kWordPx).width() * style.px / 2.0;
    const Vec2 middle = (box.low + box.high) * 0.5;
    return {{audience, to_page({audience_x(show, front_y, half_word), front_y}), 0.0},
            {QCoreApplication::translate("Plan", "UPSTAGE"),
             to_page({middle.x, box.high.y + word_gap(planes.back, box.high.y, style)}), 0.0},
            {QCoreApplication::translate("Plan", "STAGE LEFT"),
             to_page({box.high.x + word_gap(planes.left, box.high.x, style), middle.y}), 90.0},
            {QCoreApplication::translate("Plan", "STAGE RIGHT"),
             to_page({box.low.x - word_gap(planes.right, box.low.x, style), middle.y}), -90.0}};
}
}  // namespace

namespace {
QRectF box_of(const StageWord& word, const PlanStyle& style) {
    QSizeF size = text_size_px(word.text, style.font, kWordPx) * style.px;
    if (word.turn_deg != 0.0) size.transpose();
    return {word.at - QPointF(size.width() / 2, size.height() / 2), size};
}

/// Moves the name to where nothing else stands: along its line, and where that is full, further out by a line of text.
void find_room(PlaneMark& plane, QPointF out, const std::vector<QRectF>& taken, const PlanStyle& style) {
    const QPointF begin = plane.name_at;
    const double room = plane.line.length() - text_size_px(plane.name, style.font, kWordPx).width() * style.px;
    const QPointF along = (plane.line.p2() - plane.line.p1()) * (std::max(0.0, room) / plane.line.length());
    for (const double lines : {0.0, 1.0, 2.0})
        for (const double part : {0.0, 1.0, 0.25, 0.75, 0.5}) {
            plane.name_at = begin + along * part + out * lines;
            const QRectF box = box_of(plane, style);
            if (std::none_of(taken.begin(), taken.end(), [&](const QRectF& other) { return box.intersects(other); }))
                return;
        }
    plane.name_at = begin;
}

std::vector<PlaneMark> planes_of(const Show& show, const std::vector<StageWord>& words, const PlanStyle& style) {
    const double over = 14.0 * style.px, beside = 8.0 * style.px;
    const QRectF box = outline_path(show.stage.outline).boundingRect().adjusted(-over, -over, over, over);
    const Surfaces& planes = show.stage.surfaces;
    std::vector<PlaneMark> marks;
    std::vector<QRectF> taken;
    for (const StageWord& word : words) taken.push_back(box_of(word, style));
    const double line = 1.3 * kWordPx * style.px;
    const auto add = [&](PlaneMark mark, QPointF out) {
        find_room(mark, out, taken, style);
        taken.push_back(box_of(mark, style));
        marks.push_back(std::move(mark));
    };
    const auto along = [&](const std::optional<Surface>& plane, const QString& name, double side) {
        if (!plane) return;
        const QLineF wall(box.left(), -plane->at, box.right(), -plane->at);
        add({wall, name, wall.p1() + QPointF(0.0, -beside), 0.0}, {0.0, side * line});
    };
    const auto across = [&](const std::optional<Surface>& plane, const QString& name, double side) {
        if (!plane) return;
        const QLineF wall(plane->at, box.bottom(), plane->at, box.top());
        add({wall, name, wall.p1() + QPointF(side * beside, 0.0), -90.0}, {side * line, 0.0});
    };
    along(planes.back, QCoreApplication::translate("Plan", "back wall"), -1.0);
    along(planes.front, QCoreApplication::translate("Plan", "front wall"), 1.0);
    across(planes.left, QCoreApplication::translate("Plan", "left wall"), 1.0);
    across(planes.right, QCoreApplication::translate("Plan", "right wall"), -1.0);
    return marks;
}
}  // namespace

StageWords stage_words(const Show& show, const PlanStyle& style) {
    StageWords found{words_of(show, style), {}};
    found.planes = planes_of(show, found.words, style);
    return found;
}

void paint_stage_words(QPainter& painter, const StageWords& words, const PlanStyle& style) {
    for (const StageWord& word : words.words)
        draw_text(painter, word.at, word.text, style, kWordPx, style.ink.soft, Anchor::centre, word.turn_deg);
}

QString house_words(const Show& show) {
    const double edge = bounds_of(show.stage.outline).low.y;
    QStringList places;
    for (const Listener& listener : show.listeners)
        if (listener.position.y < edge - kHouseShown)
            places.append(
                QStringLiteral("%1 %2").arg(QString::fromStdString(listener.name.empty() ? listener.id : listener.name),
                                            coarse_length_text(edge - listener.position.y, show.display.units)));
    if (places.isEmpty()) return {};
    return QCoreApplication::translate("Plan", "in the house, from the stage edge: %1")
        .arg(places.join(QStringLiteral(", ")));
}

std::vector<QRectF> stage_word_boxes(const Show& show, const PlanStyle& style) {
    const StageWords around = stage_words(show, style);
    std::vector<QRectF> boxes;
    for (const StageWord& word : around.words) boxes.push_back(box_of(word, style));
    for (const PlaneMark& plane : around.planes) boxes.push_back(box_of(plane, style));
    return boxes;
}

}  // namespace howlmap::app
