// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/loop_model.h"

namespace howlmap {

/// How fast the phases of a set of loops turn over frequency.
struct LoopTiming {
    double common_s = 0.0;  ///< delay taken out of all loops
    double spread_s = 0.0;  ///< how far any path of any loop lies from it at most
    struct Resonance {
        double hz, sharpness;
        /// Group delay in s at a frequency: that of a pole pair, Q / (pi hz) at its centre.
        double group_delay(double f) const;
    };
    std::vector<Resonance> resonances;  ///< of all filters and bodies
};
LoopTiming timing_of(const LoopModel& model);

/// Rising frequencies from 20 Hz to 20 kHz, so close that between neighbours no path, less the common delay, turns by
/// more than 1/`steps` turn and no resonance by more than about as much.
/// Nor are they further apart than `most_hz`.
std::vector<double> frequency_grid(const LoopTiming& timing, double steps, double most_hz = 1e9);

}  // namespace howlmap
