// SPDX-License-Identifier: GPL-3.0-or-later
// The bench from the side, to scale: crests on their way from the loudspeaker to the microphone.
#pragma once
#include <QWidget>

#include "app/lesson/crest_picture.h"
#include "core/geometry/vec3.h"

class QPainter;

namespace howlmap::app {

class LessonState;
class WaveClock;

class SideView : public QWidget {
    Q_OBJECT
  public:
    SideView(LessonState& state, WaveClock& clock, QWidget* parent);
    /// Where a place (m along the floor from the loudspeaker, m above the floor) is drawn.
    QPointF to_pixel(Vec2 place) const;
    Vec2 to_place(QPointF pixel) const;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    enum class Held { nothing, microphone, loudspeaker, aim, tilt, level, latency, polarity };
    /// What a hand at this pixel would take hold of.
    Held held_at(QPointF pixel) const;
    QPointF aim_grip() const;   ///< behind the microphone: drag it round
    QPointF tilt_grip() const;  ///< behind the loudspeaker
    QRectF chain_box(Held what) const;
    QString chain_text(Held what) const;
    void drag_to(QPointF pixel);
    void show_cursor(QPointF pixel);
    double metre_px() const;
    void refresh();
    void paint_floor(QPainter& painter) const;
    void paint_crests(QPainter& painter);
    QString way_text() const;
    QString angle_text() const;
    void paint_ways(QPainter& painter) const;
    void paint_loudspeaker(QPainter& painter) const;
    void paint_microphone(QPainter& painter) const;
    void paint_count(QPainter& painter) const;
    void paint_grips(QPainter& painter) const;
    void paint_chain(QPainter& painter) const;

    CrestPicture crests_;
    LessonState& state_;
    WaveClock& clock_;
    Held held_ = Held::nothing;
    QPointF held_from_;
    double held_value_ = 0.0;  ///< of the knob when it was taken hold of
    double shown_m_ = 3.0;     ///< how far the view reaches; kept while something is dragged
};

}  // namespace howlmap::app
