// SPDX-License-Identifier: GPL-3.0-or-later
// What drives the ends of a map's field when all other loops of the show are closed as set.
#pragma once
#include <atomic>

#include "core/maps/drives.h"
#include "core/maps/loop_table.h"

namespace howlmap::maps {

/// Position of an input (index in the show) in the model, -1 when nothing sends it to a loudspeaker.
int position_of_input(const LoopModel& model, int input);

/// Feedback map of an input (position in the model). One end a loudspeaker of the model: how strongly it sounds, and
/// the input hears, per unit of pressure at the input's transducer: B_c w, w = W_c + W_o (I - L_oo)^-1 L_oc (W: drives
/// of the loudspeakers by input, o: all other inputs), solved from the signals of the buses. Where the other channels'
/// loops may reach a modulus of 1 at a fine frequency, `doubtful` is set. Refers to the table and to `doubtful`.
DriveFunction feedback_drives(const LoopTable& table, int input, std::atomic<bool>& doubtful);

/// Loudspeaker map of a loudspeaker (position in the model) with the loop opened at one of its mixes (position in the
/// model's buses), per unit of the mix's signal, all other mixes closed. One end an input of the model. With
/// s the sends of the mix by input, q what the other mixes send through the loudspeaker, u what its inputs hear of the
/// mix's other loudspeakers, b what they hear of this one, and M = (I - L)^-1, L all loops of the other mixes through
/// other loudspeakers: T = (s M u (1 - q M b) + s M b (Rl + q M u)) / (1 - q M b). Numerator and denominator are both
/// linear in b; nothing divides when the loudspeaker carries this mix alone. Refers to the table.
DriveFunction loudspeaker_drives(const LoopTable& table, int speaker, int bus);

}  // namespace howlmap::maps
