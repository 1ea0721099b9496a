// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

namespace howlmap {

/// Shortest decimal text that reads back as the same double ("88", "0.05", "1e-05"), never with a decimal comma; -0
/// gives "0". The number must be finite.
std::string number_text(double value);

}  // namespace howlmap
