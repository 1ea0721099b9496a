// SPDX-License-Identifier: GPL-3.0-or-later
// Stability of all loops of a show as drawn.
#pragma once
#include <optional>
#include <vector>

#include "core/loop/figures.h"
#include "core/loop/loop_model.h"
#include "core/units/job.h"

namespace howlmap {

struct Stability {
    std::optional<double> margin_db;              ///< absent when nothing crosses above -60 dB
    std::optional<double> margin_hz;              ///< where the strongest crossing lies
    std::optional<double> worst_phase_margin_db;  ///< absent when the Perron root stays below -60 dB
    std::vector<Ring> rings;                      ///< worst first, within 12 dB of the first, 20 at most
    std::vector<PairFigure> pairs;                ///< worst first
};

/// Margins, and with `details` rings and pair figures too. Empty when cancelled or without a loop.
Stability stability_of(const Show& show, bool details, const Job& job = {});
/// The same for any model, every sample computed exactly and one by one: slow, to check the other with.
Stability exact_stability_of(const LoopModel& model, bool details, const Job& job = {});

}  // namespace howlmap
