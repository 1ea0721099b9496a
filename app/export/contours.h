// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QPolygonF>
#include <vector>

#include "core/maps/maps.h"

namespace howlmap::app {

/// Lines along which a map has a level, by marching squares between cell centres; joined to polylines, page
/// coordinates. Squares with a cell outside the area have none.
std::vector<QPolygonF> contour_lines(const MapGrid& grid, double level);

}  // namespace howlmap::app
