// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>

#include "core/cures/judge.h"

namespace howlmap::cures {

/// The cheapest sequence of the candidates that reaches the target to count on, confirmed by the full analysis. Sets of
/// up to four are gone through in rising order of cost with the guard, each also with the smallest graphic cuts on top;
/// what the guard promised and the full analysis does not keep teaches the guard. Only if no set reaches it does the
/// rest come out of the level, and the plan says so. `before` are the margins of `now.show`. Absent only when
/// cancelled.
std::optional<Plan> cheapest_plan(const Situation& now, const Margins& before, const Proposals& candidates,
                                  const CureOptions& options);

}  // namespace howlmap::cures
