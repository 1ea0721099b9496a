// SPDX-License-Identifier: GPL-3.0-or-later
// What the plan shows besides the objects, each brought up to date when what it depends on changes.
#pragma once
#include <QObject>
#include <QTimer>
#include <optional>

#include "app/canvas/overlay/loop_layer.h"
#include "app/canvas/overlay/map_service.h"
#include "app/canvas/plan_view.h"

namespace howlmap::app {

class GhostItem;
class LobeItem;
class OverlayItem;

class PlanLayers : public QObject {
    Q_OBJECT
  public:
    explicit PlanLayers(PlanView& view);

    void set_overlay(const OverlayChoice& choice);
    void set_highlight(const std::optional<Ring>& ring);
    void set_ghost(const std::optional<Show>& show);
    void frequency_changed();

    MapService& maps() { return maps_; }
    const std::vector<LoopLine>& loops() const { return loops_.lines(); }
    const LobeItem& lobes() const { return *lobes_; }
    const GhostItem& ghost() const { return *ghost_; }

  Q_SIGNALS:
    void map_changed();  ///< the picture or the notice

  private:
    void refresh();
    void refresh_loops();
    void refresh_lobes();
    void queue();

    PlanView& view_;
    MapService maps_;
    LoopLayer loops_;
    OverlayItem* overlay_;  ///< items are owned by the scene
    LobeItem* lobes_;
    GhostItem* ghost_;
    std::optional<Ring> highlight_;
    std::optional<Show> ghost_show_;
    QTimer queue_;
};

}  // namespace howlmap::app
