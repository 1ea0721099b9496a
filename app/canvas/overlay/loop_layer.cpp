// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/loop_layer.h"

#include <algorithm>
#include <utility>

#include "app/canvas/plan_scene.h"

namespace howlmap::app {
namespace {
constexpr double kHoverPx = 8.0;
}

LoopItem::LoopItem(PlanScene& scene, LoopLine line) : plan_(scene) {
    setAcceptedMouseButtons(Qt::NoButton);
    set_line(std::move(line));
}

void LoopItem::set_line(LoopLine line) {
    prepareGeometryChange();
    line_ = std::move(line);
    // The worse lies above, and what is lit above all.
    const double worse = std::clamp(-line_.margin_db, -90.0, 90.0) * 0.1 + (line_.lit ? 20.0 : 0.0);
    setZValue(line_.labelled ? layer::kLabels - 1 : layer::kLoops + worse);
    setToolTip(loop_words(plan_.document().show(), line_));
    update();
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
    lines_ = result ? loop_lines(plan_.document().show(), *result, highlight) : std::vector<LoopLine>();
    const bool zoomed = std::exchange(px_, plan_.style().px) != plan_.style().px;
    std::map<std::pair<std::string, std::string>, LoopItem*> left = std::exchange(items_, {});
    for (const LoopLine& line : lines_) {
        LoopItem*& item = items_[{line.input, line.loudspeaker}];
        if (const auto old = left.extract({line.input, line.loudspeaker})) item = old.mapped();
        if (!item)
            plan_.addItem(item = new LoopItem(plan_, line));
        else if (zoomed || !(item->line() == line))
            item->set_line(line);
    }
    for (const auto& [pair, item] : left) delete item;
}

}  // namespace howlmap::app
