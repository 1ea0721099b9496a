// SPDX-License-Identifier: GPL-3.0-or-later
// The comb of frequencies that fit, with their notes; how high a tooth stands is how much a round gives back.
#pragma once
#include <QWidget>

namespace howlmap::app {

class LessonState;

class CombView : public QWidget {
    Q_OBJECT
  public:
    CombView(LessonState& state, QWidget* parent);
    double x_of(double hz) const;
    double hz_at(double x) const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QRectF area() const;
    double y_of(double db) const;
    void paint_axes(QPainter& painter) const;
    void paint_teeth(QPainter& painter) const;
    void paint_notes(QPainter& painter) const;
    void look_at(double x);

    LessonState& state_;
};

}  // namespace howlmap::app
