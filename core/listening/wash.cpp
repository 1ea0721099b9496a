// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/wash.h"

#include <algorithm>
#include <map>

#include "core/listening/ears.h"
#include "core/units/level.h"

namespace howlmap {

std::vector<WashShare> wash_shares(const Show& show, Vec3 point) {
    std::map<int, double> energies;
    double total = 0.0;
    for (const EarSource& source : sources_at_point(show, ChainEnergies(show), point, true)) {
        energies[source.loudspeaker] += source.weighted();
        total += source.weighted();
    }
    std::vector<WashShare> shares;
    for (const auto& [loudspeaker, energy] : energies)
        if (energy > 0.0)
            shares.push_back(
                {show.loudspeakers[static_cast<std::size_t>(loudspeaker)].id, energy_to_db(energy), energy / total});
    std::stable_sort(shares.begin(), shares.end(), [](const auto& a, const auto& b) { return a.dba > b.dba; });
    return shares;
}

}  // namespace howlmap
