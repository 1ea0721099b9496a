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
constexpr double kNearWall = 2.0;               ///< metres from the stage
constexpr double kStep = 1.25;                  ///< of one notch or one key press
constexpr double kWordsPx = 46.0;               ///< room for the words around the stage
constexpr double kFromRimPx = 3.0;              ///< names keep off the rim of the view
constexpr double kFreeAround = 0.03;            ///< of the view, kept free when fitting

/// With the walls that stand close to the stage: their names and the words beyond need room too.
QRectF with_near_walls(QRectF extent, const Surfaces& walls) {
    const auto reach = [](const std::optional<Surface>& wall, double edge) {
        return wall && std::abs(wall->at - edge) < kNearWall ? wall->at : edge;
    };
    const double top = reach(walls.back, -extent.top()), bottom = reach(walls.front, -extent.bottom());
    const double right = reach(walls.left, extent.right()), left = reach(walls.right, extent.left());
    return extent | QRectF(QPointF(left, -top), QPointF(right, -bottom)).normalized();
}
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

/// While the whole plan is in view its names stay inside it, clear of scale bar and legend.
NameRoom PlanView::name_room() const {
    NameRoom room;
    if (!fits_) return room;
    const QTransform to_scene = viewportTransform().inverted();
    const double rim = kFromRimPx;
    room.view = to_scene.mapRect(QRectF(viewport()->rect()).adjusted(rim, rim, -rim, -rim));
    for (const QRectF& box : furniture_->boxes()) room.taken.push_back(to_scene.mapRect(box));
    return room;
}

void PlanView::after_zoom() {
    scene_->set_view(1.0 / pixels_per_metre(), name_room());
    furniture_->update();
    viewport()->update();
    Q_EMIT zoom_changed(pixels_per_metre());
}

void PlanView::zoom_in() { zoom_to(pixels_per_metre() * kStep, viewport()->rect().center()); }
void PlanView::zoom_out() { zoom_to(pixels_per_metre() / kStep, viewport()->rect().center()); }
void PlanView::zoom_actual() { zoom_to(kActual, viewport()->rect().center()); }

void PlanView::zoom_fit() {
    fits_ = true;
    const Show& show = document_.show();
    const QRectF stage = extent_of(show), whole = with_near_walls(stage, show.stage.surfaces);
    show_rect(whole);
    const QRectF legend = furniture_->legend();
    legend_fitted_ = !legend.isEmpty();
    // A legend on the stage hides what it explains: the plan moves up by what it covers.
    const QRectF covered = legend & viewportTransform().mapRect(stage);
    if (!covered.isEmpty()) show_rect(whole.adjusted(0.0, 0.0, 0.0, 2.0 * covered.height() / pixels_per_metre()));
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
