// SPDX-License-Identifier: GPL-3.0-or-later
// Narrow peaks of one spectrum: the candidates for a howl.
#pragma once
#include <array>
#include <vector>

#include "core/audio/short_spectrum.h"

namespace howlmap {

/// Frequencies, as multiples of a peak's own, at which a musical tone would have its other partials.
inline constexpr std::array<double, 12> kPartialRatios = {2.0,       3.0,       4.0,       0.5,       1.5,  2.5,
                                                          1.0 / 3.0, 2.0 / 3.0, 4.0 / 3.0, 3.0 / 4.0, 1.25, 0.8};

struct SpectralPeak {
    double hz = 0.0;
    double level_db = 0.0;       ///< re a full-scale sine
    double over_noise_db = 0.0;  ///< over the mean of the neighbouring bins, 4 to 8 away on either side
    double over_rest_db = 0.0;   ///< over everything else that sounds, other lone lines aside; filled in by the tracker
};

/// Level of each of kPartialRatios around one frequency (dB re full scale, the largest of three bins) and whether a
/// peak stands there.
struct PartialLevels {
    std::array<float, kPartialRatios.size()> level_db{};
    unsigned peaks = 0;  ///< bit i: kPartialRatios[i] holds a local peak
    unsigned seen = 0;   ///< bit i: it lies inside the spectrum and clear of the peak itself
};

/// The strongest narrow peaks, strongest first, 24 at most, 20 Hz to 20 kHz: local maxima that stand 15 dB over the
/// mean of the bins 2 to 7 away on either side. Feature PNPR of T. van Waterschoot and M. Moonen, "Fifty years of
/// acoustic feedback control", Proc. IEEE 99(2), 2011, eq. 44, with its published threshold. Frequency from the advance
/// of phase since the frame before, good to a hundredth of a bin in silence.
std::vector<SpectralPeak> find_peaks(const SpectrumFrame& frame);

/// What sounds at the musical partials of a peak.
PartialLevels partial_levels(const SpectrumFrame& frame, double hz);

}  // namespace howlmap
