// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <optional>
#include <vector>

#include "app/export/object_look.h"

namespace howlmap::app {

class PlanScene;

/// What a cure would move or turn, drawn pale where it would stand, with a dashed way from where it stands now.
class GhostItem : public QGraphicsItem {
  public:
    explicit GhostItem(PlanScene& scene);
    QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;
    void show_ghost(const std::optional<Show>& show);
    const std::vector<ObjectLook>& looks() const { return looks_; }

  private:
    PlanScene& plan_;
    std::vector<ObjectLook> looks_;
    QRectF bounds_;
};

}  // namespace howlmap::app
