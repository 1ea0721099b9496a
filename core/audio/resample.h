// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <span>
#include <vector>

namespace howlmap {

/// A sound at another rate, by Kaiser-windowed sinc interpolation over 32 zero crossings: flat within 0.1 dB to 0.43 of
/// the lower rate, images and aliases 80 dB down (J. O. Smith, "Digital audio resampling", the method of band-limited
/// interpolation). Rates in Hz, above 0.
std::vector<float> resampled(std::span<const float> sound, double from_hz, double to_hz);

}  // namespace howlmap
