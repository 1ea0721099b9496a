// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <vector>

#include "core/show/show.h"

namespace howlmap {

/// Part of the wash at a listening place that one stage loudspeaker makes.
struct WashShare {
    std::string loudspeaker;
    double dba = 0.0;
    double share = 0.0;  ///< of the A-weighted energy, 0..1
};

/// Which stage loudspeakers make the wash at a point in the house, loudest first; silent ones are left out.
std::vector<WashShare> wash_shares(const Show& show, Vec3 point);

/// What a change of one stage loudspeaker does to the wash at a place.
struct WashEffect {
    std::string loudspeaker;
    double turned_deg = 0.0;      ///< of the better of both ways, positive counter-clockwise seen from above
    double turn_change_db = 0.0;  ///< of the whole wash, negative: quieter
    double move_change_db = 0.0;  ///< the same if it stood kWashMove further upstage
};
inline constexpr double kWashTurnDeg = 30.0, kWashMove = 1.0;  ///< trial changes: degrees, metres

/// Effects of turning and of moving each loudspeaker that makes at least a tenth of the wash at a point, loudest first.
std::vector<WashEffect> wash_effects(const Show& show, Vec3 point);

}  // namespace howlmap
