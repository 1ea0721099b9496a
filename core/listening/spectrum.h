// SPDX-License-Identifier: GPL-3.0-or-later
// Sounds as 31 third-octave energies without phase.
#pragma once
#include <array>
#include <optional>

#include "core/show/input.h"
#include "core/units/bands.h"

namespace howlmap {

/// Energies in the third-octave bands 20 Hz .. 20 kHz. For a sound: 1 is 0 dB SPL; for a filter or a path: a ratio.
using BandEnergies = std::array<double, kThirdOctaves>;

/// Shape of a sound; the 31 energies sum to 1 (0 dB), or are all 0 for a custom spectrum without bands.
/// The named shapes fall by so many dB an octave on both sides of a plateau: estimates, no source.
BandEnergies spectrum_energies(const Spectrum& spectrum);

double sum(const BandEnergies& energies);
/// Sum of the energies after A-weighting.
double a_weighted(const BandEnergies& energies);
/// A-weighted level in dB, absent for silence.
std::optional<double> level_dba(const BandEnergies& energies);
/// 10 log10 of an energy, absent for silence.
std::optional<double> level_of(double energy);

BandEnergies operator*(const BandEnergies& a, const BandEnergies& b);
BandEnergies operator*(const BandEnergies& a, double k);
BandEnergies& operator+=(BandEnergies& a, const BandEnergies& b);

}  // namespace howlmap
