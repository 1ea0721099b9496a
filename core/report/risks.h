// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <vector>

#include "core/analysis/analysis.h"

namespace howlmap::report {

/// What a stranger must know of this stage in at most three sentences: how near to ringing, what rings first and
/// between whom, what to pull before anything is raised. One sentence where nothing loops.
std::vector<std::string> risk_sentences(const Show& show, const AnalysisResult& result);

/// The cautions that belong on every sheet: what the figures are not, ears, flown gear and power, tape on a finish.
std::vector<std::string> caution_sentences();
/// What the estimates are not, to follow the first caution where a stranger reads them.
std::string what_estimates_leave_out();

}  // namespace howlmap::report
