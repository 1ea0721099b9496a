// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <string>

#include "core/geometry/vec3.h"
#include "core/show/extras.h"

namespace howlmap {

enum class Hears { loudspeakers, in_ear, acoustic };

struct Performer {
    std::string id, name;
    Vec2 position;
    double ear_height_m = 1.6;  ///< above the riser under the performer
    double yaw_deg = 0.0;
    Hears hears = Hears::loudspeakers;
    std::string mix;                         ///< id of the mix she hears, may be empty
    double seal_db = 25.0;                   ///< of her in-ears
    std::optional<double> own_acoustic_dba;  ///< her own acoustic sound at her ear
    std::string notes;
    Extras extras;
    friend bool operator==(const Performer&, const Performer&) = default;
};

}  // namespace howlmap
