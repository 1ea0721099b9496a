// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/side_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/export/ink.h"
#include "app/export/length_text.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/wave_clock.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

constexpr double kLeftM = 0.75, kRightM = 0.6, kTopM = 2.35, kBelowM = 0.22;  // around what is shown
constexpr double kShortestReachM = 2.6, kLobeM = 0.34, kGripPx = 34.0;
constexpr double kThin = 1.5, kHeavy = 3.0;

QColor faded(QColor colour, double alpha) {
    colour.setAlphaF(static_cast<float>(std::clamp(alpha, 0.0, 1.0)));
    return colour;
}

QPen round_pen(const QColor& colour, double width, Qt::PenStyle style = Qt::SolidLine) {
    return {colour, width, style, Qt::RoundCap, Qt::RoundJoin};
}

}  // namespace

SideView::SideView(LessonState& state, WaveClock& clock, QWidget* parent)
    : QWidget(parent), state_(state), clock_(clock) {
    setObjectName(QStringLiteral("side_view"));
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(360, 240);
    setAccessibleName(tr("Loudspeaker and microphone from the side"));
    setToolTip(
        tr("Drag the microphone or the loudspeaker. Arrows move the microphone, with Shift ten times as far; "
           "[ and ] turn it."));
    connect(&state_, &LessonState::changed, this, &SideView::refresh);
    connect(&clock_, &WaveClock::ticked, this, qOverload<>(&QWidget::update));
    refresh();
}

void SideView::refresh() {
    if (held_ == Held::nothing) shown_m_ = std::max(kShortestReachM, state_.value(Knob::distance) + kRightM);
    setAccessibleDescription(state_.sentence());
    update();
}

double SideView::metre_px() const { return std::min(width() / (kLeftM + shown_m_), height() / (kTopM + kBelowM)); }

QPointF SideView::to_pixel(Vec2 place) const {
    const double m = metre_px(), spare = width() - m * (kLeftM + shown_m_);
    return {0.5 * spare + (place.x + kLeftM) * m, height() - (place.y + kBelowM) * m};
}

Vec2 SideView::to_place(QPointF pixel) const {
    const double m = metre_px(), spare = width() - m * (kLeftM + shown_m_);
    return {(pixel.x() - 0.5 * spare) / m - kLeftM, (height() - pixel.y()) / m - kBelowM};
}

void SideView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), Ink::from(palette()).paper);
    if (state_.value(Knob::floor) > 0.5) paint_crests(painter, true);
    paint_crests(painter, false);
    paint_floor(painter);
    paint_ways(painter);
    paint_loudspeaker(painter);
    paint_microphone(painter);
    paint_count(painter);
    if (hasFocus()) {
        painter.setPen(QPen(Ink::from(palette()).accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void SideView::paint_floor(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    const double floor = to_pixel({0, 0}).y();
    painter.fillRect(QRectF(0, floor, width(), height() - floor), ink.stage);
    const bool reflects = state_.value(Knob::floor) > 0.5;
    painter.setPen(round_pen(ink.ink, reflects ? kHeavy : kThin, reflects ? Qt::SolidLine : Qt::DashLine));
    painter.drawLine(QPointF(0, floor), QPointF(width(), floor));
    QFont font = tabular(this->font());
    painter.setFont(font);
    const bool metric = state_.bench().show.display.units == Units::metric;
    const double unit = metric ? 1.0 : 0.3048;
    for (int k = 0; k * unit < shown_m_ + 0.01; k += metric ? 1 : 2) {
        const QPointF at = to_pixel({k * unit, 0});
        painter.setPen(round_pen(ink.ink, kThin));
        painter.drawLine(at, at + QPointF(0, 7));
        painter.setPen(ink.soft);
        painter.drawText(QRectF(at.x() - 60, at.y() + 8, 120, height() - at.y() - 8), Qt::AlignHCenter | Qt::AlignTop,
                         metric ? tr("%1 m").arg(k) : tr("%1 ft").arg(k));
    }
}

void SideView::paint_crests(QPainter& painter, bool bounced) const {
    if (state_.value(Knob::in_ears) > 0.5) return;
    const Ink ink = Ink::from(palette());
    const LessonFigures& f = state_.figures();
    const double wave = f.speed / f.hz, height_m = state_.value(Knob::speaker_height), m = metre_px();
    const double phase = clock_.turns() - std::floor(clock_.turns());
    const double reach = std::hypot(shown_m_ + kLeftM, kTopM + height_m);
    const QPointF centre = to_pixel({0, bounced ? -height_m : height_m});
    const double floor = to_pixel({0, 0}).y(), turn_deg = 360.0 / kFan;
    painter.save();
    painter.setClipRect(QRectF(0, 0, width(), floor));
    painter.setBrush(Qt::NoBrush);
    for (int k = 0; k < kFan; ++k) {
        const double gain = f.speaker_fan[static_cast<std::size_t>(bounced ? (kFan - k) % kFan : k)];
        const double alpha = std::pow(gain, 0.7);
        if (alpha < 0.06) continue;
        QPainterPath near_arcs, far_arcs;
        for (double r = phase * wave; r < reach; r += wave) {
            if (r < 0.06) continue;
            const double px = r * m;
            QPainterPath& arcs = r < 1.2 ? near_arcs : far_arcs;
            const QRectF box(centre.x() - px, centre.y() - px, 2 * px, 2 * px);
            arcs.arcMoveTo(box, (k - 0.5) * turn_deg);
            arcs.arcTo(box, (k - 0.5) * turn_deg, turn_deg);
        }
        const auto style = bounced ? Qt::DotLine : Qt::SolidLine;
        const double crowded = std::clamp(wave * m / 14.0, 0.45, 1.0);  // short waves would blacken the page
        QPen pen(faded(ink.ink, (bounced ? 0.40 : 0.62) * alpha * crowded), bounced ? 1.2 : 2.0, style, Qt::FlatCap);
        painter.strokePath(near_arcs, pen);
        pen.setColor(faded(ink.ink, (bounced ? 0.30 : 0.40) * alpha * crowded));
        painter.strokePath(far_arcs, pen);
    }
    painter.restore();
}

void SideView::paint_ways(QPainter& painter) const {
    if (state_.value(Knob::in_ears) > 0.5) return;
    const Ink ink = Ink::from(palette());
    const LessonFigures& f = state_.figures();
    const Vec2 from{0, state_.value(Knob::speaker_height)},
        to{state_.value(Knob::distance), state_.value(Knob::height)};
    const QPointF a = to_pixel(from), b = to_pixel(to);
    if (f.bounce_m) {
        const QPointF floor = to_pixel({to.x * from.y / (from.y + to.y), 0});
        painter.setPen(round_pen(ink.ink, kThin, Qt::DashLine));
        painter.drawPolyline(QList<QPointF>{a, floor, b});
    }
    painter.setPen(round_pen(ink.paper, kHeavy + 4));
    painter.drawLine(a, b);
    painter.setPen(round_pen(ink.ink, kHeavy));
    painter.drawLine(a, b);
    // Each whole wave from the loudspeaker on is marked on the way.
    painter.setBrush(ink.paper);
    painter.setPen(round_pen(ink.ink, 2.0));
    const double wave = f.speed / f.hz;
    const double size = std::clamp(wave * metre_px() / 5.0, 2.0, 6.0);
    for (int k = 1; k * wave <= f.distance_m + 1e-9; ++k)
        painter.drawEllipse(a + (b - a) * (k * wave / f.distance_m), size, size);
}

void SideView::paint_loudspeaker(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    const double m = metre_px(), height_m = state_.value(Knob::speaker_height);
    const QPointF at = to_pixel({0, height_m});
    painter.setPen(round_pen(ink.ink, kThin));
    if (height_m > 0.55) {
        painter.drawLine(at, to_pixel({0, 0}));
        painter.drawLine(to_pixel({-0.2, 0}), to_pixel({0.2, 0}));
    }
    painter.save();
    painter.translate(at);
    painter.rotate(-state_.value(Knob::tilt));
    painter.setBrush(ink.paper);
    const double depth = 0.34 * m, half = 0.2 * m;
    painter.drawPolygon(QPolygonF({{0, -half}, {0, half}, {-depth, 0.62 * half}, {-depth, -0.62 * half}}));
    painter.setPen(round_pen(ink.ink, 2 * kHeavy));
    painter.drawLine(QPointF(0, -half), QPointF(0, half));
    painter.setPen(round_pen(ink.ink, kThin));
    painter.drawLine(QPointF(0, 0), QPointF(0.12 * m, 0));
    painter.restore();
}

void SideView::paint_microphone(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    const double m = metre_px();
    const Vec2 place{state_.value(Knob::distance), state_.value(Knob::height)};
    const QPointF at = to_pixel(place);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(round_pen(ink.ink, kThin));
    painter.drawLine(at, to_pixel({place.x, 0}));
    painter.drawLine(to_pixel({place.x - 0.14, 0}), to_pixel({place.x + 0.14, 0}));
    if (state_.value(Knob::body) > 0.5) {
        painter.setBrush(ink.paper);
        painter.setPen(round_pen(ink.ink, kThin + 0.5));
        painter.drawLine(at + QPointF(0.17 * m, -0.04 * m), at + QPointF(0.45 * m, -0.12 * m));
        painter.drawEllipse(at + QPointF(0.09 * m, -0.02 * m), 0.11 * m, 0.075 * m);
        painter.drawEllipse(at + QPointF(-0.05 * m, 0.01 * m), 0.13 * m, 0.09 * m);
        painter.setBrush(ink.ink);
        painter.drawEllipse(at, 5, 5);
        return;
    }
    QPolygonF lobe;
    for (int k = 0; k < kFan; ++k) {
        const double angle = 2.0 * M_PI * k / kFan;
        const double r = kLobeM * m * std::abs(state_.figures().microphone_fan[static_cast<std::size_t>(k)]);
        lobe << at + QPointF(-r * std::cos(angle), -r * std::sin(angle));
    }
    painter.setPen(round_pen(ink.soft, kThin));
    painter.setBrush(faded(ink.ink, 0.07));
    painter.drawPolygon(lobe);
    painter.save();
    painter.translate(at);
    painter.rotate(180.0 + state_.value(Knob::aim));
    painter.setBrush(ink.paper);
    painter.setPen(round_pen(ink.ink, kThin + 0.5));
    painter.drawPolygon(
        QPolygonF({{-0.035 * m, -0.03 * m}, {-0.035 * m, 0.03 * m}, {-0.2 * m, 0.018 * m}, {-0.2 * m, -0.018 * m}}));
    painter.setPen(round_pen(ink.ink, kHeavy));
    painter.drawEllipse(QPointF(0, 0), 0.045 * m, 0.045 * m);
    painter.restore();
}

void SideView::paint_count(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    const LessonFigures& f = state_.figures();
    painter.setFont(figure_font(font()));
    painter.setPen(ink.ink);
    const QRectF box = QRectF(rect()).adjusted(18, 12, -18, -12);
    painter.drawText(box, Qt::AlignLeft | Qt::AlignTop, tr("%1 waves").arg(f.whole_waves, 0, 'f', 2));
    const double line = QFontMetricsF(painter.font()).height();
    painter.setFont(tabular(font()));
    painter.setPen(ink.soft);
    const Units units = state_.bench().show.display.units;
    painter.drawText(
        box.adjusted(0, line, 0, 0), Qt::AlignLeft | Qt::AlignTop,
        tr("%1 way, one wave %2").arg(length_text(f.distance_m, units), length_text(f.speed / f.hz, units)));
}

void SideView::mousePressEvent(QMouseEvent* event) {
    const QPointF microphone = to_pixel({state_.value(Knob::distance), state_.value(Knob::height)});
    const QPointF loudspeaker = to_pixel({0, state_.value(Knob::speaker_height)});
    const auto near = [&](QPointF at) { return QLineF(at, event->position()).length() < kGripPx; };
    held_ = near(microphone) ? Held::microphone : near(loudspeaker) ? Held::loudspeaker : Held::nothing;
    if (held_ != Held::nothing) state_.begin_drag();
}

void SideView::mouseMoveEvent(QMouseEvent* event) {
    const Vec2 at = to_place(event->position());
    const auto whole = [](double value) { return std::round(value * 100.0) / 100.0; };
    if (held_ == Held::microphone) state_.move_microphone(whole(at.x), whole(at.y));
    if (held_ == Held::loudspeaker) state_.turn(Knob::speaker_height, whole(at.y));
}

void SideView::mouseReleaseEvent(QMouseEvent*) {
    held_ = Held::nothing;
    state_.end_drag();
    refresh();
}

void SideView::keyPressEvent(QKeyEvent* event) {
    const double far = event->modifiers().testFlag(Qt::ShiftModifier) ? 0.1 : 0.01;
    const auto by = [&](Knob knob, double step) {
        state_.turn(knob, std::round((state_.value(knob) + step) * 1000.0) / 1000.0);
    };
    switch (event->key()) {
        case Qt::Key_Left:
            return by(Knob::distance, -far);
        case Qt::Key_Right:
            return by(Knob::distance, far);
        case Qt::Key_Up:
            return by(Knob::height, far);
        case Qt::Key_Down:
            return by(Knob::height, -far);
        case Qt::Key_BracketLeft:
            return by(Knob::aim, -1.0);
        case Qt::Key_BracketRight:
            return by(Knob::aim, 1.0);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace howlmap::app
