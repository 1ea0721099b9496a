// SPDX-License-Identifier: GPL-3.0-or-later
// Frequency weighting A, IEC 61672-1:2013, Annex E: analytic form with the exact pole frequencies.
#pragma once
#include <array>

#include "core/units/bands.h"

namespace howlmap {

/// A-weighting in dB at a frequency in Hz, 0 dB at 1 kHz. Valid for hz > 0. Source: IEC 61672-1:2013, equation (E.6).
double a_weighting_db(double hz);

/// A-weighting as energy ratios at the exact third-octave centres.
const std::array<double, kThirdOctaves>& a_weighting_energies();

}  // namespace howlmap
