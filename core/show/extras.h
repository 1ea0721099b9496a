// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <string>
#include <utility>
#include <vector>

namespace howlmap {

/// Keys of a file's object that this version does not know: (key, JSON text) in file order, written back untouched.
using Extras = std::vector<std::pair<std::string, std::string>>;

enum class Polarity { normal, inverted };

}  // namespace howlmap
