// SPDX-License-Identifier: GPL-3.0-or-later
// A map as one picture with an opacity of its own in every point (the form that screen, PDF and SVG all draw right),
// with contours.
#pragma once
#include <QImage>
#include <QPolygonF>
#include <QString>
#include <memory>
#include <vector>

#include "app/export/plan_style.h"
#include "core/maps/maps.h"

namespace howlmap::app {

struct Contour {
    double level = 0.0;            ///< dB
    bool heavy = false;            ///< 0 dB, or the house target of a wash map
    std::vector<QPolygonF> lines;  ///< page coordinates
};

struct MapPicture {
    std::shared_ptr<const MapGrid> grid;
    QImage image;  ///< ARGB, clear outside the mapped area
    QRectF page;   ///< where it lies
    std::vector<Contour> contours;
    double target_db = 6.0;
    double low = 0.0, high = 0.0;  ///< ends of the grey scale of a level or wash map
    QString title;                 ///< what the map is of
};

/// What a picture needs to know besides the map.
struct MapLook {
    double target_db = 6.0;   ///< of the margin
    double house_dba = 95.0;  ///< target out front: a contour of its own in wash maps
    Ink ink;
    QString title;  ///< see map_title()
};

/// What a map is of: "Feedback map: 1 Voice, worst of all frequencies".
QString map_title(const Show& show, const MapRequest& request);
/// How maps of a show look.
MapLook look_of(const Show& show, const MapRequest& request, const Ink& ink);
/// Whether a map shows margins (risk colours) rather than levels (grey).
bool shows_risk(MapKind kind);
MapPicture picture_of(std::shared_ptr<const MapGrid> grid, const MapLook& look);

/// Image, then contours with their levels. Opacity 0..1 of the image only.
void paint_map(QPainter& painter, const MapPicture& picture, const PlanStyle& style, double opacity);
/// What the map says where there is nothing to show: "the stage rings already without this input"; empty otherwise.
QString map_notice(const MapGrid& grid);
/// Margin and worst frequency, or level, at a place; empty where the map has none.
QString map_reading(const MapGrid& grid, Vec2 place);

}  // namespace howlmap::app
