// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_furniture.h"

#include <QPainter>

#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/scale_bar.h"

namespace howlmap::app {
namespace {
constexpr double kMargin = 14.0;
}

PlanFurniture::PlanFurniture(PlanView& view) : QWidget(&view), view_(view) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setAttribute(Qt::WA_NoSystemBackground);
    setFocusPolicy(Qt::NoFocus);
}

void PlanFurniture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    PlanStyle style = view_.plan_scene().style();
    style.px = 1.0;
    paint_scale_bar(painter, QPointF(kMargin, height() - kMargin), view_.pixels_per_metre(), style);
}

}  // namespace howlmap::app
