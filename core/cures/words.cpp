// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/words.h"

#include <cmath>

namespace howlmap::cures {
namespace {
constexpr double kMetresPerInch = 0.0254;

void join(std::string& all, const std::string& part) { all = all.empty() ? part : words("{} and {}", all, part); }
}  // namespace

std::string length_words(double metres, Units units) {
    if (units == Units::metric) return localised("{:.2f} m", metres);
    const int inches = static_cast<int>(std::lround(metres / kMetresPerInch));
    if (inches < 12) return words("{} in", inches);
    return inches % 12 == 0 ? words("{} ft", inches / 12) : words("{} ft {} in", inches / 12, inches % 12);
}

std::string shift_words(Vec3 from, Vec3 to, Units units) {
    const Vec3 d = to - from;
    std::string all;
    const auto add = [&](double metres, const char* plus, const char* minus) {
        if (std::abs(metres) >= 0.005)
            join(all, words(metres > 0.0 ? plus : minus, length_words(std::abs(metres), units)));
    };
    add(d.y, "{} upstage", "{} downstage");
    add(d.x, "{} towards stage left", "{} towards stage right");
    add(d.z, "{} up", "{} down");
    return all;
}

std::string turn_words(const Aim& from, const Aim& to) {
    std::string all;
    const double yaw = turn_degrees(from.yaw_deg, to.yaw_deg), pitch = to.pitch_deg - from.pitch_deg;
    if (std::abs(yaw) >= 0.5) {
        // Which side that is depends on where it faces: the sideways part of the new direction less that of the old.
        const Vec3 before = frame_of({from.yaw_deg, 0.0, 0.0}).forward,
                   after = frame_of({to.yaw_deg, 0.0, 0.0}).forward;
        const Vec3 d = after - before;
        const double degrees = std::abs(yaw);
        if (std::abs(d.x) >= std::abs(d.y))
            join(all, words(d.x > 0.0 ? "{:.0f} deg towards stage left" : "{:.0f} deg towards stage right", degrees));
        else
            join(all, words(d.y > 0.0 ? "{:.0f} deg towards upstage" : "{:.0f} deg towards the audience", degrees));
    }
    if (std::abs(pitch) >= 0.5) join(all, words(pitch > 0.0 ? "{:.0f} deg up" : "{:.0f} deg down", std::abs(pitch)));
    return all;
}

}  // namespace howlmap::cures
