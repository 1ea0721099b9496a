// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/report/table.h"
#include "core/show/show.h"

namespace howlmap::report {

/// Moves below this are the accuracy of a stage plan, not a change (m, degrees).
inline constexpr double kMoveWorthTelling = 0.1;
inline constexpr double kTurnWorthTelling = 5.0;

/// What changed since an older version of a show, for someone who works from the older sheet: what, which, before,
/// after. Inputs, mixes (sends, outlets, equalisers), players, and positions by more than 0.1 m or 5 degrees. No rows:
/// nothing did.
Table differences_since(const Show& older, const Show& newer);

}  // namespace howlmap::report
