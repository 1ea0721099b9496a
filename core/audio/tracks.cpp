// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/tracks.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/units/level.h"

namespace howlmap {
namespace {

constexpr long kPatience = 4;  // frames
constexpr std::size_t kMostPoints = 4096;
constexpr double kAlone = 0.6;

bool belongs(const Track& track, const SpectralPeak& peak, double bin_hz) {
    const double hz = track.last.peak.hz;
    return std::abs(peak.hz - hz) < std::max(0.7 * bin_hz, 0.003 * hz);
}

// Whether a peak stands by itself: nothing within 36 dB at twice, three times, half or one and a half times its
// frequency.
bool stands_alone(const TrackPoint& point) {
    for (const std::size_t partial : {0u, 1u, 3u, 4u})
        if (point.partials.peaks >> partial & 1u && point.partials.level_db[partial] > point.peak.level_db - 36.0)
            return false;
    return true;
}

void extend(Track& track, TrackPoint point) {
    track.alone += 0.15 * ((stands_alone(point) ? 1.0 : 0.0) - track.alone);
    track.last = point;
    if (track.points.size() < kMostPoints) track.points.push_back(std::move(point));
}

// How far each track of this frame stands over the rest of the sound. Other lone lines are not counted in, so that of
// two howls the weaker is not measured against the stronger.
void compare_with_rest(std::vector<Track>& tracks, long frame, double total) {
    double lone = 0.0;
    for (const Track& track : tracks)
        if (track.last.frame == frame && track.alone > kAlone) lone += db_to_energy(track.last.peak.level_db);
    for (Track& track : tracks) {
        if (track.last.frame != frame) continue;
        const double own = db_to_energy(track.last.peak.level_db);
        const double rest = total - lone - (track.alone > kAlone ? 0.0 : own);
        track.last.peak.over_rest_db = energy_to_db(own / std::max(rest, 1e-6 * own));
        if (track.points.back().frame == frame) track.points.back().peak.over_rest_db = track.last.peak.over_rest_db;
    }
}

}  // namespace

std::vector<Track> Tracker::add(long frame, const SpectrumFrame& spectrum) {
    for (const SpectralPeak& peak : find_peaks(spectrum)) {
        Track* nearest = nullptr;
        for (Track& track : open_) {
            if (track.last.frame == frame || !belongs(track, peak, spectrum.bin_hz)) continue;
            const auto away = [&](const Track& t) { return std::abs(t.last.peak.hz - peak.hz); };
            if (!nearest || away(track) < away(*nearest)) nearest = &track;
        }
        if (!nearest) nearest = &open_.emplace_back();
        extend(*nearest, {frame, peak, partial_levels(spectrum, peak.hz)});
    }
    compare_with_rest(open_, frame, spectrum.total_power);
    const auto alive = [&](const Track& track) { return frame - track.last.frame <= kPatience; };
    const auto ended = std::stable_partition(open_.begin(), open_.end(), alive);
    std::vector<Track> out(std::make_move_iterator(ended), std::make_move_iterator(open_.end()));
    open_.erase(ended, open_.end());
    return out;
}

std::vector<Track> Tracker::finish() { return std::exchange(open_, {}); }

}  // namespace howlmap
