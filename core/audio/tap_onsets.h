// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <span>
#include <vector>

namespace howlmap {

/// Samples at which taps begin: the sound rises by 12 dB within 4 ms, to within 30 dB of the loudest tap, 60 ms or more
/// after the tap before. rate in Hz. Accuracy: 1 ms.
std::vector<std::size_t> find_taps(std::span<const float> samples, double rate_hz);

}  // namespace howlmap
