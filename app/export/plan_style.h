// SPDX-License-Identifier: GPL-3.0-or-later
// How the plan is drawn at one scale. Painters work in plan units: metres, x to stage left, y down the page (towards
// the audience).
#pragma once
#include <QFont>
#include <QPainter>
#include <QPen>
#include <QPointF>

#include "app/export/ink.h"
#include "core/geometry/vec3.h"
#include "core/show/show.h"

namespace howlmap::app {

inline QPointF to_page(Vec2 plan) { return {plan.x, -plan.y}; }
inline Vec2 to_plan(QPointF page) { return {page.x(), -page.y()}; }

struct PlanStyle {
    Ink ink = Ink::for_print();
    double px = 0.01;  ///< metres that one pixel (1/96 inch on paper) covers: widths of lines and heights of letters
                       ///< are given in pixels
    QFont font;        ///< for names
    Units units = Units::metric;
    double label_px = 12.0;  ///< height of the names of objects

    QPen pen(const QColor& colour, double width_px, Qt::PenStyle style = Qt::SolidLine) const {
        return {colour, width_px * px, style, Qt::RoundCap, Qt::RoundJoin};
    }
};

inline constexpr double kThinPx = 1.25, kHeavyPx = 2.75;  ///< the one line weight, and the working side

/// Where a text stands towards its point.
enum class Anchor { left, centre, right };
/// Draws one line of text with its point at the middle of its height; size in pixels.
void draw_text(QPainter& painter, QPointF at, const QString& text, const PlanStyle& style, double size_px,
               const QColor& colour, Anchor anchor = Anchor::centre, double turn_deg = 0.0);
/// Size of a text in pixels.
QSizeF text_size_px(const QString& text, const QFont& font, double size_px);

}  // namespace howlmap::app
