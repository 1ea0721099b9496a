// SPDX-License-Identifier: GPL-3.0-or-later
// Where the sound is that a microphone is there for, and what moving the microphone does to how loud it hears it.
#pragma once
#include "core/show/show.h"

namespace howlmap::cures {

/// A microphone is drawn aimed at its source: the point on its axis nearest to its player's vertical axis, 5 cm to 1 m
/// away; 10 cm on its axis when it has no player or points away from her (estimate, no source). For a pickup: its own
/// position.
Vec3 source_of(const Show& show, const Input& input);

/// The level that the same playing makes through the changed microphone, against `before`: inverse square of the
/// distances to the source and the pattern's loss off axis (tables by their value at 1 kHz). source_spl_db of the
/// changed input is set so; far off axis (more than 6 dB down) false is returned and nothing set: it would no longer do
/// its job.
bool follow_source(const Input& before, Vec3 source, Input& after);

}  // namespace howlmap::cures
