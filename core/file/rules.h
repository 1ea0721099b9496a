// SPDX-License-Identifier: GPL-3.0-or-later
// What a value must obey beyond its type; the writer has no use for them. Private to core/file.
#pragma once
#include <span>
#include <string_view>

#include "core/show/limits.h"

namespace howlmap::file {

inline constexpr std::string_view kFormat = "howlmap-show";
inline constexpr int kVersion = 1;  ///< of the format that this program writes

struct Filled {};   ///< text that is not empty
struct IsoDate {};  ///< "" or a calendar date such as "2031-05-14" (ISO 8601)
struct NullOr {
    Range range;  ///< null stands for "not known"
};
struct Rising {
    Range range;  ///< of each number; each must be above the one before, and there is at least one
};
/// An object whose keys are nominal band values and whose values are numbers.
struct Bands {
    std::span<const double> nominals;
    Range range;
    bool may_be_empty = false;
};

}  // namespace howlmap::file
