// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/kernel/fine.h"

#include <algorithm>
#include <cmath>

namespace howlmap::maps {
namespace {
constexpr double kWidestStep = 2.0;  // Hz

void add_octet(FineGrid& grid, const Octet& octet) {
    grid.octets.push_back(octet);
    for (std::size_t i = 0; i < kOctet; ++i) {
        grid.hz.push_back(octet.hz(i));
        grid.bins.push_back(static_cast<float>(kBinsPerOctave * std::log2(octet.hz(i) / kLowestHz)));
    }
}

/// Every so many fine frequencies from one on, up to the last.
void add_sparse(FineGrid& grid, int bin, int first, int stride) {
    grid.sparse_of_bin[static_cast<std::size_t>(bin)] = grid.sparse_count();
    for (int i = first; i < static_cast<int>(grid.hz.size()); i += stride) {
        grid.sparse.push_back(i);
        grid.sparse_bins.push_back(grid.bins[static_cast<std::size_t>(i)]);
    }
}

FineGrid make_grid() {
    FineGrid grid;
    for (int bin = 0; bin <= kLastBin; ++bin) {
        grid.of_bin[static_cast<std::size_t>(bin)] = static_cast<int>(grid.hz.size());
        const double from = bin_hz(bin), to = std::min(bin_hz(bin + 1), kHighestHz);
        const int octets = std::max(1, static_cast<int>(std::ceil((to - from) / (kWidestStep * kOctet))));
        const double step = (to - from) / (octets * static_cast<double>(kOctet));
        const int first = static_cast<int>(grid.hz.size());
        for (int i = 0; i < octets; ++i) add_octet(grid, octet_at(from + i * kOctet * step, step));
        add_sparse(grid, bin, first, octets >= 4 ? 4 : octets >= 2 ? 2 : 1);
    }
    grid.of_bin[kBins - 1] = static_cast<int>(grid.hz.size());
    add_octet(grid, octet_at(kHighestHz, 0.0));
    add_sparse(grid, kBins - 1, grid.of_bin[kBins - 1], kOctet);
    return grid;
}
}  // namespace

Octet octet_at(double low_hz, double step_hz) {
    const double middle = low_hz + 0.5 * (kOctet - 1) * step_hz;
    const int bin = std::clamp(static_cast<int>(kBinsPerOctave * std::log2(middle / kLowestHz)), 0, kLastBin);
    const double span = bin_hz(bin + 1) - bin_hz(bin);
    return {low_hz, step_hz, bin, (low_hz - bin_hz(bin)) / span, step_hz / span};
}

const FineGrid& fine_grid() {
    static const FineGrid grid = make_grid();
    return grid;
}

}  // namespace howlmap::maps
