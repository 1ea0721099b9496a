// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/plan_style.h"

namespace howlmap::app {

/// Length in metres of the bar at a scale: a round number of metres or feet, about 80 to 200 pixels.
double scale_bar_length(double pixels_per_metre, Units units);
/// The bar with its length above, lower left corner at a point. The painter works in pixels (style.px is 1).
void paint_scale_bar(QPainter& painter, QPointF lower_left, double pixels_per_metre, const PlanStyle& style);
/// Height of the bar with its text, in pixels.
inline constexpr double kScaleBarHeight = 26.0;

/// "0.5 m", "2 ft": a length that is round in its unit.
QString unit_length_text(double metres, Units units);

}  // namespace howlmap::app
