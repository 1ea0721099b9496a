// SPDX-License-Identifier: GPL-3.0-or-later
// Sensible first guesses for what has just been put on the plan.
#pragma once
#include <string>
#include <vector>

#include "core/show/show.h"

namespace howlmap {

/// Nearest performer to a point on the plan, or nullptr without any.
const Performer* nearest_performer(const Show& show, Vec2 point);

/// For objects that were just placed: a wedge or fill (and a player's combo amplifier) faces the nearest performer and
/// joins her mix, or opens one for her; a microphone or instrument without a performer belongs to the nearest one, and
/// a microphone faces her; a new performer without a mix takes that of a loudspeaker nearby only if nobody else hears
/// it. Unknown ids are passed over.
void guess_for_placed(Show& show, const std::vector<std::string>& ids);

}  // namespace howlmap
