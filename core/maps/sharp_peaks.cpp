// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/sharp_peaks.h"

#include <algorithm>
#include <cmath>

#include "core/maps/kernel/fine.h"
#include "core/units/level.h"

namespace howlmap::maps {
namespace {
constexpr double kSharp = 1.0;        // dB: fall to the next fine frequency beyond which a parabola is not trusted
constexpr double kGentle = 0.3;       // dB: fall to the next frequency that is aimed at
constexpr double kWorthwhile = 24.0;  // dB below the highest drive at which a peak no longer counts
constexpr std::size_t kProbes = 2 * kOctet;

struct Peak {
    double hz, spacing, height;  // spacing in Hz, height in dB
};

double height_of(const Complex* drives, const DriveFunction& function) {
    const double square = size_of(drives, function);
    return square > 0.0 ? energy_to_db(square) : -1000.0;
}

/// 16 frequencies around one, as two octets, moved into the range as a whole where they would leave it.
struct Window {
    Octet low, high;
    double hz(std::size_t i) const { return i < kOctet ? low.hz(i) : high.hz(i - kOctet); }
};
Window window_around(double hz, double spacing, const Range& range) {
    const double most = (range.high_hz - range.low_hz) / (kProbes - 1.0);
    const double step = std::min(spacing, most), width = step * (kProbes - 1.0);
    const double low = std::clamp(hz - kProbes / 2.0 * step, range.low_hz, range.high_hz - width);
    return {octet_at(low, step), octet_at(low + kOctet * step, step)};
}

/// Looks closer and closer around a peak until the fall to its neighbours is gentle.
Peak narrowed(const DriveFunction& function, const Range& range, Peak peak) {
    const std::size_t stride = function.values();
    std::vector<Complex> drives(kProbes * stride);
    for (int round = 0; round < 12; ++round) {
        const double spacing = 2.0 * peak.spacing / kProbes;
        const Window window = window_around(peak.hz, spacing, range);
        function.near(window.low, drives.data());
        function.near(window.high, drives.data() + kOctet * stride);
        std::vector<double> heights;
        for (std::size_t i = 0; i < kProbes; ++i) heights.push_back(height_of(drives.data() + i * stride, function));
        const auto best = static_cast<std::size_t>(std::max_element(heights.begin(), heights.end()) - heights.begin());
        peak = {window.hz(best), spacing, heights[best]};
        const double before = best > 0 ? heights[best - 1] : peak.height,
                     after = best + 1 < kProbes ? heights[best + 1] : peak.height;
        if (peak.height - std::min(before, after) < kGentle) break;
    }
    return peak;
}

/// Heights of the drives over the fine frequencies.
struct Heights {
    const FineGrid& grid = fine_grid();
    std::vector<double> db;
    double spacing(std::size_t k) const { return grid.hz[k + 1] - grid.hz[k - 1]; }
    /// Fall to the lower neighbour.
    double fall(std::size_t k) const { return db[k] - std::min(db[k - 1], db[k + 1]); }
};

/// Local maxima that the fine frequencies do not resolve.
std::vector<Peak> sharp_drives(const DriveFunction& function, const Range& range, const Heights& heights, double least,
                               const Job& job) {
    std::vector<std::size_t> found;
    for (std::size_t k = 1; k + 1 < heights.db.size(); ++k) {
        const bool peak = heights.db[k] >= heights.db[k - 1] && heights.db[k] >= heights.db[k + 1];
        if (peak && heights.fall(k) > kSharp && heights.db[k] > least) found.push_back(k);
    }
    std::sort(found.begin(), found.end(), [&](std::size_t a, std::size_t b) { return heights.db[a] > heights.db[b]; });
    found.resize(std::min(found.size(), kMostSharpPeaks));
    std::vector<Peak> peaks;
    for (const std::size_t k : found) {
        if (job.cancelled()) break;
        peaks.push_back(narrowed(function, range, {heights.grid.hz[k], 0.5 * heights.spacing(k), heights.db[k]}));
    }
    return peaks;
}
}  // namespace

double size_of(const Complex* drives, const DriveFunction& function) {
    double square = 0.0;
    for (std::size_t i = 0; i < function.ends + (function.offset ? 1 : 0); ++i) square += std::norm(drives[i]);
    return square;
}

std::vector<Octet> around_sharp_peaks(const DriveFunction& function, const Range& range,
                                      const std::vector<Complex>& fine, const Job& job) {
    Heights heights;
    for (std::size_t k = 0; k < static_cast<std::size_t>(heights.grid.count()); ++k)
        heights.db.push_back(height_of(fine.data() + k * function.values(), function));
    const double highest = *std::max_element(heights.db.begin(), heights.db.end());
    const std::vector<Peak> peaks = sharp_drives(function, range, heights, highest - kWorthwhile, job);
    std::vector<Octet> octets;
    for (const Peak& peak : peaks) {
        const Window window = window_around(peak.hz, peak.spacing, range);
        octets.push_back(window.low);
        octets.push_back(window.high);
    }
    return octets;
}

}  // namespace howlmap::maps
