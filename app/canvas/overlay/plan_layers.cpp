// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/overlay/plan_layers.h"

#include "app/canvas/overlay/ghost_item.h"
#include "app/canvas/overlay/lobe_layer.h"
#include "app/canvas/overlay/overlay_item.h"
#include "app/canvas/plan_scene.h"

namespace howlmap::app {
namespace {
std::optional<MapRequest> request_of(const OverlayChoice& choice) {
    MapRequest request;
    switch (choice.kind) {
        case OverlayKind::none:
            return std::nullopt;
        case OverlayKind::feedback:
            request.kind = MapKind::feedback;
            break;
        case OverlayKind::loudspeaker:
            request.kind = MapKind::loudspeaker;
            break;
        case OverlayKind::level:
            request.kind = MapKind::level;
            break;
        case OverlayKind::wash:
            request.kind = MapKind::wash;
            break;
    }
    request.id = choice.subject.toStdString();
    request.options.band = choice.band;
    if (!choice.band) request.options.hz = choice.hz;
    return request;
}
}  // namespace

PlanLayers::PlanLayers(PlanView& view)
    : view_(view),
      maps_(view.document()),
      loops_(view.plan_scene()),
      overlay_(new OverlayItem(view.plan_scene())),
      lobes_(new LobeItem(view.plan_scene())),
      ghost_(new GhostItem(view.plan_scene())) {
    PlanScene& scene = view.plan_scene();
    scene.addItem(overlay_);
    scene.addItem(lobes_);
    scene.addItem(ghost_);
    maps_.set_ink(scene.style().ink);
    queue_.setSingleShot(true);
    queue_.setInterval(0);
    connect(&queue_, &QTimer::timeout, this, &PlanLayers::refresh);
    connect(&maps_, &MapService::updated, this, [this] {
        overlay_->show_picture(maps_.picture(), view_.overlay().opacity);
        Q_EMIT map_changed();
    });
    // What hangs on an object under the hand is painted together with it.
    connect(&scene, &PlanScene::objects_changed, this,
            [this] { view_.document().in_gesture() ? refresh() : queue(); });
    connect(&scene, &PlanScene::style_changed, this, [this] {
        maps_.set_ink(view_.plan_scene().style().ink);
        overlay_->update();
        queue();
    });
    connect(&view.analysis(), &AnalysisService::updated, this, &PlanLayers::queue);
    connect(&view.selection(), &Selection::changed, this, &PlanLayers::refresh_lobes);
    connect(&view.document(), &Document::replaced, this, [this] {
        highlight_.reset();
        ghost_show_.reset();
        queue();
    });
}

void PlanLayers::queue() {
    if (!queue_.isActive()) queue_.start();
}

void PlanLayers::refresh() {
    queue_.stop();
    refresh_loops();
    refresh_lobes();
    ghost_->show_ghost(ghost_show_);
}

void PlanLayers::set_overlay(const OverlayChoice& choice) {
    maps_.want(request_of(choice));
    overlay_->show_picture(maps_.picture(), choice.opacity);
}

void PlanLayers::set_highlight(const std::optional<Ring>& ring) {
    highlight_ = ring;
    queue();
}

void PlanLayers::set_ghost(const std::optional<Show>& show) {
    ghost_show_ = show;
    ghost_->show_ghost(show);
}

void PlanLayers::frequency_changed() { refresh_lobes(); }

void PlanLayers::refresh_loops() { loops_.refresh(view_.analysis().result().get(), highlight_); }

void PlanLayers::refresh_lobes() { lobes_->refresh(view_.shown_frequency()); }

}  // namespace howlmap::app
