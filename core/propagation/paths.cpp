// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propagation/paths.h"

#include <algorithm>

namespace howlmap {
namespace {
double Vec3::*axis_of(Via via) {
    switch (via) {
        case Via::back:
        case Via::front:
            return &Vec3::y;
        case Via::left:
        case Via::right:
            return &Vec3::x;
        default:
            return &Vec3::z;
    }
}

/// Whether the stage lies towards smaller coordinates.
bool stage_is_below(Via via) { return via == Via::back || via == Via::left || via == Via::ceiling; }

Vec3 mirrored(Via via, double plane, Vec3 point) {
    double& at = point.*axis_of(via);
    at = 2.0 * plane - at;
    return point;
}

Vec3 unit_or_zero(Vec3 d, double size) { return size > 0.0 ? d * (1.0 / size) : Vec3{}; }
}  // namespace

Planes planes_of(const Surfaces& surfaces, double floor_z) {
    Planes planes;
    const auto set = [&](Via via, const std::optional<Surface>& surface) {
        if (surface) planes[static_cast<std::size_t>(via)] = surface->at;
    };
    planes[static_cast<std::size_t>(Via::floor)] = floor_z;
    set(Via::back, surfaces.back);
    set(Via::front, surfaces.front);
    set(Via::left, surfaces.left);
    set(Via::right, surfaces.right);
    set(Via::ceiling, surfaces.ceiling);
    return planes;
}

const Surface& surface_of(const Surfaces& surfaces, Via via) {
    switch (via) {
        case Via::back:
            return *surfaces.back;
        case Via::front:
            return *surfaces.front;
        case Via::left:
            return *surfaces.left;
        case Via::right:
            return *surfaces.right;
        case Via::ceiling:
            return *surfaces.ceiling;
        default:
            return surfaces.floor;
    }
}

bool is_inside(Via via, double plane, Vec3 point) {
    const double at = point.*axis_of(via);
    return stage_is_below(via) ? at < plane : at > plane;
}

Path direct_path(Vec3 source, Vec3 receiver) {
    const Vec3 d = receiver - source;
    const double size = length(d);
    const Vec3 unit = unit_or_zero(d, size);
    return {Via::direct, size, std::max(size, kNearestM), unit, -unit};
}

std::size_t paths_between(Vec3 source, Vec3 receiver, const Planes& planes, std::array<Path, kVias>& paths) {
    paths[0] = direct_path(source, receiver);
    std::size_t count = 1;
    for (int i = 1; i < kVias; ++i) {
        const auto via = static_cast<Via>(i);
        const auto& plane = planes[static_cast<std::size_t>(i)];
        if (!plane || !is_inside(via, *plane, source) || !is_inside(via, *plane, receiver)) continue;
        const Vec3 out = mirrored(via, *plane, receiver) - source, in = mirrored(via, *plane, source) - receiver;
        const double size = length(out);
        paths[count++] = {via, size, std::max(size, kNearestM), unit_or_zero(out, size), unit_or_zero(in, size)};
    }
    return count;
}

std::vector<Path> paths_between(Vec3 source, Vec3 receiver, const Planes& planes) {
    std::array<Path, kVias> paths;
    const std::size_t count = paths_between(source, receiver, planes, paths);
    return {paths.begin(), paths.begin() + static_cast<std::ptrdiff_t>(count)};
}

}  // namespace howlmap
