// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

namespace howlmap {

/// Frequency in Hz of the strongest line in the last half of a sound (the largest power of two of samples that fits),
/// by a parabola through the decibels of the highest bin and its neighbours under a Hann window: good to a fiftieth of
/// a bin for a lone line. Growth in dB a sample is taken out first. At least 16 samples.
double dominant_hz(const std::vector<float>& sound, double growth_db_per_sample, double rate_hz);

}  // namespace howlmap
