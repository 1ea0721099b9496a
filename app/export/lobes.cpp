// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/lobes.h"

#include <algorithm>
#include <cmath>
#include <functional>

#include "core/air/air.h"
#include "core/directivity/loudspeaker_directivity.h"
#include "core/directivity/receiver_pattern.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::app {
namespace {
constexpr int kDirections = 180;
constexpr double kDeepDb = -15.0;   ///< a null is at least this deep and deeper than its neighbours
constexpr double kRayLength = 1.6;  ///< of the radius

/// Amplitude ratio at an angle (rad) to the left of the axis.
using Gain = std::function<double(double angle)>;

QPointF direction(double yaw_rad, double angle) { return {std::sin(yaw_rad + angle), std::cos(yaw_rad + angle)}; }

double radius_part(double gain) {
    const double db = ratio_to_db(std::max(std::abs(gain), 1e-6));
    return std::clamp(1.0 + db / kLobeDepthDb, 0.0, 1.3);
}

double angle_of(int step) { return 2.0 * kPi * step / kDirections; }

bool is_null(const std::vector<double>& gains, int step) {
    const auto at = [&](int i) { return std::abs(gains[static_cast<std::size_t>((i + kDirections) % kDirections)]); };
    return at(step) < db_to_ratio(kDeepDb) && at(step) <= at(step - 1) && at(step) < at(step + 1);
}

Lobe traced(QPointF at, double yaw_rad, double radius, const Gain& gain) {
    Lobe lobe;
    std::vector<double> gains;
    for (int i = 0; i < kDirections; ++i) gains.push_back(gain(angle_of(i)));
    for (int i = 0; i < kDirections; ++i) {
        const QPointF ahead = direction(yaw_rad, angle_of(i));
        lobe.outline << at + ahead * radius * radius_part(gains[static_cast<std::size_t>(i)]);
        if (is_null(gains, i)) lobe.nulls.emplace_back(at, at + ahead * radius * kRayLength);
    }
    return lobe;
}

/// Off-axis angle 0..pi and the side, for a turn within the object's own horizontal plane.
LocalAngles in_plane(double angle) {
    const double turned = std::remainder(angle, 2.0 * kPi);
    return {std::abs(turned), turned > 0.0 ? kPi : 0.0};
}
}  // namespace

std::optional<Lobe> lobe_of(const Show& show, std::string_view id, double hz, double radius) {
    if (const auto* l = find_by_id(show.loudspeakers, id)) {
        const LoudspeakerSlice slice(l->directivity, hz, speed_of_sound(show.air.temperature_c));
        return traced(to_page(l->position.xy()), radians(l->aim.yaw_deg), radius,
                      [&](double angle) { return slice.gain(in_plane(angle)); });
    }
    const auto* i = find_by_id(show.inputs, id);
    if (!i || !i->has_position || !microphone_of(*i)) return std::nullopt;
    const ReceiverPattern pattern(*i);
    return traced(to_page(i->position.xy()), radians(i->aim.yaw_deg), radius,
                  [&](double angle) { return pattern.gain(in_plane(angle).off_axis, hz); });
}

void paint_lobe(QPainter& painter, const Lobe& lobe, const PlanStyle& style) {
    QColor tint = style.ink.ink;
    tint.setAlphaF(0.07F);
    painter.setBrush(tint);
    painter.setPen(style.pen(style.ink.soft, 1.0));
    painter.drawPolygon(lobe.outline);
    painter.setPen(style.pen(style.ink.soft, 1.0, Qt::DotLine));
    for (const QLineF& ray : lobe.nulls) painter.drawLine(ray);
}

}  // namespace howlmap::app
