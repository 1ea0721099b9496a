// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/headroom.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/show/find.h"
#include "core/units/level.h"
#include "core/units/translate.h"

namespace howlmap {

std::vector<double> load_row(const Show& show, const ChainEnergies& chains, int loudspeaker) {
    const auto l = static_cast<std::size_t>(loudspeaker);
    std::vector<double> row;
    for (std::size_t m = 0; m < show.mixes.size(); ++m) {
        const auto& fed = show.mixes[m].loudspeakers;
        const bool feeds = std::find(fed.begin(), fed.end(), show.loudspeakers[l].id) != fed.end();
        for (const Send& send : show.mixes[m].sends) {
            const int input = index_by_id(show.inputs, send.input);
            row.push_back(!feeds || input < 0 ? 0.0
                                              : sum(chains.mixes[m] * chains.loudspeakers[l] *
                                                    chains.inputs[static_cast<std::size_t>(input)]));
        }
    }
    return row;
}

std::vector<LoudspeakerLoad> loudspeaker_loads(const Show& show) {
    const ChainEnergies chains(show);
    std::vector<LoudspeakerLoad> loads;
    for (int l = 0; l < static_cast<int>(show.loudspeakers.size()); ++l) {
        const std::vector<double> row = load_row(show, chains, l);
        double energy = 0.0;
        std::size_t at = 0;
        for (const Mix& mix : show.mixes)
            for (const Send& send : mix.sends) energy += row[at++] * db_to_energy(send.level_db);
        const Loudspeaker& loudspeaker = show.loudspeakers[static_cast<std::size_t>(l)];
        LoudspeakerLoad load{loudspeaker.id, level_of(energy), std::nullopt};
        if (load.level_db && loudspeaker.max_spl_db) load.headroom_db = *loudspeaker.max_spl_db - *load.level_db;
        loads.push_back(load);
    }
    return loads;
}

std::vector<std::string> headroom_warnings(const Show& show) {
    std::vector<std::string> warnings;
    for (const LoudspeakerLoad& load : loudspeaker_loads(show)) {
        if (!load.headroom_db || *load.headroom_db >= 0.0) continue;
        const Loudspeaker& loudspeaker = *find_by_id(show.loudspeakers, load.id);
        warnings.push_back(
            fmt::format(fmt::runtime(translate(
                            "listening", "{} is asked for {:.1f} dB SPL at 1 m, {:.1f} dB more than its {:.1f} dB.")),
                        called(loudspeaker), *load.level_db, -*load.headroom_db, *loudspeaker.max_spl_db));
    }
    return warnings;
}

}  // namespace howlmap
