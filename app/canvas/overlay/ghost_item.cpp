// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/ghost_item.h"

#include <QPainter>

#include "app/canvas/plan_scene.h"

namespace howlmap::app {
namespace {
constexpr float kPale = 0.7F;
constexpr double kGhostGapPx = 3.0;

bool differs(const ObjectLook& a, const ObjectLook& b) {
    return a.at != b.at || a.yaw_deg != b.yaw_deg || a.outline != b.outline || a.symbol != b.symbol;
}
}  // namespace

GhostItem::GhostItem(PlanScene& scene) : plan_(scene) {
    setZValue(layer::kGhosts);
    setAcceptedMouseButtons(Qt::NoButton);
}

void GhostItem::show_ghost(const std::optional<Show>& show) {
    if (!show && looks_.empty()) return;
    prepareGeometryChange();
    looks_.clear();
    bounds_ = {};
    if (show)
        for (ObjectLook& look : looks_of(*show)) {
            const ObjectLook& now = plan_.look(look.id);
            if (!now.id.isEmpty() && !differs(look, now)) continue;
            const double margin = 3.0 * kGhostGapPx * plan_.style().px;
            bounds_ |= bounds_of(look, plan_.style()).adjusted(-margin, -margin, margin, margin);
            if (!now.id.isEmpty())
                bounds_ |= QRectF(now.at, look.at).normalized().adjusted(-margin, -margin, margin, margin);
            looks_.push_back(std::move(look));
        }
    update();
}

void GhostItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    const PlanStyle& style = plan_.style();
    QColor pale = style.ink.accent;
    pale.setAlphaF(kPale);
    for (const ObjectLook& look : looks_) {
        const ObjectLook& now = plan_.look(look.id);
        painter->setPen(style.pen(pale, kThinPx, Qt::DashLine));
        if (!now.id.isEmpty() && now.at != look.at) painter->drawLine(now.at, look.at);
        paint_object(*painter, look, style, pale);
        paint_ring(*painter, look, style, kGhostGapPx, style.pen(pale, 1.0, Qt::DashLine));
    }
}

}  // namespace howlmap::app
