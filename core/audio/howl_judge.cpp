// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/howl_judge.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/units/level.h"

namespace howlmap {
namespace {

constexpr double kPartialReach =
    36.0;  // dB below the peak; 33 dB is published for one frame (PHPR), a line over many frames sees a little deeper
constexpr double kSteadyReach = 26.0;  // the same beside a steady line, where a held chord may happen to fit
constexpr double kPartialShare = 0.7;  // of the frames show the partial

struct Span {
    std::size_t first, last;  // points, both included
};

std::size_t loudest_point(const Track& track) {
    const auto louder = [](const TrackPoint& a, const TrackPoint& b) { return a.peak.level_db < b.peak.level_db; };
    return static_cast<std::size_t>(std::max_element(track.points.begin(), track.points.end(), louder) -
                                    track.points.begin());
}

// Points within 6 dB of the loudest, without a break longer than one point.
Span loud_span(const Track& track) {
    const std::size_t top = loudest_point(track);
    const double floor = track.points[top].peak.level_db - 6.0;
    Span span{top, top};
    while (span.first > 0 && track.points[span.first - 1].peak.level_db > floor) --span.first;
    while (span.last + 1 < track.points.size() && track.points[span.last + 1].peak.level_db > floor) ++span.last;
    return span;
}

// Variance of one frequency reading from the noise beside the peak: phase noise of two frames over one hop.
double reading_variance(const SpectralPeak& peak, double frame_s) {
    const double turn = 2.0 * std::numbers::pi * frame_s;
    return 1.0 / (db_to_energy(peak.over_noise_db) * turn * turn);
}

double mean_hz(const Track& track, Span span, double frame_s) {
    double sum = 0.0, weights = 0.0;
    for (std::size_t i = span.first; i <= span.last; ++i) {
        const double weight = 1.0 / (reading_variance(track.points[i].peak, frame_s) + 1e-8);
        sum += weight * track.points[i].peak.hz, weights += weight;
    }
    return sum / weights;
}

double wander(const Track& track, Span span, double frame_s) {
    const double mean = mean_hz(track, span, frame_s);
    double sum = 0.0, weights = 0.0;
    for (std::size_t i = span.first; i <= span.last; ++i) {
        const double noise = reading_variance(track.points[i].peak, frame_s);
        const double off = track.points[i].peak.hz - mean;
        const double weight = 1.0 / (noise + 1e-4);
        sum += weight * (off * off - noise), weights += weight;
    }
    return std::sqrt(std::max(0.0, sum / weights)) / mean;
}

// The longest run that stays within 1.5 dB of its middle level, with no more than a frame missing at a time.
Span steady_span(const Track& track, Span span) {
    std::vector<double> levels;
    for (std::size_t i = span.first; i <= span.last; ++i) levels.push_back(track.points[i].peak.level_db);
    std::nth_element(levels.begin(), levels.begin() + static_cast<std::ptrdiff_t>(levels.size() / 2), levels.end());
    const double middle = levels[levels.size() / 2];
    Span best{span.first, span.first};
    std::size_t from = span.first;
    for (std::size_t i = span.first; i <= span.last; ++i) {
        const bool off = std::abs(track.points[i].peak.level_db - middle) > 1.5;
        const bool gap = i > from && track.points[i].frame - track.points[i - 1].frame > 2;
        if (off || gap) from = off ? i + 1 : i;
        if (i + 1 > from && i - from > best.last - best.first) best = {from, i};
    }
    return best;
}

// A partial that belongs to the same tone is a peak in most frames and rises about as fast. An amplifier's own third
// harmonic rises three times as fast; somebody else's note does not rise along.
bool rises_along(const Track& track, Span span, std::size_t partial, double slope) {
    double n = 0, t = 0, y = 0, tt = 0, ty = 0, yy = 0, peaks = 0;
    for (std::size_t i = span.first; i <= span.last; ++i) {
        const TrackPoint& p = track.points[i];
        if (!(p.partials.seen >> partial & 1u)) return false;
        const auto time = static_cast<double>(p.frame - track.points[span.first].frame);
        const double level = p.partials.level_db[partial];
        n += 1, t += time, y += level, tt += time * time, ty += time * level, yy += level * level;
        const bool near = level > p.peak.level_db - kPartialReach;
        peaks += near && p.partials.peaks >> partial & 1u ? 1.0 : 0.0;
    }
    const double own = (n * ty - t * y) / (n * tt - t * t);
    const double scatter = std::sqrt(std::max(0.0, (yy - y * y / n - own * (ty - t * y / n)) / n));
    return peaks > kPartialShare * n && scatter < 3.0 && own / slope > 0.6 && own / slope < 2.2;
}

bool stands_beside(const Track& track, Span span, std::size_t partial) {
    double n = 0, peaks = 0;
    for (std::size_t i = span.first; i <= span.last; ++i) {
        const TrackPoint& p = track.points[i];
        const bool near = p.partials.level_db[partial] > p.peak.level_db - kSteadyReach;
        n += 1, peaks += near && (p.partials.seen & p.partials.peaks) >> partial & 1u ? 1.0 : 0.0;
    }
    return peaks > kPartialShare * n;
}

// The part of the rise in which partials can be seen best: its last 20 dB, at least four points.
Span upper_rise(const Track& track, const StraightRise& rise) {
    Span span{rise.first, rise.last};
    const double floor = track.points[rise.last].peak.level_db - 20.0;
    while (span.last - span.first > 5 && track.points[span.first].peak.level_db < floor) ++span.first;
    return span;
}

constexpr unsigned kOctavesOff = 1u << 0 | 1u << 3;              // twice, half
constexpr unsigned kTwelfths = kOctavesOff | 1u << 1 | 1u << 6;  // and three times, a third

// Two partials, or one of the close ones, are a tone's own; a single other one may be a chord that happens to fit.
bool betray_music(unsigned partners, unsigned close) { return std::popcount(partners) >= 2 || (partners & close) != 0; }

}  // namespace

HowlEvidence weigh(const Track& track, double frame_s) {
    HowlEvidence out;
    out.rise = straight_rise(track);
    const Span steady = steady_span(track, loud_span(track));
    out.over_rest_db = track.points[loudest_point(track)].peak.over_rest_db;
    out.steady_frames = static_cast<double>(track.points[steady.last].frame - track.points[steady.first].frame);
    out.steady_wander = wander(track, steady, frame_s);
    if (out.rise) out.rise_wander = wander(track, upper_rise(track, *out.rise), frame_s);
    for (std::size_t i = 0; i < kPartialRatios.size(); ++i) {
        if (stands_beside(track, steady, i)) out.partners_beside |= 1u << i;
        if (out.rise && rises_along(track, upper_rise(track, *out.rise), i, out.rise->slope_db_per_frame))
            out.partners_rising |= 1u << i;
    }
    return out;
}

bool is_howl(const Track& track, const HowlEvidence& evidence, double frame_s) {
    constexpr double kMostWander = 0.0006, kMostWanderHz = 0.15, kLeastOverRest = 0.0, kLeastSlope = 1.5;
    constexpr double kLongSteady = 0.8, kSteadyOverRest = 6.0;
    if (evidence.over_rest_db < kLeastOverRest) return false;
    const double allowed = std::max(kMostWander, kMostWanderHz / track.last.peak.hz);
    // A long rise that stands out speaks for itself; then the notes that pull at the frequency may do so more.
    const bool strong = evidence.rise && evidence.rise->rise_db >= 14.0 && evidence.over_rest_db >= kSteadyOverRest;
    const bool rises = evidence.rise && evidence.rise->slope_db_per_frame / frame_s >= kLeastSlope &&
                       evidence.rise_wander <= allowed * (strong ? 3.0 : 1.0);
    const bool beside = betray_music(evidence.partners_beside, kOctavesOff);
    if (rises && !betray_music(evidence.partners_rising, kTwelfths) && (strong || !beside)) return true;
    return !beside && evidence.steady_frames * frame_s >= kLongSteady && evidence.steady_wander <= allowed &&
           evidence.over_rest_db >= kSteadyOverRest;
}

Howl describe_howl(const Track& track, const HowlEvidence& evidence, double frame_s, double centre_s) {
    const std::size_t top = loudest_point(track);
    const Span loud = loud_span(track);
    Howl howl;
    howl.hz = mean_hz(track, loud, frame_s);
    howl.level_dbfs = track.points[top].peak.level_db;
    std::size_t begin = evidence.rise ? evidence.rise->first : 0, end = top;
    while (end + 1 < track.points.size() && track.points[end + 1].peak.level_db > howl.level_dbfs - 20.0) ++end;
    const bool whole = end + 1 == track.points.size();
    const long last = whole ? track.last.frame : track.points[end].frame;
    howl.from_s = centre_s + static_cast<double>(track.points[begin].frame) * frame_s;
    howl.to_s = centre_s + static_cast<double>(last) * frame_s;
    if (evidence.rise) howl.growth_db_per_s = evidence.rise->slope_db_per_frame / frame_s;
    return howl;
}

}  // namespace howlmap
