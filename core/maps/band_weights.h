// SPDX-License-Identifier: GPL-3.0-or-later
// What a loudspeaker sends out in third-octave energies, and how a map counts them.
#pragma once
#include <array>
#include <optional>

#include "core/listening/transfer.h"
#include "core/maps/kernel/layout.h"

namespace howlmap::maps {

/// Energies at 1 m on a loudspeaker's axis from all sends of one mix; 0 when the mix does not feed it.
BandEnergies energies_of(const Show& show, const ChainEnergies& chains, const Loudspeaker& loudspeaker, const Mix& mix);
/// The same from all mixes.
BandEnergies energies_of(const Show& show, const ChainEnergies& chains, const Loudspeaker& loudspeaker);

/// 31 weights and a 0, as the kernel wants them.
struct alignas(64) BandWeights : std::array<float, std::size_t{2} * kBlock> {};
/// All bands A-weighted, or one band as it is.
BandWeights band_weights(const BandEnergies& energies, std::optional<int> band);

}  // namespace howlmap::maps
