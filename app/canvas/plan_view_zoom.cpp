// SPDX-License-Identifier: GPL-3.0-or-later
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "app/canvas/plan_furniture.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/ground.h"

namespace howlmap::app {
namespace {
constexpr double kActual = 100.0;               ///< pixels a metre at 100 %
constexpr double kLeast = 4.0, kMost = 4000.0;  ///< pixels a metre
constexpr double kStep = 1.25;                  ///< of one notch or one key press
constexpr double kWordsPx = 46.0;               ///< room for the words around the stage
constexpr double kFreeAround = 0.03;            ///< of the view, kept free when fitting
}  // namespace

double PlanView::pixels_per_metre() const { return transform().m11(); }

void PlanView::zoom_to(double pixels_per_metre, QPoint anchor) {
    const double scale = std::clamp(pixels_per_metre, kLeast, kMost);
    const QPointF under = viewportTransform().inverted().map(QPointF(anchor));
    setTransform(QTransform::fromScale(scale, scale));
    const QPointF now = viewportTransform().map(under);
    const QPointF way = now - QPointF(anchor);
    horizontalScrollBar()->setValue(horizontalScrollBar()->value() + static_cast<int>(std::lround(way.x())));
    verticalScrollBar()->setValue(verticalScrollBar()->value() + static_cast<int>(std::lround(way.y())));
    fits_ = false;
    after_zoom();
}

void PlanView::after_zoom() {
    scene_->set_scale(1.0 / pixels_per_metre());
    furniture_->update();
    viewport()->update();
    Q_EMIT zoom_changed(pixels_per_metre());
}

void PlanView::zoom_in() { zoom_to(pixels_per_metre() * kStep, viewport()->rect().center()); }
void PlanView::zoom_out() { zoom_to(pixels_per_metre() / kStep, viewport()->rect().center()); }
void PlanView::zoom_actual() { zoom_to(kActual, viewport()->rect().center()); }

void PlanView::zoom_fit() {
    show_rect(extent_of(document_.show()));
    fits_ = true;
}

void PlanView::zoom_selection() {
    const QRectF box = scene_->bounds_of(selection_.ids());
    if (box.isEmpty()) return zoom_fit();
    fits_ = false;
    const double air = 0.5;  // a metre and a half around a single stand says more than the stand alone
    show_rect(box.adjusted(-air, -air, air, air));
}

/// Brings a rectangle of the page into the middle, with room for names and words around it.
void PlanView::show_rect(const QRectF& rect) {
    const QSizeF room = viewport()->size();
    const double width = std::max(40.0, room.width() * (1.0 - 2.0 * kFreeAround) - 2.0 * kWordsPx);
    const double height = std::max(40.0, room.height() * (1.0 - 2.0 * kFreeAround) - 2.0 * kWordsPx);
    const double scale = std::clamp(std::min(width / rect.width(), height / rect.height()), kLeast, kMost);
    setTransform(QTransform::fromScale(scale, scale));
    scene_->set_scale(1.0 / scale);
    centerOn(rect.center());
    after_zoom();
}

void PlanView::wheelEvent(QWheelEvent* event) {
    const QPoint turn = event->angleDelta();
    if (event->modifiers().testFlag(Qt::ShiftModifier) || turn.y() == 0) return QGraphicsView::wheelEvent(event);
    zoom_to(pixels_per_metre() * std::pow(kStep, turn.y() / 120.0), event->position().toPoint());
    event->accept();
}

}  // namespace howlmap::app
