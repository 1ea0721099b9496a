// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/ring_detector.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "core/audio/howl_judge.h"

namespace howlmap {
namespace {

constexpr std::size_t kFewestPoints = 6;  // about a quarter of a second

std::optional<Howl> judge_track(const Track& track, const ShortSpectrum& spectrum, double rate_hz) {
    if (track.points.size() < kFewestPoints) return std::nullopt;
    const double frame_s = static_cast<double>(spectrum.hop()) / rate_hz;
    const double centre_s = 0.5 * static_cast<double>(spectrum.window()) / rate_hz;
    const HowlEvidence evidence = weigh(track, frame_s);
    if (!is_howl(track, evidence, frame_s)) return std::nullopt;
    return describe_howl(track, evidence, frame_s, centre_s);
}

}  // namespace

RingDetector::RingDetector(double rate_hz) : rate_hz_(rate_hz), spectrum_(rate_hz) {}

void RingDetector::push(std::span<const float> samples) {
    while (!samples.empty()) {
        samples = samples.subspan(spectrum_.take(samples));
        if (spectrum_.ready()) judge(tracker_.add(frame_++, spectrum_.frame()));
    }
}

void RingDetector::finish() { judge(tracker_.finish()); }

void RingDetector::judge(const std::vector<Track>& ended) {
    for (const Track& track : ended)
        if (const auto howl = judge_track(track, spectrum_, rate_hz_)) found_.push_back(*howl);
}

std::vector<Howl> RingDetector::take() { return std::exchange(found_, {}); }

std::vector<Howl> RingDetector::sounding() const {
    std::vector<Howl> out;
    for (const Track& track : tracker_.open())
        if (const auto howl = judge_track(track, spectrum_, rate_hz_)) out.push_back(*howl);
    std::stable_sort(out.begin(), out.end(), [](const Howl& a, const Howl& b) { return a.level_dbfs > b.level_dbfs; });
    return out;
}

}  // namespace howlmap
