// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/show/stage.h"

namespace howlmap {

/// Absorption coefficient at a frequency in Hz above 0: linear in the coefficient over log2 f between exact octave
/// centres (IEC 61260-1), held at the ends.
double absorption_at(const Absorption& absorption, double hz);

/// Reflection factor of sound pressure, sqrt(1 - a): real, the same at every angle. 0 (free air) to 1 (rigid).
double reflection_factor(const Absorption& absorption, double hz);

}  // namespace howlmap
