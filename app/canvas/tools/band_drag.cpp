// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/band_drag.h"

#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"

namespace howlmap::app {

BandDrag::BandDrag(PlanView& view, const Pointer& from)
    : view_(view), band_(QRubberBand::Rectangle, view.viewport()), from_(from), before_(view.selection().ids()) {
    band_.show();
}

void BandDrag::update(const Pointer& pointer) {
    band_.setGeometry(QRect(from_.pixel, pointer.pixel).normalized());
    const QStringList inside =
        view_.plan_scene().ids_within(QRectF(to_page(from_.at), to_page(pointer.at)).normalized());
    QStringList next = pointer.shift() || pointer.control() ? before_ : QStringList();
    for (const QString& id : inside) {
        if (!next.contains(id))
            next.append(id);
        else if (pointer.control())
            next.removeAll(id);
    }
    view_.selection().set(next);
}

void BandDrag::finish(const Pointer& pointer) { update(pointer); }

void BandDrag::cancel() { view_.selection().set(before_); }

}  // namespace howlmap::app
