// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/map_picture.h"
#include "app/export/plan_style.h"

namespace howlmap::app {

inline constexpr QSizeF kLegendSize{250.0, 68.0};  ///< pixels

/// What a map is of, and its scale with figures and what they mean, in colours as pale as the map's `opacity` (0..1)
/// makes them. The painter works in pixels (style.px is 1).
void paint_legend(QPainter& painter, QPointF upper_left, const MapPicture& picture, const PlanStyle& style,
                  double opacity);

}  // namespace howlmap::app
