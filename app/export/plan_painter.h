// SPDX-License-Identifier: GPL-3.0-or-later
// The plan as a page: one painter for print, PDF, SVG, PNG and the sheet. The window draws the same parts as items.
#pragma once
#include <QPainter>
#include <memory>
#include <optional>
#include <vector>

#include "app/export/map_picture.h"
#include "app/export/object_look.h"
#include "app/export/plan_style.h"
#include "core/analysis/analysis.h"

namespace howlmap::app {

/// What is drawn besides the objects.
struct PlanDrawing {
    Ink ink = Ink::for_print();
    QFont font;
    bool title = true, grid = true, background = true;
    std::shared_ptr<const AnalysisResult> analysis;  ///< loop lines, if there
    std::optional<Ring> highlight;
    std::shared_ptr<const MapPicture> map;  ///< under the objects, if there
    double map_opacity = 1.0;
};

class PlanPainter {
  public:
    PlanPainter(const Show& show, PlanDrawing drawing);

    /// Draws the page into an area. `px` is the length of one pixel (1/96 inch) in the painter's units: 1 on screen,
    /// 0.75 in points.
    void paint(QPainter& painter, const QRectF& area, double px = 1.0) const;
    /// The drawing scale 1 : N for an area in pixels, the largest of a round series at which everything fits.
    double scale_for(QSizeF area_px) const;
    /// Height of a page of this width, in pixels, that leaves no more room above and below than the words need; at most
    /// that of the area.
    double height_for(QSizeF area_px) const;
    /// Pixels a metre at a drawing scale 1 : N.
    static double pixels_per_metre(double scale);
    /// Whether the plan suits an upright page better.
    bool upright() const;

  private:
    void paint_title(QPainter& painter, const QRectF& area) const;
    void paint_plan(QPainter& painter, const QRectF& area, double pixels_per_metre) const;
    void paint_foot(QPainter& painter, const QRectF& area, double scale) const;
    void paint_loops(QPainter& painter, const PlanStyle& style) const;
    void paint_labels(QPainter& painter, const PlanStyle& style, QSizeF room_px) const;
    PlanStyle page_style() const;
    /// What is drawn at this scale: the objects with room for words around them, and the walls near by. Page, metres.
    QRectF drawn(double pixels_per_metre) const;

    const Show& show_;
    PlanDrawing drawing_;
    std::vector<ObjectLook> looks_;
    QRectF extent_;  ///< page, metres
};

}  // namespace howlmap::app
