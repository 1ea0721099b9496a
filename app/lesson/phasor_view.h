// SPDX-License-Identifier: GPL-3.0-or-later
// One round of the loop at the chosen frequency: as arrows that add up, and as waves that add up.
#pragma once
#include <QWidget>

namespace howlmap::app {

class LessonState;
class WaveClock;

/// Straight, by the floor, and their sum. On the ring a round gives back as much as it took; an arrow that points right
/// is in step.
class PhasorView : public QWidget {
    Q_OBJECT
  public:
    PhasorView(LessonState& state, WaveClock& clock, QWidget* parent);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    void paint_arrows(QPainter& painter, const QRectF& box) const;
    void paint_trace(QPainter& painter, const QRectF& box) const;
    double full_scale() const;

    LessonState& state_;
    WaveClock& clock_;
};

}  // namespace howlmap::app
