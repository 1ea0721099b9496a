// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/peak.h"

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cstdint>

namespace howlmap {
namespace {
constexpr double kNearPeak = 0.89;  // -1 dB: what a sample may miss of a peak between grid points, with room to spare

Peak refined(double low, double high, const std::function<double(double)>& function) {
    std::uintmax_t most = 60;
    const auto [hz, negative] =
        boost::math::tools::brent_find_minima([&](double f) { return -function(f); }, low, high, 30, most);
    return {hz, -negative};
}
}  // namespace

Peak largest_peak(const std::vector<double>& grid, const std::vector<double>& samples,
                  const std::function<double(double)>& function) {
    if (grid.empty()) return {};
    const auto largest = std::max_element(samples.begin(), samples.end());
    Peak best{grid[static_cast<std::size_t>(largest - samples.begin())], *largest};
    const double least = kNearPeak * best.value;
    for (std::size_t i = 0; i < grid.size(); ++i) {
        const double before = i > 0 ? samples[i - 1] : -1.0, after = i + 1 < grid.size() ? samples[i + 1] : -1.0;
        if (samples[i] < least || samples[i] < before || samples[i] < after) continue;
        const Peak peak = refined(grid[i > 0 ? i - 1 : 0], grid[std::min(i + 1, grid.size() - 1)], function);
        if (peak.value > best.value) best = peak;
    }
    return best;
}

}  // namespace howlmap
