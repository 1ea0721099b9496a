// SPDX-License-Identifier: GPL-3.0-or-later
// The smallest graphic cuts for a margin to count on: the conditions are the first rings of a few draws themselves.
#pragma once
#include "core/cures/analyst.h"
#include "core/cures/band_model.h"

namespace howlmap::cures {

/// Cuts (whole half decibels) after which the screened margin of `now.show` is a little more than `wanted_db`, as draws
/// that cuts are not fitted to gain less; or as near to that as their price (BandModel) allows. Cutting planes: each
/// round adds the rings of the draws that are still too strong; one draw in twenty may fail. Then faders go back
/// without which it is the same.
BandCuts smallest_counted_cuts(const Situation& now, double wanted_db, Analyst& analyst);

}  // namespace howlmap::cures
