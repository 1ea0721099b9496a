// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/cures/candidate.h"

namespace howlmap::cures {

/// Everything that all kinds propose for a situation, with guessed gains, most gain for its trouble first; those that
/// gain nothing are left out. Runs on all cores. Incomplete when cancelled.
Proposals propose(const Situation& now, const TroubleWeights& weights);

}  // namespace howlmap::cures
