// SPDX-License-Identifier: GPL-3.0-or-later
// Who rings when a stage rings first: not what the drawing says, but what the draws do.
#pragma once
#include <optional>
#include <vector>

#include "core/loop/tolerance.h"

namespace howlmap {

/// Fills in frequency, way round and mixes of each band of figures_of(margins), from the shares (as of a ring) in the
/// first two dozen draws that ring there first. On all cores. Any values when cancelled.
void name_first_rings(const Show& show, const std::vector<std::optional<DrawnMargin>>& margins,
                      ToleranceFigures& figures, const Job& job = {});

}  // namespace howlmap
