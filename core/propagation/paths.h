// SPDX-License-Identifier: GPL-3.0-or-later
// The ways from a loudspeaker to what hears it: straight, and once reflected in each surface (mirror images).
// Source: Allen and Berkley, J. Acoust. Soc. Am. 65, 943-950, 1979, first order.
#pragma once
#include <array>
#include <optional>
#include <vector>

#include "core/geometry/vec3.h"
#include "core/show/stage.h"

namespace howlmap {

enum class Via { direct, floor, back, front, left, right, ceiling };
inline constexpr int kVias = 7;

/// Distances below this are held at it, phase included: a transducer is no point.
inline constexpr double kNearestM = 0.05;

struct Path {
    Via via = Via::direct;
    double distance_m = 0.0;  ///< true length
    double held_m = 0.0;      ///< max(distance, 0.05 m)
    Vec3 leaving;   ///< unit vector from the loudspeaker towards the (mirrored) receiver; 0 where the two coincide
    Vec3 arriving;  ///< unit vector from the receiver towards the (mirrored) loudspeaker; 0 where the two coincide
};

/// The infinite planes that mirror, by Via; direct is never one. Each holds its coordinate in m.
using Planes = std::array<std::optional<double>, kVias>;

/// Planes of a show's surfaces with the floor at a height in m.
Planes planes_of(const Surfaces& surfaces, double floor_z = 0.0);
/// The surface of a plane; it must be one that the show has.
const Surface& surface_of(const Surfaces& surfaces, Via via);

/// Whether a point lies strictly on the stage's side of a plane.
bool is_inside(Via via, double plane, Vec3 point);

/// Direct path first, then an image for each plane that has both points strictly on its inner side.
std::vector<Path> paths_between(Vec3 source, Vec3 receiver, const Planes& planes);
/// The same into an array; returns how many there are.
std::size_t paths_between(Vec3 source, Vec3 receiver, const Planes& planes, std::array<Path, kVias>& paths);
/// The direct path alone.
Path direct_path(Vec3 source, Vec3 receiver);

}  // namespace howlmap
