// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest cuts of graphic equalisers that buy a wanted margin: least rms change of tone under linear conditions,
// one for each frequency that would be too strong, solved again as the picture changes (sequential quadratic
// programming by NLopt).
#pragma once
#include <map>
#include <vector>

#include "core/cures/candidate.h"

namespace howlmap::cures {

/// Cuts in dB (below 0, whole half decibels) by mix index and band 0..30, to be added to what is set.
using BandCuts = std::map<std::pair<std::size_t, int>, double>;

/// Cuts after which the guard's margin is `needed_db` larger, equal loudness included, or as near to that as 12 dB a
/// band allow.
BandCuts smallest_cuts(const Situation& now, double needed_db);
/// Adds cuts to the graphic equalisers of a show, down to -15 dB a band.
void apply_cuts(Show& show, const BandCuts& cuts);

}  // namespace howlmap::cures
