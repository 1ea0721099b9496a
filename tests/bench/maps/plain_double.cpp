// SPDX-License-Identifier: GPL-3.0-or-later
// Compiled like everything else: -O3.
#include "tests/bench/maps/plain_loop.h"

namespace howlmap::bench {
std::vector<PlainPeak> plain_peaks(const PlainField<double>& field, std::size_t cells) {
    return plain_peaks_of(field, cells);
}
}  // namespace howlmap::bench
