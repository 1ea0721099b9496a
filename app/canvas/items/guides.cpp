// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/items/guides.h"

#include <QGraphicsItem>
#include <QPainter>

#include "app/canvas/plan_scene.h"

namespace howlmap::app {
namespace {
constexpr double kGuidePx = 1.0, kEdgePx = 2.0;
}

class GuideLine : public QGraphicsItem {
  public:
    GuideLine(PlanScene& scene, const Guides::Line& line) : plan_(scene), line_(line) {
        setZValue(layer::kGuides);
        setAcceptedMouseButtons(Qt::NoButton);
        scene.addItem(this);
    }
    const QLineF& page() const { return line_.page; }

    void show_line(const Guides::Line& line) {
        if (line == line_) return;
        prepareGeometryChange();
        line_ = line;
        update();
    }

    QRectF boundingRect() const override {
        const double margin = kEdgePx * plan_.style().px;
        return QRectF(line_.page.p1(), line_.page.p2()).normalized().adjusted(-margin, -margin, margin, margin);
    }

    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override {
        const PlanStyle& style = plan_.style();
        painter->setPen(line_.edge ? style.pen(style.ink.accent, kEdgePx)  // to be seen over the edge itself
                                   : style.pen(style.ink.accent, kGuidePx, Qt::DashLine));
        painter->drawLine(line_.page);
    }

  private:
    PlanScene& plan_;
    Guides::Line line_;
};

void Guides::clear() { take({}); }

/// The centre line runs through the stage; a neighbour's line from it to the object; an edge is drawn over whole.
void Guides::show_snap(const Snapped& snap) {
    std::vector<Line> lines;
    const QPointF at = to_page(snap.at);
    const Box2 stage = howlmap::bounds_of(plan_.document().show().stage.outline);
    for (const SnapEdge& edge : snap.edges) lines.push_back({{to_page(edge.from), to_page(edge.to)}, true});
    if (snap.neighbour_x)
        lines.push_back({{to_page(*snap.neighbour_x), at}});
    else if (snap.guide_x)
        lines.push_back({{QPointF(*snap.guide_x, -stage.high.y), QPointF(*snap.guide_x, -stage.low.y)}});
    if (snap.neighbour_y) lines.push_back({{to_page(*snap.neighbour_y), at}});
    take(lines);
}

void Guides::take(const std::vector<Line>& lines) {
    for (; items_.size() > lines.size(); items_.pop_back()) delete items_.back();
    for (std::size_t i = 0; i < items_.size(); ++i) items_[i]->show_line(lines[i]);
    for (std::size_t i = items_.size(); i < lines.size(); ++i) items_.push_back(new GuideLine(plan_, lines[i]));
}

std::vector<QLineF> Guides::lines() const {
    std::vector<QLineF> lines;
    for (const GuideLine* item : items_) lines.push_back(item->page());
    return lines;
}

}  // namespace howlmap::app
