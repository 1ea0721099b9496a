// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/kernel/fine.h"

#include <algorithm>
#include <cmath>

namespace howlmap::maps {
namespace {
constexpr int kFewestSteps = 8;
constexpr double kWidestStep = 8.0;  // Hz

FineGrid make_grid() {
    FineGrid grid;
    const auto add = [&](double hz) {
        grid.hz.push_back(hz);
        grid.bins.push_back(static_cast<float>(kBinsPerOctave * std::log2(hz / kLowestHz)));
    };
    for (int bin = 0; bin <= kLastBin; ++bin) {
        grid.of_bin[static_cast<std::size_t>(bin)] = grid.count();
        const double from = bin_hz(bin), to = std::min(bin_hz(bin + 1), kHighestHz);
        const int steps = std::max(kFewestSteps, static_cast<int>(std::ceil((to - from) / kWidestStep)));
        for (int i = 0; i < steps; ++i) add(from * std::pow(to / from, static_cast<double>(i) / steps));
    }
    grid.of_bin[kBins - 1] = grid.count();
    add(kHighestHz);
    return grid;
}
}  // namespace

const FineGrid& fine_grid() {
    static const FineGrid grid = make_grid();
    return grid;
}

}  // namespace howlmap::maps
