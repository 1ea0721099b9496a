// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/sharp_peaks.h"

#include <algorithm>
#include <cmath>

#include "core/units/level.h"

namespace howlmap::maps {
namespace {
constexpr double kUnderRead = 0.5;    // dB between swept frequencies that matters
constexpr double kSharp = 0.3;        // dB: fall to the next frequency beyond which a parabola is not trusted
constexpr double kWorthwhile = 40.0;  // dB below the highest peak at which one no longer counts
constexpr int kProbes = 16;

struct Peak {
    double hz, spacing, height;  // spacing in Hz, height in dB
};

/// Size of the drives in dB: of the largest end.
double height_of(const Complex* drives, std::size_t ends) {
    double most = 0.0;
    for (std::size_t i = 0; i < ends; ++i) most = std::max(most, std::norm(drives[i]));
    return most > 0.0 ? energy_to_db(most) : -1000.0;
}

/// Looks closer and closer around a peak until the fall to its neighbours is gentle.
Peak narrowed(const DriveFunction& function, const Range& range, Peak peak) {
    std::vector<Complex> drives(function.values());
    for (int round = 0; round < 12; ++round) {
        const double spacing = 2.0 * peak.spacing / kProbes;
        const double from = peak.hz - peak.spacing;
        std::vector<double> heights(kProbes + 1);
        for (int i = 0; i <= kProbes; ++i) {
            function.at(std::clamp(from + i * spacing, range.low_hz, range.high_hz), drives.data());
            heights[static_cast<std::size_t>(i)] = height_of(drives.data(), function.ends);
        }
        const auto best = std::max_element(heights.begin(), heights.end());
        const auto at = best - heights.begin();
        peak = {from + static_cast<double>(at) * spacing, spacing, *best};
        const double before = at > 0 ? heights[static_cast<std::size_t>(at - 1)] : *best;
        const double after = at < kProbes ? heights[static_cast<std::size_t>(at + 1)] : *best;
        if (*best - std::min(before, after) < kSharp) break;
    }
    return peak;
}

/// Local maxima of the fine heights that stand out of the swept ones beside them.
std::vector<Peak> candidates(const std::vector<double>& heights) {
    std::vector<Peak> peaks;
    for (std::size_t k = 1; k + 1 < heights.size(); ++k) {
        if (heights[k] < heights[k - 1] || heights[k] < heights[k + 1]) continue;
        const std::size_t below = k / kFinePerBin * kFinePerBin,
                          above = std::min(below + kFinePerBin, heights.size() - 1);
        const double swept = std::max(heights[below], heights[above]);
        const double bend = heights[k] - 0.5 * (heights[k - 1] + heights[k + 1]);
        if (heights[k] - swept < kUnderRead && bend < kSharp) continue;
        const double hz = fine_hz(static_cast<int>(k));
        peaks.push_back({hz, fine_hz(static_cast<int>(k) + 1) - hz, heights[k]});
    }
    return peaks;
}

bool is_gentle(const std::vector<double>& heights, const Peak& peak) {
    const auto k = static_cast<std::size_t>(std::lround(kBinsPerOctave * kFinePerBin * std::log2(peak.hz / kLowestHz)));
    return heights[k] - std::min(heights[k - 1], heights[k + 1]) < kSharp;
}
}  // namespace

std::vector<double> around_sharp_peaks(const DriveFunction& function, const Range& range,
                                       const std::vector<Complex>& fine, const Job& job) {
    std::vector<double> heights(kFine);
    for (std::size_t k = 0; k < kFine; ++k) heights[k] = height_of(fine.data() + k * function.values(), function.ends);
    std::vector<Peak> peaks = candidates(heights);
    std::sort(peaks.begin(), peaks.end(), [](const Peak& a, const Peak& b) { return a.height > b.height; });
    const double highest = *std::max_element(heights.begin(), heights.end());
    std::vector<double> hz;
    for (std::size_t i = 0; i < std::min(peaks.size(), kMostSharpPeaks) && !job.cancelled(); ++i) {
        if (peaks[i].height < highest - kWorthwhile) break;
        const Peak peak = is_gentle(heights, peaks[i]) ? peaks[i] : narrowed(function, range, peaks[i]);
        for (int lane = 0; lane < kBlock; ++lane)
            hz.push_back(std::clamp(peak.hz + (lane - kBlock / 2) * peak.spacing, range.low_hz, range.high_hz));
    }
    return hz;
}

}  // namespace howlmap::maps
