// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/comb_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/export/ink.h"
#include "app/export/risk_scale.h"
#include "app/lesson/lesson_state.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

constexpr double kLeastDb = -36.0, kMostDb = 6.0;
constexpr double kFaint = 0.15;  ///< a risk below it has no colour that could be seen on paper
constexpr double kSemitone = 1.0594630943592953;

}  // namespace

CombView::CombView(LessonState& state, QWidget* parent) : QWidget(parent), state_(state) {
    setObjectName(QStringLiteral("comb"));
    setFocusPolicy(Qt::StrongFocus);
    setMinimumHeight(120);
    setAccessibleName(tr("Frequencies that fit"));
    setToolTip(
        tr("Each tooth is a frequency that comes back in step. Click or drag to look at a frequency; left and right "
           "go by semitones, up and down to the next tooth."));
    connect(&state_, &LessonState::changed, this, [this] {
        const LessonFigures& f = state_.figures();
        setAccessibleDescription(
            tr("%1 frequencies fit; looked at: %2").arg(static_cast<int>(f.comb.size())).arg(hz_text(f.hz)));
        update();
    });
}

QRectF CombView::area() const {
    const double line = QFontMetricsF(font()).height();
    return QRectF(rect()).adjusted(2.0 * line, 1.35 * line, -line, -1.35 * line);
}

double CombView::x_of(double hz) const {
    const KnobRange& range = range_of(Knob::hz);
    return area().left() + area().width() * std::log(hz / range.least) / std::log(range.most / range.least);
}

double CombView::hz_at(double x) const {
    const KnobRange& range = range_of(Knob::hz);
    return range.least * std::pow(range.most / range.least, (x - area().left()) / area().width());
}

double CombView::y_of(double db) const {
    const double held = std::clamp(db, kLeastDb, kMostDb);
    return area().bottom() - area().height() * (held - kLeastDb) / (kMostDb - kLeastDb);
}

void CombView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Ink ink = Ink::from(palette());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), ink.paper);
    painter.setFont(tabular(font()));
    paint_axes(painter);
    const double x = x_of(state_.figures().hz);
    painter.setPen(QPen(ink.accent, 3.0));
    painter.drawLine(QPointF(x, area().top()), QPointF(x, area().bottom()));
    paint_teeth(painter);
    paint_notes(painter);
    if (hasFocus()) {
        painter.setPen(QPen(ink.accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void CombView::paint_axes(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    const double line = QFontMetricsF(font()).height();
    for (const double hz : {50., 100., 200., 500., 1000., 2000., 5000.}) {
        const double x = x_of(hz);
        painter.setPen(QPen(ink.faint, 1.2));
        painter.drawLine(QPointF(x, area().top()), QPointF(x, area().bottom()));
        painter.setPen(ink.soft);
        painter.drawText(QRectF(x - 80, area().bottom() + 2, 160, line), Qt::AlignHCenter, band_text(hz));
    }
    painter.setPen(QPen(ink.soft, 1.5, Qt::DashLine));
    painter.drawLine(QPointF(area().left(), y_of(0)), QPointF(area().right(), y_of(0)));
    painter.setPen(QPen(ink.ink, 1.5));
    painter.drawLine(area().bottomLeft(), area().bottomRight());
}

void CombView::paint_teeth(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    const RiskScale scale(state_.bench().show.system.target_margin_db, ink.dark);
    for (const Fit& fit : state_.figures().comb) {
        const double risk = scale.risk(-fit.gain_db), x = x_of(fit.hz);
        painter.setPen(QPen(risk > kFaint ? scale.solid(risk) : ink.ink, 2.0 + 3.0 * risk, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(x, area().bottom()), QPointF(x, std::min(y_of(fit.gain_db), area().bottom() - 5)));
    }
}

void CombView::paint_notes(QPainter& painter) const {
    const Ink ink = Ink::from(palette());
    std::vector<Fit> strongest = state_.figures().comb;
    std::ranges::sort(strongest, std::ranges::greater(), &Fit::gain_db);
    const QFontMetricsF metrics(painter.font());
    std::vector<QRectF> taken;
    for (const Fit& fit : strongest) {
        const QString note = QString::fromStdString(fit.note);
        const QRectF box(x_of(fit.hz) - 0.5 * metrics.horizontalAdvance(note) - 3, y_of(fit.gain_db) - metrics.height(),
                         metrics.horizontalAdvance(note) + 6, metrics.height());
        const bool free = std::ranges::none_of(
            taken, [&](const QRectF& other) { return other.left() < box.right() && box.left() < other.right(); });
        if (!free || box.top() < 0) continue;
        taken.push_back(box);
        painter.fillRect(box, ink.paper);  // the dashed line of ringing may pass behind
        painter.setPen(ink.ink);
        painter.drawText(box, Qt::AlignCenter, note);
    }
}

void CombView::look_at(double x) {
    double hz = hz_at(x), best = 8.0;
    for (const Fit& fit : state_.figures().comb)
        if (const double far = std::abs(x_of(fit.hz) - x); far < best) best = far, hz = fit.hz;
    state_.turn(Knob::hz, hz);
}

void CombView::mousePressEvent(QMouseEvent* event) {
    state_.begin_drag();
    look_at(event->position().x());
}
void CombView::mouseMoveEvent(QMouseEvent* event) { look_at(event->position().x()); }
void CombView::mouseReleaseEvent(QMouseEvent*) { state_.end_drag(); }

void CombView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Left:
            return state_.turn(Knob::hz, state_.value(Knob::hz) / kSemitone);
        case Qt::Key_Right:
            return state_.turn(Knob::hz, state_.value(Knob::hz) * kSemitone);
        case Qt::Key_Up:
            return state_.next_fit(true);
        case Qt::Key_Down:
            return state_.next_fit(false);
        default:
            QWidget::keyPressEvent(event);
    }
}

}  // namespace howlmap::app
