// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <vector>

#include "core/maps/kernel/layout.h"

namespace howlmap::maps {

/// So many frequencies are worked out side by side in double precision.
inline constexpr std::size_t kOctet = 8;

/// Eight equally spaced frequencies close to each other.
struct Octet {
    double low_hz = 0.0, step_hz = 0.0;
    int bin = 0;                  ///< below or at their middle
    double at = 0.0, rise = 0.0;  ///< place of point i between that bin and the next: at + i rise
    double hz(std::size_t i) const { return low_hz + step_hz * static_cast<double>(i); }
};
/// Given: frequencies within 20 Hz .. 20 kHz.
Octet octet_at(double low_hz, double step_hz);

/// The fine frequencies, among which the peak around a bin is sought: at least 8 steps to a bin and at most 2 Hz apart,
/// so that resonances of loops that take 50 ms and more are seen. The first is 20 Hz, the last 20 kHz. Between two bins
/// they are equally spaced and come in whole octets; the last octet is 20 kHz eight times, of which the first counts.
///
/// The sparse frequencies are some of them, at least 8 steps to a bin and at most 8 Hz apart, so that the comb of paths
/// 10 m apart in length is seen: a first look, from which the fine ones go on.
struct FineGrid {
    std::vector<Octet> octets;
    std::vector<double> hz;                ///< of all octets
    std::vector<float> bins;               ///< place in bins: 0 at 20 Hz, 1 at the next bin ..
    std::array<int, kBins> of_bin;         ///< index of each bin's own frequency; the last bin's is that of 20 kHz
    std::vector<int> sparse;               ///< indices of the sparse frequencies
    std::vector<float> sparse_bins;        ///< their places in bins
    std::array<int, kBins> sparse_of_bin;  ///< index of each bin's own frequency among the sparse ones
    int count() const { return of_bin[kBins - 1] + 1; }
    int sparse_count() const { return static_cast<int>(sparse.size()); }
};

/// The same one for all.
const FineGrid& fine_grid();

}  // namespace howlmap::maps
