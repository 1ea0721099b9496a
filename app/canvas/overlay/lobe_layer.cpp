// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/lobe_layer.h"

#include "app/canvas/plan_scene.h"

namespace howlmap::app {
namespace {
constexpr int kMost = 6;                                 ///< more lobes than this at once say nothing
constexpr double kMicrophone = 0.7, kLoudspeaker = 1.5;  ///< metres at 0 dB
}  // namespace

LobeItem::LobeItem(PlanScene& scene) : plan_(scene) {
    setZValue(layer::kLobes);
    setAcceptedMouseButtons(Qt::NoButton);
}

void LobeItem::refresh(double hz) {
    prepareGeometryChange();
    lobes_.clear();
    bounds_ = {};
    const QStringList ids = plan_.selection().ids().size() > kMost ? QStringList() : plan_.selection().ids();
    const double margin = 2.0 * plan_.style().px;
    for (const QString& id : ids) {
        const double radius = plan_.look(id).kind == ObjectKind::loudspeaker ? kLoudspeaker : kMicrophone;
        auto lobe = lobe_of(plan_.document().show(), id.toStdString(), hz, radius);
        if (!lobe) continue;
        bounds_ |= lobe->outline.boundingRect();
        for (const QLineF& ray : lobe->nulls) bounds_ |= QRectF(ray.p1(), ray.p2()).normalized();
        lobes_.push_back(std::move(*lobe));
    }
    if (!bounds_.isNull()) bounds_.adjust(-margin, -margin, margin, margin);
    setVisible(!lobes_.empty());
    update();
}

void LobeItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    for (const Lobe& lobe : lobes_) paint_lobe(*painter, lobe, plan_.style());
}

}  // namespace howlmap::app
