// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/wash.h"

#include <algorithm>
#include <map>

#include "core/listening/ears.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap {

namespace {

constexpr double kWorthChanging = 0.1;  ///< least share of the wash

double wash_energy(const Show& show, Vec3 point) {
    double total = 0.0;
    for (const EarSource& source : sources_at_point(show, ChainEnergies(show), point, true)) total += source.weighted();
    return total;
}

template <class Change>
double changed_db(const Show& show, Vec3 point, const std::string& loudspeaker, Change change) {
    Show other = show;
    change(*find_by_id(other.loudspeakers, loudspeaker));
    return energy_to_db(wash_energy(other, point) / wash_energy(show, point));
}

}  // namespace

std::vector<WashEffect> wash_effects(const Show& show, Vec3 point) {
    std::vector<WashEffect> effects;
    for (const WashShare& share : wash_shares(show, point)) {
        if (share.share < kWorthChanging) continue;
        WashEffect effect{share.loudspeaker, 0.0, 0.0, 0.0};
        for (const double turn : {kWashTurnDeg, -kWashTurnDeg}) {
            const double db =
                changed_db(show, point, share.loudspeaker, [turn](Loudspeaker& l) { l.aim.yaw_deg += turn; });
            if (db < effect.turn_change_db) effect.turned_deg = turn, effect.turn_change_db = db;
        }
        effect.move_change_db =
            changed_db(show, point, share.loudspeaker, [](Loudspeaker& l) { l.position.y += kWashMove; });
        effects.push_back(effect);
    }
    return effects;
}

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
