// SPDX-License-Identifier: GPL-3.0-or-later
// A stage as an engineer would build it from delay lines and digital filters: sample by sample, all loops closed. It
// shares no code with the analysis: own geometry, own filters (bilinear transform at 192 kHz), fractional delays by
// interpolation.
#pragma once
#include <vector>

#include "core/show/show.h"

namespace howlmap::test {

/// What it can do: omni loudspeakers, first-order microphones and pickups, floor and back wall with one absorption
/// each, all filters, delays and polarities. The air absorbs nothing.
struct Simulated {
    double growth_db_per_s = 0.0;  ///< of the sound in the second half of the run
    double hz = 0.0;               ///< its frequency there
};

/// Starts all loops with a click, every send raised by `raise_db`, and listens to the first input for a while.
Simulated simulate(const Show& show, double raise_db, double seconds);

}  // namespace howlmap::test
