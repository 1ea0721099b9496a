// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/items/guides.h"

#include <QPainter>

#include "app/canvas/plan_scene.h"

namespace howlmap::app {

Guides::Guides(PlanScene& scene) : plan_(scene) {
    setZValue(layer::kGuides);
    setAcceptedMouseButtons(Qt::NoButton);
}

namespace {
constexpr double kEdgePx = 2.0;
}

void Guides::clear() {
    edges_ = 0;
    take({});
}

/// The centre line runs through the stage; a neighbour's line from it to the object; an edge is drawn over whole.
void Guides::show_snap(const Snapped& snap) {
    std::vector<QLineF> lines;
    edges_ = snap.edges.size();
    const QPointF at = to_page(snap.at);
    const Box2 stage = howlmap::bounds_of(plan_.document().show().stage.outline);
    for (const SnapEdge& edge : snap.edges) lines.emplace_back(to_page(edge.from), to_page(edge.to));
    if (snap.neighbour_x)
        lines.emplace_back(to_page(*snap.neighbour_x), at);
    else if (snap.guide_x)
        lines.emplace_back(QPointF(*snap.guide_x, -stage.high.y), QPointF(*snap.guide_x, -stage.low.y));
    if (snap.neighbour_y) lines.emplace_back(to_page(*snap.neighbour_y), at);
    take(std::move(lines));
}

void Guides::take(std::vector<QLineF> lines) {
    if (lines == lines_) return;
    prepareGeometryChange();
    lines_ = std::move(lines);
    const double margin = 3.0 * plan_.style().px;
    bounds_ = {};
    for (const QLineF& line : lines_)
        bounds_ |= QRectF(line.p1(), line.p2()).normalized().adjusted(-margin, -margin, margin, margin);
    update();
}

void Guides::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    const PlanStyle& style = plan_.style();
    painter->setPen(style.pen(style.ink.accent, 1.0, Qt::DashLine));
    for (std::size_t i = edges_; i < lines_.size(); ++i) painter->drawLine(lines_[i]);
    painter->setPen(style.pen(style.ink.accent, kEdgePx));  // to be seen over the edge itself
    for (std::size_t i = 0; i < edges_; ++i) painter->drawLine(lines_[i]);
}

}  // namespace howlmap::app
