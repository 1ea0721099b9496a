// SPDX-License-Identifier: GPL-3.0-or-later
// Small tasks that are checked by computing.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/lesson/figures.h"

namespace howlmap {

/// One figure that must lie between two values (both included); an absent bound is none.
struct Condition {
    std::string figure;
    std::optional<double> least, most;
};

/// Where a lesson stands: the bench as the lesson set it up, and as it is now.
struct Standing {
    const Bench& start;
    const LessonFigures& start_figures;
    const Bench& now;
    const LessonFigures& figures;
};

/// Whether conditions may name it: a knob by its key, or margin_db, margin_gain_db (since the start), misfit,
/// loop_gain_db, pattern_db, tone_cost_db, lowest_fit_hz, fits_below_1k, ring_shift_cents (since the start, as a size),
/// loops (0 or 1).
bool is_figure(std::string_view name);
/// Its value; absent where the bench has none (no loop, no ring).
std::optional<double> figure_named(std::string_view name, const Standing& standing);
/// Whether all conditions hold. A figure that is absent holds no bound.
bool is_solved(const std::vector<Condition>& task, const Standing& standing);

}  // namespace howlmap
