// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/polar_plot.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "core/air/air.h"
#include "core/directivity/loudspeaker_directivity.h"
#include "core/directivity/receiver_pattern.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::app {
namespace {

constexpr double kFloorDb = -24.0, kRingDb = 6.0, kStepDeg = 2.0;

/// Fraction of the radius that a level takes.
double radius_of(double db) { return std::clamp((db - kFloorDb) / -kFloorDb, 0.0, 1.0); }

template <class GainAt>
PolarCurve curve_of(GainAt gain_at) {
    PolarCurve curve;
    for (double angle = -180.0; angle <= 180.0; angle += kStepDeg) {
        const double gain = gain_at(angle);
        curve.angles_deg.push_back(angle);
        curve.db.push_back(ratio_to_db(std::max(std::abs(gain), 1e-6)));
        curve.negative.push_back(gain < 0.0);
    }
    return curve;
}

}  // namespace

std::optional<PolarCurve> polar_of(const Show& show, const std::string& id, double hz) {
    if (const Loudspeaker* speaker = find_by_id(show.loudspeakers, id)) {
        const LoudspeakerSlice slice(speaker->directivity, hz, speed_of_sound(show.air.temperature_c));
        return curve_of([&](double angle) { return slice.gain({radians(std::abs(angle)), angle < 0.0 ? kPi : 0.0}); });
    }
    const Input* input = find_by_id(show.inputs, id);
    if (!input || !microphone_of(*input)) return std::nullopt;
    const ReceiverPattern pattern(*input);
    return curve_of([&](double angle) { return pattern.gain(radians(std::abs(angle)), hz); });
}

PolarPlot::PolarPlot(QWidget* parent) : QWidget(parent) {
    setMinimumSize(140, 140);
    setAccessibleName(tr("Directivity"));
}

void PolarPlot::show_curve(std::optional<PolarCurve> curve, double hz) {
    curve_ = std::move(curve);
    hz_ = hz;
    setVisible(curve_.has_value());
    update();
}

void PolarPlot::paintEvent(QPaintEvent*) {
    if (!curve_) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double radius = std::min(width(), height()) / 2.0 - 14.0;
    const QPointF middle(width() / 2.0, height() / 2.0);
    QColor faint = palette().color(QPalette::Text);
    faint.setAlphaF(0.3f);
    painter.setPen(QPen(faint, 1.0));
    for (double db = 0.0; db > kFloorDb; db -= kRingDb)
        painter.drawEllipse(middle, radius * radius_of(db), radius * radius_of(db));
    painter.drawLine(middle - QPointF(radius, 0), middle + QPointF(radius, 0));
    painter.drawLine(middle - QPointF(0, radius), middle + QPointF(0, radius));

    // The axis points down the page, as an object that faces the audience does on the plan.
    const auto point = [&](std::size_t i) {
        const double angle = curve_->angles_deg[i] * 3.14159265358979323846 / 180.0,
                     r = radius * radius_of(curve_->db[i]);
        return middle + QPointF(-r * std::sin(angle), r * std::cos(angle));
    };
    for (std::size_t i = 1; i < curve_->db.size(); ++i) {
        painter.setPen(QPen(palette().color(QPalette::Text), 1.6, curve_->negative[i] ? Qt::DotLine : Qt::SolidLine));
        painter.drawLine(point(i - 1), point(i));
    }
    painter.setPen(palette().color(QPalette::Text));
    painter.drawText(QRectF(0, 0, width(), 14), Qt::AlignLeft, QString::fromStdString(report::hz_words(hz_)));
    painter.drawText(QRectF(0, 0, width(), 14), Qt::AlignRight, tr("rings 6 dB"));
}

}  // namespace howlmap::app
