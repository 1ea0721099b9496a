// SPDX-License-Identifier: GPL-3.0-or-later
// Where in the spectrum a player cannot hear herself, and under what.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/show/show.h"
#include "core/units/bands.h"

namespace howlmap {

/// Levels in one third-octave at an ear, dB without weighting; absent for silence.
struct BandAtEar {
    std::optional<double> own_db, others_db;
    std::optional<double> margin_db;  ///< own - others
};

/// A run of bands in which others are louder than her own sound although her own sound matters there.
struct MaskedRange {
    int first_band = 0, last_band = 0;
    double worst_margin_db = 0.0;  ///< below 0
    std::string source;            ///< the loudest of the others there, as a sentence calls it
    std::string sentence;          ///< "Your low strings are under bass amplifier (8 dB at 80 Hz)."
};

struct EarSpectrum {
    std::string performer;
    std::array<BandAtEar, kThirdOctaves> bands;
    std::vector<MaskedRange> masked;  ///< lowest first
};

/// One a performer, in the order of the show. A band of her own sound matters when it lies within 12 dB of her
/// strongest A-weighted band.
std::vector<EarSpectrum> ear_spectra(const Show& show);

}  // namespace howlmap
