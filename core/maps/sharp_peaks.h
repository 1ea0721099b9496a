// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/maps/drives.h"

namespace howlmap::maps {

/// Peaks of the drives that the fine frequencies would under-read: at most so many.
inline constexpr std::size_t kMostSharpPeaks = 24;

/// Square of the size of the drives: of all ends and the constant part together.
double size_of(const Complex* drives, const DriveFunction& function);

/// 16 frequencies around each sharp peak as two octets, close enough together that a parabola finds its height.
/// Given: drives at the fine frequencies, by frequency, then end.
std::vector<Octet> around_sharp_peaks(const DriveFunction& function, const Range& range,
                                      const std::vector<Complex>& fine, const Job& job);

}  // namespace howlmap::maps
