// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest cuts of graphic equalisers that buy a wanted margin: least rms change of tone under linear conditions,
// one for each frequency that would be too strong, solved again as the picture changes (sequential quadratic
// programming by NLopt).
#pragma once
#include "core/cures/band_model.h"

namespace howlmap::cures {

/// Cuts (whole half decibels) after which the guard's margin is `needed_db` larger, equal loudness included, or as near
/// to that as 12 dB a band and the price of a decibel (BandModel) allow.
BandCuts smallest_cuts(const Situation& now, double needed_db);

}  // namespace howlmap::cures
