// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/response/fader_bank.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/export/ink.h"
#include "app/export/risk_scale.h"
#include "app/panels/response/mix_edits.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

constexpr double kKeyDb = 0.5, kPageDb = 3.0, kTop = 6.0, kBottom = 6.0, kKnobHeight = 7.0;
constexpr double kScaleGap = 16.0;  ///< between the figures and the first fader, half a knob and some air

double nominal(int band) { return kNominalThirdOctaves[static_cast<std::size_t>(band)]; }

}  // namespace

FaderBank::FaderBank(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setObjectName(QStringLiteral("faders"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    setWhatsThis(
        tr("The third-octave bands of the chosen mix. Drag a knob, or choose a band with the left and right keys and "
           "move it with up "
           "and down. The column behind a knob is the probability that its band rings first, and through this mix."));
}

void FaderBank::set_gains(const std::array<double, kThirdOctaves>& gains_db) {
    const bool same = gains_db == gains_;
    gains_ = gains_db;
    setAccessibleName(words(current_));
    if (!same) update();
}

void FaderBank::set_probabilities(const std::array<double, kThirdOctaves>& probabilities) {
    if (probabilities == probabilities_) return;
    probabilities_ = probabilities;
    update();
}

void FaderBank::set_current(int band) {
    current_ = std::clamp(band, 0, kThirdOctaves - 1);
    setAccessibleName(words(current_));
    QAccessibleEvent changed(this, QAccessible::NameChanged);
    QAccessible::updateAccessibility(&changed);
    update();
}

double FaderBank::y_of(double db) const {
    const double held = std::clamp(db, kFaderLowDb, kFaderHighDb);
    return kTop + (kFaderHighDb - held) / (kFaderHighDb - kFaderLowDb) * (height() - kTop - kBottom);
}

double FaderBank::db_at(double y) const {
    return kFaderHighDb - (y - kTop) / std::max(1.0, height() - kTop - kBottom) * (kFaderHighDb - kFaderLowDb);
}

double FaderBank::width_of_band() const { return x_of(third_octave_centre(18)) - x_of(third_octave_centre(17)); }

int FaderBank::band_at(QPointF point) const {
    int nearest = 0;
    for (int band = 1; band < kThirdOctaves; ++band)
        if (std::abs(x_of(third_octave_centre(band)) - point.x()) <
            std::abs(x_of(third_octave_centre(nearest)) - point.x()))
            nearest = band;
    return nearest;
}

QPoint FaderBank::knob(int band) const {
    return QPointF(x_of(third_octave_centre(band)), y_of(gains_[static_cast<std::size_t>(band)])).toPoint();
}

QString FaderBank::words(int band) const {
    const auto index = static_cast<std::size_t>(band);
    return tr("%1: %2; rings first through this mix in %3 of 100 stages")
        .arg(band_text(nominal(band)), gain_text(gains_[index]))
        .arg(qRound(100.0 * probabilities_[index]));
}

void FaderBank::paint_fader(QPainter& painter, int band) const {
    const auto index = static_cast<std::size_t>(band);
    const Ink ink = Ink::from(palette());
    const double x = x_of(third_octave_centre(band)), wide = std::clamp(width_of_band() * 0.7, 5.0, 26.0);
    if (x < -wide || x > width() + wide) return;
    if (const double p = probabilities_[index]; p > 0.0) {
        QColor colour = RiskScale(6.0, ink.dark).solid(std::min(1.0, 0.35 + p));
        const double top = kTop + (1.0 - p) * (height() - kTop - kBottom);
        painter.fillRect(QRectF(x - wide / 2.0 - 1.0, top, wide + 2.0, height() - kBottom - top), colour);
    }
    painter.setPen(QPen(ink.soft, 1.0));
    painter.drawLine(QPointF(x, kTop), QPointF(x, height() - kBottom));
    const bool lit = band == current_ && hasFocus();
    const QRectF knob(x - wide / 2.0, y_of(gains_[index]) - kKnobHeight / 2.0, wide, kKnobHeight);
    painter.setPen(QPen(lit ? ink.accent : ink.ink, lit ? 2.0 : 1.2));
    painter.setBrush(gains_[index] == 0.0 ? ink.paper : ink.ink);
    painter.drawRoundedRect(knob, 2.0, 2.0);
}

void FaderBank::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Ink ink = Ink::from(palette());
    painter.fillRect(rect(), ink.paper);
    painter.setPen(QPen(ink.faint, 1.0));
    const double left = x_of(kLowestHz), right = x_of(kHighestHz);
    painter.drawLine(QPointF(left, y_of(0.0)), QPointF(right, y_of(0.0)));
    painter.setPen(ink.soft);
    painter.setFont(tabular(font()));
    for (const double db : {kFaderHighDb, 0.0, kFaderLowDb})
        painter.drawText(QRectF(0.0, y_of(db) - 8.0, left - kScaleGap, 16.0), Qt::AlignRight | Qt::AlignVCenter,
                         QString::number(db));
    painter.setClipRect(QRectF(left - 14.0, 0.0, right - left + 28.0, height()));
    for (int band = 0; band < kThirdOctaves; ++band) paint_fader(painter, band);
}

void FaderBank::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return QWidget::mousePressEvent(event);
    const int band = band_at(event->position());
    set_current(band);
    held_ = band;
    const double knob_y = y_of(gains_[static_cast<std::size_t>(band)]);
    grab_offset_ = std::abs(event->position().y() - knob_y) <= kKnobHeight ? event->position().y() - knob_y : 0.0;
    Q_EMIT grabbed(band);
    if (grab_offset_ == 0.0) Q_EMIT dragged(band, db_at(event->position().y()));
}

void FaderBank::mouseMoveEvent(QMouseEvent* event) {
    if (held_) Q_EMIT dragged(*held_, db_at(event->position().y() - grab_offset_));
}

void FaderBank::mouseReleaseEvent(QMouseEvent*) {
    if (std::exchange(held_, std::nullopt)) Q_EMIT released();
}

void FaderBank::mouseDoubleClickEvent(QMouseEvent* event) {
    held_.reset();
    Q_EMIT set_to(band_at(event->position()), 0.0);
}

void FaderBank::wheelEvent(QWheelEvent* event) {
    const int band = band_at(event->position());
    const double steps = event->angleDelta().y() / 120.0;
    if (steps != 0.0) Q_EMIT set_to(band, gains_[static_cast<std::size_t>(band)] + kKeyDb * steps);
    event->accept();
}

void FaderBank::keyPressEvent(QKeyEvent* event) {
    const double now = gains_[static_cast<std::size_t>(current_)];
    switch (event->key()) {
        case Qt::Key_Left:
            return set_current(current_ - 1);
        case Qt::Key_Right:
            return set_current(current_ + 1);
        case Qt::Key_Up:
            return Q_EMIT set_to(current_, now + kKeyDb);
        case Qt::Key_Down:
            return Q_EMIT set_to(current_, now - kKeyDb);
        case Qt::Key_PageUp:
            return Q_EMIT set_to(current_, now + kPageDb);
        case Qt::Key_PageDown:
            return Q_EMIT set_to(current_, now - kPageDb);
        case Qt::Key_0:
        case Qt::Key_Delete:
            return Q_EMIT set_to(current_, 0.0);
        default:
            QWidget::keyPressEvent(event);
    }
}

bool FaderBank::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    QToolTip::showText(help->globalPos(), words(band_at(help->pos())), this);
    return true;
}

}  // namespace howlmap::app
