// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_rulers.h"

#include <QLabel>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/canvas/plan_scene.h"
#include "app/canvas/plan_view.h"
#include "app/settings/figures.h"
#include "core/units/lengths.h"

namespace howlmap::app {
namespace {
constexpr double kLeastStepPx = 48.0, kRulerTextPx = 10.0, kLongTick = 7.0, kShortTick = 4.0, kFromTick = 3.0;
}  // namespace

double ruler_step(double pixels_per_unit) {
    double step = 0.01;
    for (int i = 0; step * pixels_per_unit < kLeastStepPx; ++i) step *= i % 3 == 1 ? 2.5 : 2.0;
    return step;
}

namespace {
/// Ticks from one figure to the next, at round places: fifths of 1 and of 5, quarters of 2.
int parts_of(double step) {
    const double digit = step / std::pow(10.0, std::floor(std::log10(step * (1.0 + 1e-9))));
    return std::abs(digit - 2.0) < 0.5 ? 4 : 5;
}
}  // namespace

PlanRuler::PlanRuler(PlanView& view, Qt::Orientation way) : QWidget(&view), view_(view), way_(way) {
    setAttribute(Qt::WA_TransparentForMouseEvents);
    setFocusPolicy(Qt::NoFocus);
}

double PlanRuler::metres_per_unit() const {
    return view_.plan_scene().style().units == Units::metric ? 1.0 : kMetresPerFoot;
}

double PlanRuler::pixel_of(double units) const {
    const double metres = units * metres_per_unit();
    const QPointF at = view_.viewportTransform().map(to_page({metres, metres}));
    return way_ == Qt::Horizontal ? at.x() : at.y();
}

double PlanRuler::units_at(int pixel) const {
    const Vec2 at = view_.plan_point({pixel, pixel});
    return (way_ == Qt::Horizontal ? at.x : at.y) / metres_per_unit();
}

void PlanRuler::mark_pointer(int at) {
    if (at == mark_) return;
    QWidget::update(mark_rect());
    mark_ = at;
    QWidget::update(mark_rect());
}

QRect PlanRuler::mark_rect() const {
    return way_ == Qt::Horizontal ? QRect(mark_ - 1, 0, 3, height()) : QRect(0, mark_ - 1, width(), 3);
}

void PlanRuler::paint_tick(QPainter& painter, double units, double length) const {
    const double at = std::floor(pixel_of(units)) + 0.5;
    if (way_ == Qt::Horizontal)
        painter.drawLine(QPointF(at, height() - length), QPointF(at, height()));
    else
        painter.drawLine(QPointF(width() - length, at), QPointF(width(), at));
}

/// Figures stand upright above, and lie along the side: there is no room for four digits across it.
void PlanRuler::paint_figure(QPainter& painter, double units) const {
    const PlanStyle& style = view_.plan_scene().style();
    PlanStyle pixels = style;
    pixels.px = 1.0;
    const QString text = number_text(units, 2);
    const double at = pixel_of(units), width_px = text_size_px(text, style.font, kRulerTextPx).width() + kFromTick;
    const bool across = way_ == Qt::Horizontal;
    if (across ? at < 0.0 || at + width_px > width() : at > height() || at < width_px) return;  // half a figure is none
    if (across)
        draw_text(painter, {at + kFromTick, kRulerTextPx * 0.6}, text, pixels, kRulerTextPx, style.ink.soft,
                  Anchor::left);
    else
        draw_text(painter, {kRulerTextPx * 0.6, at - kFromTick}, text, pixels, kRulerTextPx, style.ink.soft,
                  Anchor::left, -90.0);
}

void PlanRuler::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const Ink& ink = view_.plan_scene().style().ink;
    painter.fillRect(rect(), palette().color(QPalette::Window));
    painter.setPen(ink.soft);
    const int length = way_ == Qt::Horizontal ? width() : height();
    const double step = ruler_step(std::abs(pixel_of(1.0) - pixel_of(0.0)));
    const int parts = parts_of(step);
    const auto [low, high] = std::minmax({units_at(0), units_at(length)});
    for (double i = std::floor(low / step); i <= std::ceil(high / step); ++i) {
        paint_figure(painter, i * step);
        for (int part = 0; part < parts; ++part)
            paint_tick(painter, (i + double(part) / parts) * step, part == 0 ? kLongTick : kShortTick);
    }
    if (mark_ >= 0) painter.fillRect(mark_rect(), ink.accent);
}

PlanRulers::PlanRulers(PlanView& view)
    : QObject(&view),
      view_(view),
      across_(new PlanRuler(view, Qt::Horizontal)),
      depth_(new PlanRuler(view, Qt::Vertical)),
      corner_(new QLabel(&view)) {
    corner_->setAutoFillBackground(true);
    corner_->setAlignment(Qt::AlignCenter);
    QFont small = corner_->font();
    small.setPixelSize(static_cast<int>(kRulerTextPx));
    corner_->setFont(small);
    connect(&view.plan_scene(), &PlanScene::style_changed, this, &PlanRulers::update);
    update();
}

void PlanRulers::lay_out() {
    const QRect port = view_.viewport()->geometry();
    across_->setGeometry(port.left(), port.top() - kRulerPx, port.width(), kRulerPx);
    depth_->setGeometry(port.left() - kRulerPx, port.top(), kRulerPx, port.height());
    corner_->setGeometry(port.left() - kRulerPx, port.top() - kRulerPx, kRulerPx, kRulerPx);
}

void PlanRulers::update() {
    const bool metric = view_.plan_scene().style().units == Units::metric;
    corner_->setText(metric ? QStringLiteral("m") : QStringLiteral("ft"));
    across_->update();
    depth_->update();
}

void PlanRulers::mark_pointer(QPoint viewport_pixel) {
    across_->mark_pointer(viewport_pixel.x());
    depth_->mark_pointer(viewport_pixel.y());
}

void PlanRulers::show(bool on) {
    for (QWidget* part :
         {static_cast<QWidget*>(across_), static_cast<QWidget*>(depth_), static_cast<QWidget*>(corner_)})
        part->setVisible(on);
}

}  // namespace howlmap::app
