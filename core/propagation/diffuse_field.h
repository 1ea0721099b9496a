// SPDX-License-Identifier: GPL-3.0-or-later
// The reverberant field of a room: its mean square, and values that interpolate what is known at third-octave centres.
#pragma once
#include <array>

#include "core/directivity/loudspeaker_directivity.h"
#include "core/directivity/receiver_pattern.h"
#include "core/show/stage.h"
#include "core/units/bands.h"

namespace howlmap {

using ThirdOctaveValues = std::array<double, kThirdOctaves>;

/// Value at a frequency: linear over log f between exact third-octave centres, held at the ends.
double interpolate(const ThirdOctaveValues& values, double hz);

/// Directivity factor Q of a loudspeaker at the third-octave centres. The latest answers are kept: asking again for the
/// same is quick. May be asked from many threads.
ThirdOctaveValues directivity_factors(const Directivity& directivity, double speed);
/// Random energy efficiency of a receiver at the third-octave centres.
ThirdOctaveValues random_energy_efficiencies(const ReceiverPattern& pattern);

/// Mean square pressure of the diffuse field for 1 Pa at 1 m on axis: 16 pi / (Q A), A = 0.161 V / RT60 in m2.
/// Given: room with volume and RT60 above 0, directivity factor above 0.
/// Source: Hopkins and Stryker, J. Acoust. Soc. Am. 19, 1947 (4 W rho c / A for a source of this sound power).
double diffuse_mean_square(const Room& room, double directivity_factor);

}  // namespace howlmap
