// SPDX-License-Identifier: GPL-3.0-or-later
// Rulers along the plan: metres or feet from the centre line above it, from the downstage edge beside it.
#pragma once
#include <QWidget>

#include "core/show/show.h"

class QLabel;

namespace howlmap::app {

class PlanView;

inline constexpr int kRulerPx = 20;  ///< thickness

/// Between two figures of a ruler, in units: 1, 2 or 5 times a power of ten, at least 48 pixels.
double ruler_step(double pixels_per_unit);

class PlanRuler : public QWidget {
    Q_OBJECT
  public:
    PlanRuler(PlanView& view, Qt::Orientation way);
    /// Where along itself (pixels of the viewport) it marks the pointer; below 0: nowhere.
    void mark_pointer(int at);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    /// Pixels along the ruler of a place in units of the show, and the way back.
    double pixel_of(double units) const;
    double units_at(int pixel) const;
    double metres_per_unit() const;
    void paint_figure(QPainter& painter, double units) const;
    void paint_tick(QPainter& painter, double units, double length) const;
    QRect mark_rect() const;

    PlanView& view_;
    Qt::Orientation way_;
    int mark_ = -1;
};

/// Both rulers and the unit in the corner between them, as margins of the view.
class PlanRulers : public QObject {
    Q_OBJECT
  public:
    explicit PlanRulers(PlanView& view);
    void lay_out();  ///< after the viewport got another size
    void update();   ///< after it shows another place
    void mark_pointer(QPoint viewport_pixel);
    void show(bool on);
    const PlanRuler& across() const { return *across_; }
    const PlanRuler& depth() const { return *depth_; }

  private:
    PlanView& view_;
    PlanRuler *across_, *depth_;
    QLabel* corner_;
};

}  // namespace howlmap::app
