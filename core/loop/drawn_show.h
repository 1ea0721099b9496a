// SPDX-License-Identifier: GPL-3.0-or-later
// One possible real stage: the show with everything a little off.
#pragma once
#include <cstdint>
#include <vector>

#include "core/loop/random.h"
#include "core/show/show.h"

namespace howlmap {

/// Places of a draw's numbers (1, 2, ..): microphones and pickups in file order with x, y, z, yaw, pitch each,
/// loudspeakers likewise, sends mix by mix, temperature, loudspeaker phases, then the room.
struct DrawLayout {
    explicit DrawLayout(const Show& show);
    std::uint64_t loudspeakers, sends, temperature, phases, room;
};

struct DrawnShow {
    Show show;
    std::vector<double> phases;  ///< rad, by loudspeaker
};

/// Moves and turns one thing by five numbers, from the i-th on; i then stands behind them.
void disturb(Vec3& position, Aim& aim, const Tolerance& tolerance, const DrawNumbers& numbers, std::uint64_t& i);

/// Draw d of a show. Poses, send levels and temperature differ from the given show, nothing else.
DrawnShow draw_show(const Show& show, const DrawLayout& layout, const DrawNumbers& numbers);

}  // namespace howlmap
