// SPDX-License-Identifier: GPL-3.0-or-later
// What drives the ends of a map's field when all other loops of the show are closed as set.
#pragma once
#include "core/loop/loop_model.h"
#include "core/maps/drives.h"

namespace howlmap::maps {

/// Position of an input (index in the show) in the model, -1 when nothing sends it to a loudspeaker.
int position_of_input(const LoopModel& model, int input);

/// Feedback map of an input (position in the model). One end a loudspeaker of the model: how strongly it sounds, and
/// the input hears, per unit of pressure at the input's transducer: B_c w, w = W_c + W_o (I - L_oo)^-1 L_oc (W: drives
/// of the loudspeakers by input, o: all other inputs). Refers to the model.
DriveFunction feedback_drives(const LoopModel& model, int input);

/// Loudspeaker map of a loudspeaker (position in the model) with the loop opened at one of its mixes (position in the
/// model's buses), per unit of the mix's signal. One end an input of the model: what its hearing of the loudspeaker
/// adds to the mix, with all other mixes closed; the constant part is what the mix's other loudspeakers bring back.
/// Refers to the model.
DriveFunction loudspeaker_drives(const LoopModel& model, int speaker, int bus);

}  // namespace howlmap::maps
