// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/geometry/polygon.h"
#include "core/show/extras.h"

namespace howlmap {

/// One absorption coefficient 0..1 for all frequencies, or one by octave band index 0..7 (63 Hz .. 8 kHz), at least
/// one.
using Absorption = std::variant<double, std::map<int, double>>;

struct Riser {
    std::string id, name;
    Outline outline;
    double height_m = 0.2;
    Extras extras;
    friend bool operator==(const Riser&, const Riser&) = default;
};

/// An infinite plane. `at` is its y (back, front), x (left, right) or z (ceiling) in metres; not used by the floor.
struct Surface {
    double at = 0.0;
    Absorption absorption = 0.1;
    Extras extras;
    friend bool operator==(const Surface&, const Surface&) = default;
};

struct Surfaces {
    Surface floor;  ///< always there
    std::optional<Surface> back, front, left, right, ceiling;
    Extras extras;
    friend bool operator==(const Surfaces&, const Surfaces&) = default;
};

struct Room {
    double volume_m3 = 500.0, rt60_s = 0.8;
    Extras extras;
    friend bool operator==(const Room&, const Room&) = default;
};

struct Stage {
    Outline outline{{-4.0, 0.0}, {4.0, 0.0}, {4.0, 5.0}, {-4.0, 5.0}};
    std::vector<Riser> risers;
    Surfaces surfaces;
    std::optional<Room> room;
    Extras extras;
    friend bool operator==(const Stage&, const Stage&) = default;
};

/// Height in m of the highest riser that covers the point, 0 without one.
double riser_height_at(const Stage& stage, Vec2 point);
/// Height in m of the highest riser that covers both points, 0 without one.
double common_riser_height(const Stage& stage, Vec2 a, Vec2 b);

}  // namespace howlmap
