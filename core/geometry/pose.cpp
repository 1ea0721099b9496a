// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/pose.h"

#include <algorithm>

namespace howlmap {

Frame frame_of(const Aim& aim) {
    const double yaw = radians(aim.yaw_deg), pitch = radians(aim.pitch_deg), roll = radians(aim.roll_deg);
    const Vec3 forward{std::sin(yaw) * std::cos(pitch), -std::cos(yaw) * std::cos(pitch), std::sin(pitch)};
    const Vec3 right{-std::cos(yaw), -std::sin(yaw), 0.0};
    const Vec3 up = cross(right, forward);
    return {forward, right * std::cos(roll) - up * std::sin(roll), up * std::cos(roll) + right * std::sin(roll)};
}

LocalAngles local_angles(const Frame& frame, Vec3 d) {
    const double ahead = dot(d, frame.forward), across = dot(d, frame.right), above = dot(d, frame.up);
    // atan2 of the two components keeps full accuracy close to the axis, where acos loses half the digits.
    const double side = std::hypot(across, above);
    // Straight ahead or behind the turn is 0, however the sines of a round angle were rounded.
    return {std::atan2(side, ahead), side < 1e-9 ? 0.0 : std::atan2(above, across)};
}

Aim aim_towards(Vec3 from, Vec3 to) {
    const Vec3 d = to - from;
    if (length(d) == 0.0) return {};
    return {wrap_degrees(degrees(std::atan2(d.x, -d.y))), degrees(std::atan2(d.z, std::hypot(d.x, d.y))), 0.0};
}

double wrap_degrees(double angle) {
    const double turned = std::fmod(angle, 360.0);
    const double positive = turned < 0.0 ? turned + 360.0 : turned;
    return positive >= 360.0 ? 0.0 : positive + 0.0;
}

double turn_degrees(double from, double to) {
    const double turn = wrap_degrees(to - from);
    return turn > 180.0 ? turn - 360.0 : turn;
}

}  // namespace howlmap
