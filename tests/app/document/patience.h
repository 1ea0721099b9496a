// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace howlmap::app {
inline constexpr int kPatienceMs = 300'000;  ///< with sanitizers, on a machine that does other things, too
}  // namespace howlmap::app
