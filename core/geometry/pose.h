// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cmath>
#include <numbers>

#include "core/geometry/vec3.h"

namespace howlmap {

inline constexpr double kPi = std::numbers::pi;
inline double radians(double degrees) { return degrees * kPi / 180.0; }
inline double degrees(double radians) { return radians * 180.0 / kPi; }

/// Aim in degrees. Yaw 0 faces the audience (-y) and grows counter-clockwise seen from above (90 faces +x);
/// pitch is positive upwards; roll turns (right, up) about forward by the right-hand rule.
struct Aim {
    double yaw_deg = 0.0, pitch_deg = 0.0, roll_deg = 0.0;
    friend bool operator==(const Aim&, const Aim&) = default;
};

/// The three unit axes of something that is aimed.
struct Frame {
    Vec3 forward, right, up;
};

/// forward = (sin yaw cos pitch, -cos yaw cos pitch, sin pitch); right = (-cos yaw, -sin yaw, 0); up = right x forward.
Frame frame_of(const Aim& aim);

/// Direction of a unit vector as seen in a frame: angle off the axis (0..pi) and turn about it from the right axis
/// (rad).
struct LocalAngles {
    double off_axis = 0.0;  ///< th, 0..pi
    double turn = 0.0;      ///< psi = atan2(d . up, d . right); 0 straight ahead or behind
};
LocalAngles local_angles(const Frame& frame, Vec3 unit_direction);

/// Yaw and pitch in degrees that look from one point to another; yaw in [0, 360). Coinciding points give {0, 0, 0}.
Aim aim_towards(Vec3 from, Vec3 to);
/// An angle in degrees brought into [0, 360).
double wrap_degrees(double degrees);
/// Smallest turn in degrees from one angle to another, in (-180, 180].
double turn_degrees(double from, double to);

}  // namespace howlmap
