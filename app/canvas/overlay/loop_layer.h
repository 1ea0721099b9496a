// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <optional>
#include <vector>

#include "app/export/loop_lines.h"

namespace howlmap::app {

class PlanScene;

/// One loop from loudspeaker to microphone. Says its worst frequency when the pointer rests on it.
class LoopItem : public QGraphicsItem {
  public:
    LoopItem(PlanScene& scene, LoopLine line);
    QRectF boundingRect() const override;
    QPainterPath shape() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

  private:
    PlanScene& plan_;
    LoopLine line_;
};

/// All loop lines, made anew from the last result and the show as it is.
class LoopLayer {
  public:
    explicit LoopLayer(PlanScene& scene) : plan_(scene) {}
    void refresh(const AnalysisResult* result, const std::optional<Ring>& highlight);
    const std::vector<LoopLine>& lines() const { return lines_; }

  private:
    PlanScene& plan_;
    std::vector<LoopLine> lines_;
    std::vector<LoopItem*> items_;  ///< owned by the scene
};

}  // namespace howlmap::app
