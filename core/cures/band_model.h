// SPDX-License-Identifier: GPL-3.0-or-later
// What graphic cuts do to loop gains, around what is set, and the least squares that the smallest cuts come from.
#pragma once
#include <map>
#include <vector>

#include "core/cures/candidate.h"
#include "core/listening/bounded_squares.h"
#include "core/listening/spectrum.h"

namespace howlmap::cures {

/// Cuts in dB (0 or below) by mix index and band 0..30, to be added to what is set.
using BandCuts = std::map<std::pair<std::size_t, int>, double>;
/// Adds cuts to the graphic equalisers of a show, down to -15 dB a band.
void apply_cuts(Show& show, const BandCuts& cuts);
/// Cuts to whole half decibels, rather deeper than shallower.
BandCuts in_half_decibels(const BandCuts& cuts);
/// The cure that sets cuts (not empty) of `now.show`.
Candidate band_cure(const Situation& now, const BandCuts& cuts);

/// A loop gain that must come down: what it is over the limit with no cut, dB, and through which mixes it goes.
struct BandCondition {
    double hz = 0.0;
    double over_db = 0.0;
    std::vector<double> mix_share;  ///< by mix index
};

class BandModel {
  public:
    explicit BandModel(const Situation& now);
    /// Shares of the mixes in the loop gain at a frequency, by a guard of the show or of one with cuts.
    std::vector<double> shares_at(const Guard& guard, std::size_t at) const;
    /// A loop gain that lies `over_db` over its limit with these cuts.
    BandCondition condition(double hz, double over_db, std::vector<double> mix_share, const BandCuts& cuts) const;
    /// Adds the bands at both sides of a condition in the mixes that matter, at 0 dB.
    void add_bands(const BandCondition& condition, BandCuts& bands) const;
    /// How far all conditions together lie over their limits with these cuts, dB.
    double excess_db(const std::vector<BandCondition>& conditions, const BandCuts& cuts) const;
    struct Smallest {
        BandCuts cuts;
        double short_db = 0.0;  ///< what all conditions may be missed by: the rest cannot be had, or costs too much
    };
    /// The smallest cuts in the same bands that meet all conditions, to first order around `bands`.
    Smallest smallest(const std::vector<BandCondition>& conditions, const BandCuts& bands) const;

  private:
    using Key = BandCuts::key_type;
    double setting(const Key& key) const;
    double effect(const BandCondition& condition, const Key& key, double cut) const;
    double weight(const Key& key) const;
    BoundedSquares problem(const std::vector<BandCondition>& conditions, const BandCuts& bands) const;

    const Situation& now_;
    std::vector<BandEnergies> shares_;  ///< what listeners hear of a mix, A-weighted, by third-octave; sums to 1
};

}  // namespace howlmap::cures
