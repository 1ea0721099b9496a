// SPDX-License-Identifier: GPL-3.0-or-later
// Oddities of a show that do not stop anything but that whoever drew it will want to know.
#pragma once
#include <string>
#include <vector>

#include "core/show/show.h"

namespace howlmap {

struct Finding {
    std::string text;              ///< one sentence
    std::vector<std::string> ids;  ///< of the objects that it speaks of
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// What looks like a slip: microphones, pickups and stage loudspeakers outside the outline; numbers given twice; mixes
/// that reach nobody, performers without a mix, inputs in no mix, stage loudspeakers that play nothing. In this order,
/// each kind one sentence at most.
std::vector<Finding> findings(const Show& show);

}  // namespace howlmap
