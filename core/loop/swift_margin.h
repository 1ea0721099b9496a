// SPDX-License-Identifier: GPL-3.0-or-later
// The margin as drawn and nothing else, fast enough to follow a hand.
#pragma once
#include <optional>

#include "core/loop/tolerance.h"

namespace howlmap {

/// Strongest crossing of a show as drawn: margin_db and margin_hz of stability_of to 0.05 dB, in a tenth of its time
/// and on one thread. Absent without a crossing above -60 dB.
std::optional<DrawnMargin> swift_margin(const Show& show);

}  // namespace howlmap
