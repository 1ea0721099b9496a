// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/cures/analyst.h"
#include "core/cures/candidate.h"

namespace howlmap::cures {

/// What the kinds that have nothing to look for propose for a situation, with guessed gains, most gain for its trouble
/// first; those that gain nothing are left out. There at once. Runs on all cores. Incomplete when cancelled.
Proposals propose_simple(const Situation& now, const TroubleWeights& weights);
/// The same of all kinds. Given: those of propose_simple.
Proposals propose_all(const Situation& now, const TroubleWeights& weights, Proposals simple);

/// Puts the most promising before a few draws, fills in what they gain, drops what gains nothing and ranks anew.
Proposals screened(const Situation& now, Proposals candidates, const TroubleWeights& weights, Analyst& analyst);

}  // namespace howlmap::cures
