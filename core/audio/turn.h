// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <numbers>

namespace howlmap {

inline constexpr double kTurn = 2.0 * std::numbers::pi;  ///< radians of a whole turn

}  // namespace howlmap
