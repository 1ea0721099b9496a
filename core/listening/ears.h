// SPDX-License-Identifier: GPL-3.0-or-later
// What arrives at an ear or at a place in the house, source by source.
#pragma once
#include <string>
#include <vector>

#include "core/listening/transfer.h"

namespace howlmap {

enum class SourceKind { send, backline, own_acoustic };

/// One source at a point. Indices are positions in the lists of the show, -1 where they do not apply.
struct EarSource {
    SourceKind kind = SourceKind::send;
    int mix = -1, send = -1, input = -1;
    int loudspeaker = -1;  ///< -1 for a send: in the ear
    int backline = -1;
    bool own = false;       ///< her own input in the mix she hears, or her own acoustic sound
    double level_db = 0.0;  ///< of the send, or of the source at 1 m
    BandEnergies ratio{};   ///< energy at the ear per unit of energy of `level_db`
    BandEnergies energies() const;
    double weighted() const;  ///< A-weighted energy
};

/// All sources at a performer's ear: sends through loudspeakers and in the ear, backline, her own acoustic sound.
std::vector<EarSource> sources_at_ear(const Show& show, const ChainEnergies& chains, const Performer& performer);
/// All sends through all loudspeakers at a point; with `stage_only` only of those that make wash.
std::vector<EarSource> sources_at_point(const Show& show, const ChainEnergies& chains, Vec3 point, bool stage_only);

/// Sums of own and of all other sources.
struct OwnAndOthers {
    BandEnergies own{}, others{};
};
OwnAndOthers own_and_others(const std::vector<EarSource>& sources);

/// "bass in mix 2", "bass amplifier", "her own sound": how a sentence calls a source.
std::string name_of(const Show& show, const EarSource& source);
/// The name of an item, its id where it has none.
template <class Item>
const std::string& called(const Item& item) {
    return item.name.empty() ? item.id : item.name;
}

}  // namespace howlmap
