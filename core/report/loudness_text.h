// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>

#include "core/show/show.h"

namespace howlmap::report {

/// How loudness feeds on itself, for the terminal: what 3 dB more of the three dearest sources costs everybody, and
/// what the quietest stage would be at which every player hears herself over the others. Empty where nobody pays and
/// fewer than two have a send of their own.
std::string loudness_text(const Show& show);

}  // namespace howlmap::report
