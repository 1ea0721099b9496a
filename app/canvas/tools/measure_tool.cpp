// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/tools/measure_tool.h"

#include "app/canvas/items/measure_item.h"
#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/export/reading_text.h"

namespace howlmap::app {

MeasureTool::MeasureTool(PlanView& view) : Tool(view), item_(new MeasureItem(view.plan_scene())) {
    view_.plan_scene().addItem(item_);
    begin_at_selection();
    follow_selection();
    QObject::connect(&view.selection(), &Selection::changed, &context_, [this] { follow_selection(); });
    QObject::connect(&view.plan_scene(), &PlanScene::objects_changed, &context_, [this] { refresh(); });
    QObject::connect(&view, &PlanView::shown_frequency_changed, &context_, [this] { refresh(); });
}

MeasureTool::~MeasureTool() { delete item_; }

std::optional<MeasureTool::End> MeasureTool::end_of(const QString& id) const {
    const auto centre = acoustic_centre(view_.document().show(), id.toStdString());
    if (!centre) return std::nullopt;
    return End{id.toStdString(), *centre};
}

/// The object under the pointer, else the place on the floor.
MeasureTool::End MeasureTool::end_at(const Pointer& pointer) const {
    const QString id = pointer.alt() ? QString() : view_.plan_scene().id_at(to_page(pointer.at));
    return end_of(id).value_or(End{{}, {pointer.at.x, pointer.at.y, 0.0}});
}

/// Where an object is now.
Vec3 MeasureTool::place_of(const End& end) const {
    return acoustic_centre(view_.document().show(), end.id).value_or(end.place);
}

void MeasureTool::begin_at_selection() {
    const QStringList& ids = view_.selection().ids();
    from_ = ids.isEmpty() ? std::nullopt : end_of(ids.front());
    to_.reset();
}

void MeasureTool::follow_selection() {
    const QStringList& ids = view_.selection().ids();
    const auto chosen = ids.isEmpty() ? std::nullopt : end_of(ids.back());
    if (!chosen) return;
    if (!from_) from_ = chosen;
    if (chosen->id == from_->id && !to_) return;
    to_ = chosen;
    refresh();
}

void MeasureTool::press(const Pointer& pointer) {
    item_->clear();
    from_ = end_at(pointer);
    to_.reset();
}

void MeasureTool::drag(const Pointer& pointer) {
    to_ = end_at(pointer);
    refresh();
}

void MeasureTool::release(const Pointer& pointer) { drag(pointer); }

void MeasureTool::refresh() {
    if (!from_ || !to_) return;
    const Vec3 from = place_of(*from_), to = place_of(*to_);
    const QString text = measure_text(view_.document().show(), from, to, view_.shown_frequency());
    item_->show_line(to_page(from.xy()), to_page(to.xy()), text);
    Q_EMIT view_.pointer_reading(text);
}

/// What comes next begins at the selected object.
bool MeasureTool::cancel() {
    const bool any = !item_->boundingRect().isNull();
    item_->clear();
    begin_at_selection();
    return any;
}

}  // namespace howlmap::app
