// SPDX-License-Identifier: GPL-3.0-or-later
// The 31 bands of a mix as faders under the curve, each below its own frequency. Behind each, how likely this band is
// to ring first.
#pragma once
#include <QWidget>
#include <array>
#include <functional>
#include <optional>

#include "core/units/bands.h"

namespace howlmap::app {

class FaderBank : public QWidget {
    Q_OBJECT
  public:
    explicit FaderBank(QWidget* parent = nullptr);

    void set_gains(const std::array<double, kThirdOctaves>& gains_db);
    void set_probabilities(const std::array<double, kThirdOctaves>& probabilities);
    /// Where a frequency lies, in pixels of the widget above; it has the same left edge.
    std::function<double(double hz)> x_of = [](double) { return 0.0; };

    int current() const { return current_; }
    void set_current(int band);
    /// Middle of a fader's knob, for tests and tools.
    QPoint knob(int band) const;

    QSize sizeHint() const override { return {400, 72}; }
    QSize minimumSizeHint() const override { return {200, 56}; }

  Q_SIGNALS:
    void grabbed(int band);
    void dragged(int band, double db);
    void released();
    void set_to(int band, double db);  ///< by key, wheel or double click: a step of its own

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

  private:
    double y_of(double db) const;
    double db_at(double y) const;
    int band_at(QPointF point) const;
    double width_of_band() const;
    void paint_fader(QPainter& painter, int band) const;
    QString words(int band) const;

    std::array<double, kThirdOctaves> gains_{}, probabilities_{};
    int current_ = 17;
    std::optional<int> held_;
    double grab_offset_ = 0.0;
};

}  // namespace howlmap::app
