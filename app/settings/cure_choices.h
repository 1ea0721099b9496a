// SPDX-License-Identifier: GPL-3.0-or-later
// Which kinds of cure a person can carry out, and how much trouble each is to her.
#pragma once
#include <set>

#include "core/cures/cures.h"

namespace howlmap::app {

struct CureChoices {
    TroubleWeights weights;        ///< finite, 0..kMostTrouble for the kinds
    std::set<CureKind> ruled_out;  ///< not to be had here: neither offered nor planned

    static constexpr double kMostTrouble = 20.0;

    /// What damaged or missing settings do not say is as the program brings it.
    static CureChoices load();
    void save() const;
    /// For the search: what is ruled out is endless trouble.
    TroubleWeights for_search() const;
};

}  // namespace howlmap::app
