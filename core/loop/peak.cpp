// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/peak.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <boost/math/tools/minima.hpp>
#include <cstdint>

namespace howlmap {
namespace {
constexpr double kNearPeak = 0.89;  // -1 dB: what a sample may miss of a peak between grid points, with room to spare
constexpr std::size_t kMostRefined = 16;
constexpr int kBits = 20;  // of its place; its height is right to twice as many

Peak refined(double low, double high, const std::function<double(double)>& function) {
    std::uintmax_t most = 60;
    const auto [hz, negative] =
        boost::math::tools::brent_find_minima([&](double f) { return -function(f); }, low, high, kBits, most);
    return {hz, -negative};
}
}  // namespace

namespace {
/// A sample above its neighbours, and how high the parabola through the three goes.
struct Candidate {
    double low, high;  // Hz, its neighbours
    double estimate;
};

double parabola_top(double before, double at, double after) {
    const double bend = before - 2.0 * at + after, slope = after - before;
    return bend < 0.0 ? at - slope * slope / (8.0 * bend) : at;
}
}  // namespace

Peak largest_peak(const std::vector<double>& grid, const std::vector<double>& samples,
                  const std::function<double(double)>& function) {
    if (grid.empty()) return {};
    const auto largest = std::max_element(samples.begin(), samples.end());
    Peak best{grid[static_cast<std::size_t>(largest - samples.begin())], *largest};
    const double least = kNearPeak * best.value;
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < grid.size(); ++i) {
        const std::size_t low = i > 0 ? i - 1 : 0, high = std::min(i + 1, grid.size() - 1);
        if (samples[i] < least || samples[i] < samples[low] || samples[i] < samples[high]) continue;
        candidates.push_back({grid[low], grid[high], parabola_top(samples[low], samples[i], samples[high])});
    }
    // A long comb has thousands of peaks that are all but the same.
    const std::size_t count = std::min(candidates.size(), kMostRefined);
    std::partial_sort(candidates.begin(), candidates.begin() + static_cast<std::ptrdiff_t>(count), candidates.end(),
                      [](const Candidate& a, const Candidate& b) { return a.estimate > b.estimate; });
    std::vector<Peak> peaks(count);
    tbb::parallel_for(std::size_t{0}, count,
                      [&](std::size_t i) { peaks[i] = refined(candidates[i].low, candidates[i].high, function); });
    for (std::size_t i = 0; i < count; ++i)
        if (i == 0 || peaks[i].value > best.value) best = peaks[i];
    return best;
}

}  // namespace howlmap
