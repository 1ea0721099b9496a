// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/measure_tool.h"

#include "app/canvas/items/measure_item.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/reading_text.h"
#include "core/show/find.h"

namespace howlmap::app {

MeasureTool::MeasureTool(PlanView& view) : Tool(view), item_(new MeasureItem(view.plan_scene())) {
    view_.plan_scene().addItem(item_);
}

MeasureTool::~MeasureTool() { delete item_; }

/// The acoustic centre of the object under the pointer, else the place on the floor.
Vec3 MeasureTool::place_at(const Pointer& pointer) const {
    const QString id = pointer.alt() ? QString() : view_.plan_scene().id_at(to_page(pointer.at));
    const auto centre = acoustic_centre(view_.document().show(), id.toStdString());
    return centre.value_or(Vec3{pointer.at.x, pointer.at.y, 0.0});
}

void MeasureTool::press(const Pointer& pointer) {
    from_ = place_at(pointer);
    item_->clear();
}

void MeasureTool::drag(const Pointer& pointer) {
    const Vec3 to = place_at(pointer);
    const QString text = measure_text(view_.document().show(), from_, to, view_.shown_frequency());
    item_->show_line(to_page(from_.xy()), to_page(to.xy()), text);
    Q_EMIT view_.pointer_reading(text);
}

void MeasureTool::release(const Pointer& pointer) { drag(pointer); }

bool MeasureTool::cancel() {
    const bool any = !item_->boundingRect().isNull();
    item_->clear();
    return any;
}

}  // namespace howlmap::app
