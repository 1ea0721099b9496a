// SPDX-License-Identifier: GPL-3.0-or-later
// Compiled with -O3 -march=native -ffast-math: what a compiler makes of the plain loop.
#include "tests/bench/maps/plain_loop.h"

namespace howlmap::bench {
std::vector<PlainPeak> plain_peaks(const PlainField<float>& field, std::size_t cells) {
    return plain_peaks_of(field, cells);
}
}  // namespace howlmap::bench
