// SPDX-License-Identifier: GPL-3.0-or-later
// Equal loudness: what every listener hears in the show that was asked about, and how to keep it in a changed one.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/listening/ears.h"
#include "core/listening/figures.h"
#include "core/show/show.h"

namespace howlmap::cures {

/// Largest change of what is heard, and the sentence that owns up to it.
struct Loss {
    double change_db =
        0.0;  ///< signed; of an input at an ear whose mix holds it, of her own sound, or of everything at an ear
    std::string words;  ///< empty when nothing changes by more than 0.1 dB
};

class Loudness {
  public:
    /// Keeps a copy of the show and of its levels.
    explicit Loudness(const Show& reference);

    /// The changed show with the sends of listened-to mixes set again, to 0.1 dB, so that each listener hears every
    /// input of her mix, all loudspeakers together, as loud (A-weighted) as in the reference: least squares in energy
    /// where a mix has more than one listener. Same performers and inputs in the same order.
    Show restored(const Show& changed) const;
    /// What listeners of the reference lose or gain in a changed show.
    Loss loss(const Show& changed) const;
    /// Change of tone in dB: rms over the third-octaves of a player's own sound in her mix (those within 20 dB of the
    /// strongest; her whole mix where it holds nothing of her own), for the player with the largest; or, where that
    /// is more, of a mix that no player listens to, as its loudspeakers send it: the house has ears too.
    double tone_cost_db(const Show& changed) const;

  private:
    /// Energies at one ear of one input through one mix, per unit of the send's energy.
    struct Way {
        int mix = 0, send = 0, input = 0;
        BandEnergies ratio{};
        double weighted = 0.0;
    };
    /// Everything that reaches one performer.
    struct Ear {
        std::vector<Way> ways;
        std::vector<double> by_input;  ///< A-weighted energy of each input, all mixes together
        int mix = -1;                  ///< -1: hears none
    };
    std::vector<Ear> ears_of(const Show& show) const;
    std::vector<Ear> ears_of(const Show& show, const ChainEnergies& chains) const;
    /// Energies that mixes without listeners among the players send; 0 for the others.
    std::vector<BandEnergies> unheard_mixes(const Show& show, const ChainEnergies& chains) const;
    Ear ear_of_performer(const Show& show, const ChainEnergies& chains, std::size_t performer) const;
    BandEnergies path(const Show& show, std::size_t performer, std::size_t loudspeaker) const;
    void solve_input(Show& show, const std::vector<Ear>& ears, std::size_t input) const;

    Show reference_;
    std::vector<BandEnergies> paths_;  ///< of the reference, by performer then loudspeaker
    std::vector<Ear> ears_;
    std::vector<BandEnergies> unheard_;
    std::vector<PerformerFigure> figures_;
};

}  // namespace howlmap::cures
