// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

#include "core/cures/cures.h"

namespace howlmap {

/// The machine form of cures and plan ("howlmap-cures", version 1): JSON in a stable key order with a newline at the
/// end; what is absent or not finite is null.
std::string cures_json(const CureReport& report);

}  // namespace howlmap
