// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/scale_bar.h"

#include <QCoreApplication>
#include <array>

#include "app/settings/figures.h"
#include "core/units/lengths.h"

namespace howlmap::app {
namespace {
constexpr double kLeastPx = 80.0;
constexpr double kTickPx = 6.0;
constexpr double kBarTextPx = 12.0;
constexpr std::array kSteps = {0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0};

}  // namespace

QString unit_length_text(double metres, Units units) {
    const double value = units == Units::metric ? metres : metres / kMetresPerFoot;
    const QString digits = number_text(value, 2);
    return units == Units::metric ? QCoreApplication::translate("Plan", "%1 m").arg(digits)
                                  : QCoreApplication::translate("Plan", "%1 ft").arg(digits);
}

double scale_bar_length(double pixels_per_metre, Units units) {
    const double unit = units == Units::metric ? 1.0 : kMetresPerFoot;
    for (const double step : kSteps)
        if (step * unit * pixels_per_metre >= kLeastPx) return step * unit;
    return kSteps.back() * unit;
}

void paint_scale_bar(QPainter& painter, QPointF lower_left, double pixels_per_metre, const PlanStyle& style) {
    const double metres = scale_bar_length(pixels_per_metre, style.units);
    const double width = metres * pixels_per_metre;
    painter.save();
    painter.setPen(style.pen(style.ink.ink, kThinPx));
    painter.drawLine(lower_left, lower_left + QPointF(width, 0.0));
    for (const double part : {0.0, 0.5, 1.0})
        painter.drawLine(lower_left + QPointF(width * part, 0.0),
                         lower_left + QPointF(width * part, part == 0.5 ? -kTickPx / 2 : -kTickPx));
    draw_text(painter, lower_left + QPointF(width / 2, -kTickPx - kBarTextPx * 0.7),
              unit_length_text(metres, style.units), style, kBarTextPx, style.ink.ink);
    painter.restore();
}

}  // namespace howlmap::app
