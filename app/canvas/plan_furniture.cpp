// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_furniture.h"

#include <QPainter>
#include <utility>

#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/legend.h"
#include "app/export/scale_bar.h"

namespace howlmap::app {
namespace {
constexpr double kFromEdgePx = 14.0;
constexpr double kTextPx = 12.0;
}  // namespace

PlanFurniture::PlanFurniture(PlanView& view) : QWidget(&view), view_(view) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_NoSystemBackground);
    setFocusPolicy(Qt::NoFocus);
}

void PlanFurniture::set_reading(const QString& text) {
    if (text == reading_) return;
    for (const QString& reading : {std::exchange(reading_, text), text})
        if (!reading.isEmpty()) update(reading_box(reading).adjusted(-2, -2, 2, 2).toRect());
}

QRectF PlanFurniture::legend_box() const {
    return {width() - kLegendSize.width() - kFromEdgePx, height() - kLegendSize.height() - kFromEdgePx,
            kLegendSize.width(), kLegendSize.height()};
}

/// Beside the legend, in front of the stage.
QRectF PlanFurniture::reading_box(const QString& reading) const {
    const QSizeF size = text_size_px(reading, view_.plan_scene().style().font, kTextPx) + QSizeF(16.0, 8.0);
    const QRectF legend = legend_box();
    return {legend.left() - size.width() - 8.0, legend.bottom() - size.height(), size.width(), size.height()};
}

bool PlanFurniture::has_map() const {
    const auto picture = view_.layers().maps().picture();
    return picture && !picture->image.isNull();
}

std::vector<QRectF> PlanFurniture::boxes() const {
    const double ppm = view_.pixels_per_metre();
    const double bar = scale_bar_length(ppm, view_.plan_scene().style().units) * ppm;
    std::vector<QRectF> boxes{{kFromEdgePx, height() - kFromEdgePx - kScaleBarHeight, bar, kScaleBarHeight}};
    if (has_map()) boxes.push_back(legend_box());
    return boxes;
}

void PlanFurniture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    PlanStyle style = view_.plan_scene().style();
    style.px = 1.0;
    paint_scale_bar(painter, QPointF(kFromEdgePx, height() - kFromEdgePx), view_.pixels_per_metre(), style);
    if (view_.hasFocus()) {
        painter.setPen(style.pen(style.ink.accent, 2.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1.0, 1.0, -1.0, -1.0));
    }
    const MapService& maps = view_.layers().maps();
    if (!maps.trouble().isEmpty()) paint_notice(painter, style, maps.trouble());
    if (has_map()) paint_map_corner(painter, style);
}

void PlanFurniture::paint_map_corner(QPainter& painter, const PlanStyle& style) const {
    paint_legend(painter, legend_box().topLeft(), *view_.layers().maps().picture(), style, view_.overlay().opacity);
    if (reading_.isEmpty()) return;
    const QRectF plate = reading_box(reading_);
    painter.setPen(style.pen(style.ink.faint, 1.0));
    painter.setBrush(style.ink.paper);
    painter.drawRect(plate);
    draw_text(painter, plate.center(), reading_, style, kTextPx, style.ink.ink);
}

void PlanFurniture::paint_notice(QPainter& painter, const PlanStyle& style, const QString& notice) const {
    const QSizeF size = text_size_px(notice, style.font, kTextPx) + QSizeF(24.0, 14.0);
    const QRectF plate(QPointF((width() - size.width()) / 2, kFromEdgePx), size);
    painter.setPen(style.pen(style.ink.ink, 1.0));
    painter.setBrush(style.ink.paper);
    painter.drawRect(plate);
    draw_text(painter, plate.center(), notice, style, kTextPx, style.ink.ink);
}

}  // namespace howlmap::app
