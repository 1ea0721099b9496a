// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/audio/howl_judge.h"

namespace howlmap {
namespace {

constexpr double kLeastRise = 8.0;    // dB
constexpr std::size_t kFewest = 7;    // points: a sudden onset reaches over no more than five overlapping windows
constexpr double kLeastFilled = 0.8;  // of the frames between first and last hold a point
constexpr double kStraight = 1.2;     // dB rms about the line
constexpr double kBent = 3.0;         // beyond this no earlier point can mend it

// Running sums of a straight-line fit, the newest point weighing as much as any other.
struct FittedLine {
    double n = 0, t = 0, y = 0, tt = 0, ty = 0, yy = 0;
    void add(double time, double level) {
        n += 1, t += time, y += level, tt += time * time, ty += time * level, yy += level * level;
    }
    double slope() const { return (n * ty - t * y) / (n * tt - t * t); }
    double residual() const {
        const double vy = yy - y * y / n, vt = tt - t * t / n, cov = ty - t * y / n;
        return std::sqrt(std::max(0.0, (vy - cov * cov / vt) / n));
    }
};

// The longest straight rise that ends at one point.
std::optional<StraightRise> rise_to(const std::vector<TrackPoint>& points, std::size_t last) {
    FittedLine line;
    std::optional<StraightRise> best;
    for (std::size_t first = last + 1; first-- > 0;) {
        const auto frames = static_cast<double>(points[last].frame - points[first].frame);
        line.add(-frames, points[first].peak.level_db - points[last].peak.level_db);
        if (line.n < kFewest || line.n < kLeastFilled * frames) continue;
        const double residual = line.residual();
        if (residual > kBent) break;
        const double rise = line.slope() * frames;
        if (residual > kStraight || rise < kLeastRise || (best && rise < best->rise_db)) continue;
        best = StraightRise{first, last, line.slope(), rise, residual};
    }
    return best;
}

}  // namespace

std::optional<StraightRise> straight_rise(const Track& track) {
    const auto& points = track.points;
    if (points.size() < kFewest) return std::nullopt;
    double loudest = points[0].peak.level_db;
    for (const TrackPoint& p : points) loudest = std::max(loudest, p.peak.level_db);
    // A soft amplifier bends the line over its last 6 dB and the window straddles the corner: end below that if enough
    // is left.
    for (const double below : {12.0, 9.0, 6.0, 3.0}) {
        std::size_t last = 0;
        while (points[last].peak.level_db < loudest - below) ++last;
        if (last > 0 && points[last].peak.level_db > loudest - below + 2.0) --last;
        if (const auto rise = rise_to(points, last)) return rise;
    }
    return std::nullopt;
}

}  // namespace howlmap
