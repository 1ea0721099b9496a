// SPDX-License-Identifier: GPL-3.0-or-later
// What a show says of a directivity; core/directivity computes with it.
#pragma once
#include <variant>
#include <vector>

#include "core/show/extras.h"

namespace howlmap {

struct Omni {
    Extras extras;
    friend bool operator==(const Omni&, const Omni&) = default;
};

/// Nominal -6 dB coverage angles of a cabinet.
struct Coverage {
    double horizontal_deg = 90.0, vertical_deg = 60.0;  ///< full angles, above 0 to 360
    double width_m = 0.5, height_m = 0.35;              ///< cabinet, above 0 to 50
    double floor_db = 24.0;                             ///< depth far off axis, above 6 to 60
    Extras extras;
    friend bool operator==(const Coverage&, const Coverage&) = default;
};

/// Rigid sphere with a cap that moves with uniform radial velocity.
struct CapOnSphere {
    double sphere_radius_m = 0.2, cap_radius_m = 0.1;  ///< above 0 to 50, cap at most sphere
    Extras extras;
    friend bool operator==(const CapOnSphere&, const CapOnSphere&) = default;
};

/// Measured table, rotationally symmetric: db[i][j] at hz[i], angles_deg[j] (0..180), both strictly rising.
struct DirectivityTable {
    std::vector<double> angles_deg, hz;
    std::vector<std::vector<double>> db;
    Extras extras;
    friend bool operator==(const DirectivityTable&, const DirectivityTable&) = default;
};

using Directivity = std::variant<Omni, Coverage, CapOnSphere, DirectivityTable>;

}  // namespace howlmap
