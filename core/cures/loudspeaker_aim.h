// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <vector>

#include "core/show/show.h"

namespace howlmap::cures {

/// Ears that hear a loudspeaker by their mix.
std::vector<Vec3> listeners_of(const Show& show, const Loudspeaker& loudspeaker);
/// Aim in whole degrees from a point towards the middle of its listeners, within the pitch that its kind allows; none
/// without listeners.
std::optional<Aim> aim_at_listeners(const Show& show, const Loudspeaker& loudspeaker, Vec3 from);
/// Pitch in degrees that a wedge's two sides or a stand allow.
struct PitchRange {
    double low, high;
};
PitchRange pitch_range(const Loudspeaker& loudspeaker);
/// Whether a player or stage hand may move it: flown loudspeakers belong to licensed riggers, mains and subs to the
/// house.
bool may_be_moved(const Loudspeaker& loudspeaker);

}  // namespace howlmap::cures
