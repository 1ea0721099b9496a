// SPDX-License-Identifier: GPL-3.0-or-later
// While something is dragged: distance and angle to what it endangers, and what the margin has gained or lost since.
#pragma once
#include <QWidget>
#include <optional>

#include "core/show/edits.h"

class QLabel;

namespace howlmap::app {

class PlanView;

/// Around a label: one whose words change asks the widget it lies in to lay out anew, and the plan would paint its
/// scroll bars with each move.
class DragReading : public QWidget {
    Q_OBJECT
  public:
    explicit DragReading(PlanView& view);
    void begin(const Ids& dragged);
    void update_at(QPoint viewport_pixel);
    void end();
    QString text() const;

  private:
    QString words() const;
    void choose_pair(const Ids& dragged);

    PlanView& view_;
    QLabel* label_;
    std::string loudspeaker_, input_;  ///< the pair that matters most to what is dragged
    std::optional<double> margin_at_start_;
    QPoint at_;
    bool active_ = false;
};

}  // namespace howlmap::app
