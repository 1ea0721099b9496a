// SPDX-License-Identifier: GPL-3.0-or-later
// Candidates before the full analysis.
#pragma once
#include <optional>

#include "core/cures/analyst.h"
#include "core/cures/candidate.h"

namespace howlmap::cures {

/// What names a candidate, and the cure that it becomes, within a report.
std::string id_of(const Candidate& candidate);

/// A show with a candidate applied: the sends set again unless it may take level.
Show applied(const Show& show, const Loudness& reference, const Candidate& candidate);

/// The cure as it is reported. `from` was judged to `before`; `reference` is what must stay as loud. Absent only when
/// cancelled.
std::optional<Cure> judged(const Show& from, const Margins& before, const Loudness& reference,
                           const Candidate& candidate, const TroubleWeights& weights, Analyst& analyst);

/// What a candidate costs: trouble, movement, sends to set again, lost level, tone. Units of trouble.
double cost_of(const Candidate& candidate, const Show& from, const Show& after, const Loss& loss, double tone_db,
               const TroubleWeights& weights);

}  // namespace howlmap::cures
