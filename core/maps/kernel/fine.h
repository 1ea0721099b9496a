// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <vector>

#include "core/maps/kernel/layout.h"

namespace howlmap::maps {

/// The fine frequencies, among which the peak around a bin is sought: at least 8 steps to a bin and at most 8 Hz apart,
/// so that even the comb of paths 10 m apart in length is seen. The first is 20 Hz, the last 20 kHz.
struct FineGrid {
    std::vector<double> hz;
    std::vector<float> bins;        ///< place in bins: 0 at 20 Hz, 1 at the next bin ..
    std::array<int, kBins> of_bin;  ///< index of each bin's own frequency; the last bin's is that of 20 kHz
    int count() const { return static_cast<int>(hz.size()); }
};

/// The same one for all.
const FineGrid& fine_grid();

}  // namespace howlmap::maps
