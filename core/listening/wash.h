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

}  // namespace howlmap
