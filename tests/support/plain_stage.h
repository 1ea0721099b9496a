// SPDX-License-Identifier: GPL-3.0-or-later
// Shows in free air, built by hand: omni microphones and omni loudspeakers, one mix a loudspeaker, no sends yet.
#pragma once
#include "core/show/show.h"

namespace howlmap::test {

/// Microphones "i0", "i1", ..; loudspeakers "l0", ..; mixes "m0", ..; a floor that reflects nothing; no tolerance but
/// 100 draws.
Show plain_stage(int microphones, int loudspeakers);
/// Sends an input to a mix, by place.
void send(Show& show, int input, int mix, double level_db);

}  // namespace howlmap::test
