// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/phasor_view.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/export/ink.h"
#include "app/export/risk_scale.h"
#include "app/lesson/lesson_state.h"
#include "app/lesson/wave_clock.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

constexpr double kLeastScale = 0.01, kRingShown = 0.125, kTraceTurns = 2.0;
constexpr int kTraceSteps = 160;

QPointF page(Complex value, double px) { return {value.real() * px, -value.imag() * px}; }

void paint_arrow(QPainter& painter, QPointF from, QPointF to, QPen pen) {
    const QLineF line(from, to);
    pen.setWidthF(std::min(pen.widthF(), 1.0 + 0.12 * line.length()));  // a short one must not become a blot
    painter.setPen(pen);
    if (line.length() < 2.0) return painter.drawPoint(from);
    painter.drawLine(line);
    const double head = std::min(4.0 + 3.0 * pen.widthF(), 0.5 * line.length());
    QLineF barb(to, from);
    barb.setLength(head);
    for (const double turn : {24.0, -24.0}) {
        QLineF side = barb;
        side.setAngle(barb.angle() + turn);
        QPen solid = pen;
        solid.setStyle(Qt::SolidLine);
        painter.setPen(solid);
        painter.drawLine(side);
    }
}

}  // namespace

PhasorView::PhasorView(LessonState& state, WaveClock& clock, QWidget* parent)
    : QWidget(parent), state_(state), clock_(clock) {
    setObjectName(QStringLiteral("phasors"));
    setMinimumSize(220, 300);
    setAccessibleName(tr("One round of the loop as arrows and as waves"));
    setToolTip(
        tr("Thin: straight. Dashed: by the floor. Heavy: both together. The ring is where a round gives back as "
           "much as it took."));
    connect(&state_, &LessonState::changed, this, [this] {
        const LessonFigures& f = state_.figures();
        setAccessibleDescription(
            f.loop_gain_db
                ? tr("%1 dB, %2 turns out of step").arg(decimal_text(*f.loop_gain_db, 1)).arg(decimal_text(f.misfit, 2))
                : tr("No loop"));
        update();
    });
    connect(&clock_, &WaveClock::ticked, this, qOverload<>(&QWidget::update));
}

double PhasorView::full_scale() const {
    const LessonFigures& f = state_.figures();
    const double largest = std::max({std::abs(f.direct), std::abs(f.sum), std::abs(f.bounce), kLeastScale}) * 1.25;
    // The ring is in the picture from -20 dB on; arrows that are smaller are enlarged.
    return largest > kRingShown ? std::max(largest, 1.1) : largest;
}

void PhasorView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), Ink::from(palette()).paper);
    const double line = QFontMetricsF(font()).height();
    const double trace = std::max(4.0 * line, 0.3 * height());
    paint_arrows(painter, QRectF(0, 0, width(), height() - trace));
    paint_trace(painter, QRectF(0, height() - trace, width(), trace));
}

void PhasorView::paint_arrows(QPainter& painter, const QRectF& box) const {
    const Ink ink = Ink::from(palette());
    const LessonFigures& f = state_.figures();
    const double line = QFontMetricsF(font()).height();
    const QRectF area = box.adjusted(14, 1.6 * line, -14, -1.6 * line);
    const double radius = 0.5 * std::min(area.width(), area.height()), px = radius / full_scale();
    painter.save();
    painter.setFont(tabular(font()));
    painter.setPen(ink.ink);
    painter.drawText(box.adjusted(0, 8, 0, 0), Qt::AlignHCenter | Qt::AlignTop,
                     f.loop_gain_db ? tr("A round gives back %1 dB").arg(decimal_text(*f.loop_gain_db, 1))
                                    : tr("No loop: nothing comes back"));
    painter.drawText(box.adjusted(0, 0, 0, -6), Qt::AlignHCenter | Qt::AlignBottom,
                     f.loop_gain_db ? tr("%1 turns out of step").arg(decimal_text(f.misfit, 2)) : QString());
    painter.setClipRect(box.adjusted(2, 1.4 * line, -2, -1.4 * line));
    painter.translate(area.center());
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink.faint, 1.2));
    painter.drawLine(QPointF(-radius, 0), QPointF(radius, 0));
    painter.drawLine(QPointF(0, -radius), QPointF(0, radius));
    painter.setPen(QPen(ink.soft, 1.5, Qt::DashLine));
    painter.drawEllipse(QPointF(0, 0), px, px);
    const QPointF direct = page(f.direct, px), sum = page(f.sum, px);
    if (f.bounce_m) {
        paint_arrow(painter, {}, direct, QPen(ink.ink, 1.8));
        paint_arrow(painter, direct, sum, QPen(ink.ink, 1.8, Qt::DashLine));
    }
    const RiskScale scale(state_.bench().show.system.target_margin_db, ink.dark);
    const double risk = f.misfit < 0.05 && f.loop_gain_db ? scale.risk(-*f.loop_gain_db) : 0.0;
    if (f.loop_gain_db)
        paint_arrow(painter, {}, sum,
                    QPen(risk > 0.05 ? scale.solid(risk) : ink.ink, 4.5, Qt::SolidLine, Qt::RoundCap));
    painter.restore();
}

void PhasorView::paint_trace(QPainter& painter, const QRectF& box) const {
    const Ink ink = Ink::from(palette());
    const LessonFigures& f = state_.figures();
    const QRectF area = box.adjusted(14, 6, -14, -12);
    painter.setPen(QPen(ink.faint, 1.2));
    painter.drawLine(QPointF(area.left(), area.center().y()), QPointF(area.right(), area.center().y()));
    if (!f.loop_gain_db) return;
    const double px = 0.5 * area.height() / full_scale(), now = clock_.turns() - std::floor(clock_.turns());
    const auto draw = [&](Complex part, const QPen& pen) {
        QPainterPath path;
        for (int k = 0; k <= kTraceSteps; ++k) {
            const double along = static_cast<double>(k) / kTraceSteps;
            const double turns = now - kTraceTurns * (1.0 - along);
            const double y = (part * std::polar(1.0, 2.0 * M_PI * turns)).real();
            const QPointF at(area.left() + along * area.width(), area.center().y() - y * px);
            k == 0 ? path.moveTo(at) : path.lineTo(at);
        }
        painter.strokePath(path, pen);
    };
    if (f.bounce_m) {
        draw(f.direct, QPen(ink.ink, 1.4));
        draw(f.bounce, QPen(ink.ink, 1.4, Qt::DashLine));
    }
    draw(f.sum, QPen(ink.ink, 3.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

}  // namespace howlmap::app
