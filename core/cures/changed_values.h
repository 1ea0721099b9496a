// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/cures/cures.h"

namespace howlmap::cures {

/// What differs between the files of two shows, value by value: items of lists are matched by their id (sends by their
/// input), so that taking one out is one entry and not a shift of all that follow. Pointers name places in the first
/// show; what is added at the end of a list in the second.
std::vector<ChangedValue> changed_values(const Show& before, const Show& after);

}  // namespace howlmap::cures
