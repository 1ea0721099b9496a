// SPDX-License-Identifier: GPL-3.0-or-later
// What a loudspeaker is asked for against what it can do.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/listening/ears.h"

namespace howlmap {

struct LoudspeakerLoad {
    std::string id;
    std::optional<double>
        level_db;  ///< all sends together, dB SPL at 1 m on axis after every filter and its trim; absent: silent
    std::optional<double> headroom_db;  ///< max_spl_db - level_db; absent where max_spl_db is not known
};

/// One a loudspeaker, in the order of the show.
std::vector<LoudspeakerLoad> loudspeaker_loads(const Show& show);
/// A sentence for each loudspeaker that is asked for more than its max_spl_db.
std::vector<std::string> headroom_warnings(const Show& show);

/// Energy at 1 m on a loudspeaker's axis per unit of energy of each send, in the order of send_model().
std::vector<double> load_row(const Show& show, const ChainEnergies& chains, int loudspeaker);

}  // namespace howlmap
