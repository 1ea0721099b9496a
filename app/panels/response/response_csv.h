// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

#include "core/analysis/response.h"

namespace howlmap::app {

/// hz, gain_db, worst_phase_db, p05_db, p95_db by frequency; the percentiles (coarser) are interpolated, empty without
/// draws. C locale.
std::string response_csv(const LoopResponse& response, const ResponseBand* band);

}  // namespace howlmap::app
