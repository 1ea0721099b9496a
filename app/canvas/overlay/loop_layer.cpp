// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/loop_layer.h"

#include <utility>

#include "app/canvas/plan_scene.h"

namespace howlmap::app {
namespace {
constexpr double kHoverPx = 8.0;
}

LoopItem::LoopItem(PlanScene& scene, LoopLine line) : plan_(scene), line_(std::move(line)) {
    setZValue(line_.labelled ? layer::kLabels - 1 : layer::kLoops);
    setAcceptedMouseButtons(Qt::NoButton);
    setToolTip(loop_words(plan_.document().show(), line_));
}

QRectF LoopItem::boundingRect() const { return bounds_of(line_, plan_.style()); }

QPainterPath LoopItem::shape() const {
    QPainterPath path;
    path.moveTo(line_.page.p1());
    path.lineTo(line_.page.p2());
    QPainterPathStroker stroker;
    stroker.setWidth(kHoverPx * plan_.style().px);
    return stroker.createStroke(path);
}

void LoopItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    const PlanStyle& style = plan_.style();
    paint_loop_line(*painter, line_, style, RiskScale(plan_.document().show().system.target_margin_db, style.ink.dark));
}

void LoopLayer::refresh(const AnalysisResult* result, const std::optional<Ring>& highlight) {
    for (LoopItem* item : std::exchange(items_, {})) delete item;
    lines_.clear();
    if (result) lines_ = loop_lines(plan_.document().show(), *result, highlight);
    for (const LoopLine& line : lines_) {
        items_.push_back(new LoopItem(plan_, line));
        plan_.addItem(items_.back());
    }
}

}  // namespace howlmap::app
