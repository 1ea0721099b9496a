// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/band_weights.h"

#include <algorithm>

#include "core/air/weighting.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::maps {

BandEnergies energies_of(const Show& show, const ChainEnergies& chains, const Loudspeaker& loudspeaker,
                         const Mix& mix) {
    BandEnergies sum{};
    if (std::find(mix.loudspeakers.begin(), mix.loudspeakers.end(), loudspeaker.id) == mix.loudspeakers.end())
        return sum;
    const auto position = [](const auto& list, const auto& item) {
        return static_cast<std::size_t>(&item - list.data());
    };
    const BandEnergies chain =
        chains.mixes[position(show.mixes, mix)] * chains.loudspeakers[position(show.loudspeakers, loudspeaker)];
    for (const Send& send : mix.sends) {
        const int input = index_by_id(show.inputs, send.input);
        if (input >= 0) sum += chains.inputs[static_cast<std::size_t>(input)] * chain * db_to_energy(send.level_db);
    }
    return sum;
}

BandEnergies energies_of(const Show& show, const ChainEnergies& chains, const Loudspeaker& loudspeaker) {
    BandEnergies sum{};
    for (const Mix& mix : show.mixes) sum += energies_of(show, chains, loudspeaker, mix);
    return sum;
}

BandWeights band_weights(const BandEnergies& energies, std::optional<int> band) {
    BandWeights weights{};
    for (std::size_t b = 0; b < kThirdOctaves; ++b) {
        const double counted = band ? (static_cast<std::size_t>(*band) == b ? 1.0 : 0.0) : a_weighting_energies()[b];
        weights[b] = static_cast<float>(energies[b] * counted);
    }
    return weights;
}

}  // namespace howlmap::maps
