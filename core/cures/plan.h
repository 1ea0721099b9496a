// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>

#include "core/cures/judge.h"

namespace howlmap::cures {

/// The cheapest sequence of the candidates that reaches the target to count on, confirmed by the full analysis. Sets of
/// up to four are weighed with the guard, the best also with the smallest graphic cuts on top; those that may reach it
/// are put before a few draws and then before the full analysis, cheapest first. What a set was found to fall short of
/// what the guard promised is taken off all larger ones that hold it. Steps that turn out not to be needed
/// are left out. Only if no set reaches it does the rest come out of the level, and the plan says so. `before` are the
/// margins of `now.show`; candidates have been screened. Absent only when cancelled.
std::optional<Plan> cheapest_plan(const Situation& now, const Margins& before, const Proposals& candidates,
                                  const CureOptions& options, Analyst& analyst);

}  // namespace howlmap::cures
