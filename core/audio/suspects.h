// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <vector>

#include "core/show/show.h"
#include "core/units/job.h"

namespace howlmap {

/// A loop of the show that may have made a frequency.
struct LoopSuspect {
    std::string input, loudspeaker;
    double hz = 0.0;         ///< where the drawing has its ring
    double margin_db = 0.0;  ///< of that ring, as drawn
};

/// Loops that could howl at a frequency heard (Hz, 20..20000), likeliest first, at most ten. A ring of the drawing
/// counts if the show's own tolerances of position, temperature and loudspeaker phase can move it that far; it is
/// ranked by its margin, worse by up to 6 dB the farther it had to move. Each input and loudspeaker is named once, if
/// it carries a fifth of the ring or half as much as the one that carries most. Empty when nothing fits or the job was
/// cancelled.
std::vector<LoopSuspect> loops_for_frequency(const Show& show, double hz, const Job& job = {});

}  // namespace howlmap
