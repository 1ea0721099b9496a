// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of `howlmap cures` in words: the plan first, then what else would help, best first.
#pragma once
#include <string>

#include "core/cures/cures.h"

namespace howlmap::report {

/// UTF-8 text, lines of at most about 100 columns.
std::string cures_text(const CureReport& report);

}  // namespace howlmap::report
