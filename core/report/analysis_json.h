// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

#include "core/analysis/analysis.h"

namespace howlmap {

/// The machine form of an analysis ("howlmap-analysis", version 1): JSON in a stable key order with a newline at the
/// end; what is absent or not finite is null.
std::string analysis_json(const AnalysisResult& result);

}  // namespace howlmap
