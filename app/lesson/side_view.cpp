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
#include "app/settings/figures.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

constexpr double kLeftM = 0.75, kRightM = 0.6, kTopM = 2.35, kBelowM = 0.22;  // around what is shown
constexpr double kShortestReachM = 2.6, kLobeM = 0.34, kGripPx = 34.0;
constexpr double kThin = 1.5, kHeavy = 3.0;
constexpr double kDeafDb = -60.0;
constexpr double kGripM = 0.42, kLeastGripPx = 52.0, kSmallGripPx = 16.0;  // handles for turning, from what they turn
constexpr double kLevelPerPx = 0.1, kLatencyPerPx = 0.02;                  // dB, ms

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
    setToolTip(tr(
        "Drag the microphone or the loudspeaker, or turn either by the handle behind it. Level and latency are dragged "
        "sideways, the polarity turns with a click. Arrows move the microphone, with Shift ten times as far; [ and ] "
        "turn it."));
    setMouseTracking(true);
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
    paint_crests(painter);
    paint_floor(painter);
    paint_ways(painter);
    paint_loudspeaker(painter);
    paint_microphone(painter);
    paint_count(painter);
    paint_grips(painter);
    paint_chain(painter);
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

void SideView::paint_crests(QPainter& painter) {
    if (state_.value(Knob::in_ears) > 0.5) return;
    const LessonFigures& f = state_.figures();
    const QPointF source = to_pixel({0, state_.value(Knob::speaker_height)});
    const QSize air(width(), std::max(1, static_cast<int>(to_pixel({0, 0}).y())));
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(
        QRect(QPoint(0, 0), air),
        crests_.draw({air, source, metre_px()}, {&f.speaker_fan, f.speed / f.hz, clock_.turns(),
                                                 state_.value(Knob::floor) > 0.5, Ink::from(palette()).ink}));
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

QString SideView::way_text() const {
    const LessonFigures& f = state_.figures();
    const Units units = state_.bench().show.display.units;
    return tr("%1 way, one wave %2").arg(length_text(f.distance_m, units), length_text(f.speed / f.hz, units));
}

/// Empty for a pickup, which has no axis.
QString SideView::angle_text() const {
    if (state_.value(Knob::body) > 0.5) return {};
    const LessonFigures& f = state_.figures();
    const QString angle = decimal_text(f.microphone_angle_deg, 0);
    if (f.pattern_db < kDeafDb) return tr("%1° off the microphone's axis: not heard").arg(angle);
    return tr("%1° off the microphone's axis: %2 against the front").arg(angle, gain_text(f.pattern_db));
}

void SideView::paint_count(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    QPointF at(18, 12);
    const auto line = [&](const QString& words, const QFont& font, const QColor& colour) {
        const QFontMetricsF metrics(font);
        const QRectF box(at, QSizeF(metrics.horizontalAdvance(words) + 1.0, metrics.height()));
        painter.fillRect(box.adjusted(-4, 0, 4, 0), faded(ink.paper, 0.85));  // crests pass behind the words
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(box, Qt::AlignLeft | Qt::AlignTop, words);
        at.ry() += metrics.height();
    };
    line(tr("%1 waves").arg(decimal_text(state_.figures().whole_waves, 2)), figure_font(font()), ink.ink);
    line(way_text(), tabular(font()), ink.soft);
    if (const QString angle = angle_text(); !angle.isEmpty()) line(angle, tabular(font()), ink.soft);
}

QPointF SideView::aim_grip() const {
    const double turn = state_.value(Knob::aim) * M_PI / 180.0, far = std::max(kGripM * metre_px(), kLeastGripPx);
    return to_pixel({state_.value(Knob::distance), state_.value(Knob::height)}) +
           far * QPointF(std::cos(turn), std::sin(turn));
}

QPointF SideView::tilt_grip() const {
    const double turn = state_.value(Knob::tilt) * M_PI / 180.0, far = std::max(kGripM * metre_px(), kLeastGripPx);
    return to_pixel({0, state_.value(Knob::speaker_height)}) + far * QPointF(-std::cos(turn), std::sin(turn));
}

void SideView::paint_grips(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    const auto grip = [&](QPointF from, QPointF at, Held what) {
        painter.setPen(round_pen(ink.soft, 1.0, Qt::DotLine));
        painter.drawLine(from, at);
        painter.setPen(round_pen(held_ == what ? ink.accent : ink.soft, 2.0));
        painter.setBrush(ink.paper);
        painter.drawRoundedRect(QRectF(at.x() - 6.0, at.y() - 6.0, 12.0, 12.0), 2.0, 2.0);  // round are the whole waves
    };
    grip(to_pixel({0, state_.value(Knob::speaker_height)}), tilt_grip(), Held::tilt);
    if (state_.value(Knob::body) < 0.5)
        grip(to_pixel({state_.value(Knob::distance), state_.value(Knob::height)}), aim_grip(), Held::aim);
}

QString SideView::chain_text(Held what) const {
    if (what == Held::level) return tr("Level %1 dB").arg(decimal_text(state_.value(Knob::level), 1));
    if (what == Held::latency) return tr("Latency %1 ms").arg(decimal_text(state_.value(Knob::latency), 1));
    return state_.value(Knob::polarity) > 0.5 ? tr("Polarity turned") : tr("Polarity normal");
}

/// At the upper right, one below the other; as wide as what stands in it may become.
QRectF SideView::chain_box(Held what) const {
    const QFontMetricsF metrics(tabular(font()));
    const double high = metrics.height() + 8.0, wide = metrics.horizontalAdvance(tr("Polarity normal")) + 40.0;
    const int row = what == Held::level ? 0 : what == Held::latency ? 1 : 2;
    return {width() - wide - 14.0, 12.0 + row * (high + 4.0), wide, high};
}

void SideView::paint_chain(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    painter.setFont(tabular(font()));
    for (const Held what : {Held::level, Held::latency, Held::polarity}) {
        const QRectF box = chain_box(what);
        painter.setPen(round_pen(held_ == what ? ink.accent : ink.soft, 1.0));
        painter.setBrush(ink.paper);
        painter.drawRoundedRect(box, 4.0, 4.0);
        painter.setPen(ink.ink);
        painter.drawText(box, Qt::AlignCenter, chain_text(what));
        if (what == Held::polarity) continue;
        painter.setPen(ink.soft);  // arrows: it is dragged sideways
        painter.drawText(box.adjusted(5, 0, -5, 0), Qt::AlignLeft | Qt::AlignVCenter, QStringLiteral("\u2039"));
        painter.drawText(box.adjusted(5, 0, -5, 0), Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("\u203a"));
    }
}

SideView::Held SideView::held_at(QPointF pixel) const {
    for (const Held what : {Held::level, Held::latency, Held::polarity})
        if (chain_box(what).contains(pixel)) return what;
    const auto near = [&](QPointF at, double px) { return QLineF(at, pixel).length() < px; };
    if (state_.value(Knob::body) < 0.5 && near(aim_grip(), kSmallGripPx)) return Held::aim;
    if (near(tilt_grip(), kSmallGripPx)) return Held::tilt;
    if (near(to_pixel({state_.value(Knob::distance), state_.value(Knob::height)}), kGripPx)) return Held::microphone;
    return near(to_pixel({0, state_.value(Knob::speaker_height)}), kGripPx) ? Held::loudspeaker : Held::nothing;
}

void SideView::show_cursor(QPointF pixel) {
    const Held what = held_at(pixel);
    setCursor(what == Held::nothing                          ? Qt::ArrowCursor
              : what == Held::level || what == Held::latency ? Qt::SizeHorCursor
              : what == Held::polarity                       ? Qt::PointingHandCursor
                                                             : Qt::OpenHandCursor);
}

void SideView::mousePressEvent(QMouseEvent* event) {
    held_ = held_at(event->position());
    held_from_ = event->position();
    if (held_ == Held::polarity) state_.turn(Knob::polarity, state_.value(Knob::polarity) > 0.5 ? 0.0 : 1.0);
    if (held_ == Held::level) held_value_ = state_.value(Knob::level);
    if (held_ == Held::latency) held_value_ = state_.value(Knob::latency);
    if (held_ != Held::nothing && held_ != Held::polarity) state_.begin_drag();
}

void SideView::drag_to(QPointF pixel) {
    const Vec2 at = to_place(pixel);
    const auto whole = [](double value) { return std::round(value * 100.0) / 100.0; };
    const auto tenth = [](double value) { return std::round(value * 10.0) / 10.0; };
    // The handles lie behind what they turn, so the angle is that of the way from the hand to the middle.
    const auto turned = [&](QPointF middle, double ahead) {
        return std::round(std::atan2(pixel.y() - middle.y(), ahead * (pixel.x() - middle.x())) * 180.0 / M_PI);
    };
    const double moved = pixel.x() - held_from_.x();
    const QPointF microphone = to_pixel({state_.value(Knob::distance), state_.value(Knob::height)});
    if (held_ == Held::microphone) state_.move_microphone(whole(at.x), whole(at.y));
    if (held_ == Held::loudspeaker) state_.turn(Knob::speaker_height, whole(at.y));
    if (held_ == Held::aim) state_.turn(Knob::aim, turned(microphone, 1.0));
    if (held_ == Held::tilt) state_.turn(Knob::tilt, turned(to_pixel({0, state_.value(Knob::speaker_height)}), -1.0));
    if (held_ == Held::level) state_.turn(Knob::level, tenth(held_value_ + kLevelPerPx * moved));
    if (held_ == Held::latency) state_.turn(Knob::latency, tenth(held_value_ + kLatencyPerPx * moved));
}

void SideView::mouseMoveEvent(QMouseEvent* event) {
    if (held_ == Held::nothing) return show_cursor(event->position());
    drag_to(event->position());
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
