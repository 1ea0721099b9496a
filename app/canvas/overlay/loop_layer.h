// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QGraphicsItem>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "app/export/loop_lines.h"

namespace howlmap::app {

class PlanScene;

/// One loop from loudspeaker to microphone. Says its worst frequency when the pointer rests on it.
class LoopItem : public QGraphicsItem {
  public:
    LoopItem(PlanScene& scene, LoopLine line);
    const LoopLine& line() const { return line_; }
    void set_line(LoopLine line);
    QRectF boundingRect() const override;
    QPainterPath shape() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

  private:
    PlanScene& plan_;
    LoopLine line_;
};

/// All loop lines, from the last result and the show as it is. A line that stays as it is is not painted anew.
class LoopLayer {
  public:
    explicit LoopLayer(PlanScene& scene) : plan_(scene) {}
    void refresh(const AnalysisResult* result, const std::optional<Ring>& highlight);
    const std::vector<LoopLine>& lines() const { return lines_; }

  private:
    PlanScene& plan_;
    std::vector<LoopLine> lines_;
    double px_ = 0.0;  ///< of the style that the items were made for: their widths depend on it
    std::map<std::pair<std::string, std::string>, LoopItem*> items_;  ///< by input and loudspeaker; the scene's own
};

}  // namespace howlmap::app
