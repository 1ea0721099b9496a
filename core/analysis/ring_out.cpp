// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/ring_out.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/response.h"
#include "core/loop/sweep.h"
#include "core/show/find.h"
#include "core/units/bands.h"

namespace howlmap {
namespace {

constexpr double kLowestSetting = -15.0, kDeepestCut = 12.0, kStep = 0.5;
constexpr double kNear = 1.0 / 6.0;       // octaves around a ring that a cut is for
constexpr double kSameNotch = 0.02;       // of the frequency
constexpr double kNothingBelow = -199.0;  // dB: there no loop is open

struct Peak {
    double hz = 0.0, gain_db = -200.0;
};

template <class Counts>
Peak peak_where(const LoopResponse& response, Counts counts) {
    Peak peak;
    for (std::size_t i = 0; i < response.hz.size(); ++i)
        if (counts(response.hz[i]) && response.gain_db[i] > peak.gain_db) peak = {response.hz[i], response.gain_db[i]};
    return peak;
}

double room_below(const Mix& mix, double hz, CutWith with) {
    if (with == CutWith::notch) return kDeepestCut;
    const auto set = mix.graphic_eq.find(third_octave_of(hz));
    return std::clamp((set == mix.graphic_eq.end() ? 0.0 : set->second) - kLowestSetting, 0.0, kDeepestCut);
}

}  // namespace

std::optional<RingOutCut> smallest_ring_out_cut(const Show& show, const std::string& mix, double hz, CutWith with,
                                                const Job& job) {
    const Mix* found = find_by_id(show.mixes, mix);
    if (!found || hz < kLowestHz || hz > kHighestHz) return std::nullopt;
    const auto near = [hz](double f) { return std::abs(std::log2(f / hz)) <= kNear; };
    Peak here, next;
    const auto look = [&](int steps) {
        Show cut = show;
        apply_ring_out_cut(cut, mix, hz, with, -kStep * steps);
        const auto response = loop_response(cut, {}, {hz}, job);
        if (!response) return false;
        here = peak_where(*response, near);
        next = peak_where(*response, [&](double f) { return !near(f); });
        return true;
    };
    const int most = static_cast<int>(room_below(*found, hz, with) / kStep);
    if (!look(0)) return std::nullopt;
    if (here.gain_db <= next.gain_db || next.gain_db < kNothingBelow) {
        const double usual = std::min(kLeastCut, kStep * most);
        return RingOutCut{-usual, 0.0, next.gain_db < kNothingBelow ? 0.0 : next.hz, false, usual > 0.0};
    }
    int low = 0, high = most;  // low is never enough
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        if (!look(middle)) return std::nullopt;
        (here.gain_db <= next.gain_db ? high : low) = middle;
    }
    const int steps = std::max(high, std::min(most, static_cast<int>(kLeastCut / kStep)));
    if (!look(steps)) return std::nullopt;
    return RingOutCut{-kStep * steps, -kStep * high, next.hz, true, here.gain_db <= next.gain_db};
}

void apply_ring_out_cut(Show& show, const std::string& mix, double hz, CutWith with, double cut_db) {
    Mix* found = find_by_id(show.mixes, mix);
    if (!found || cut_db >= 0.0) return;
    if (with == CutWith::graphic_band) {
        double& gain = found->graphic_eq[third_octave_of(hz)];
        gain = std::max(gain + cut_db, std::min(gain, kLowestSetting));
        return;
    }
    for (PeakFilter& notch : found->notches)
        if (std::abs(notch.hz / hz - 1.0) < kSameNotch) {
            notch.gain_db = std::max(-60.0, notch.gain_db + cut_db);
            return;
        }
    found->notches.push_back({std::round(hz * 10.0) / 10.0, kCutNotchQ, cut_db, {}});
}

std::string mix_between(const Show& show, const std::string& input, const std::string& loudspeaker) {
    const Mix* best = nullptr;
    double loudest = -1e9;
    for (const Mix& mix : show.mixes) {
        if (std::find(mix.loudspeakers.begin(), mix.loudspeakers.end(), loudspeaker) == mix.loudspeakers.end())
            continue;
        const Send* send = find_send(mix, input);
        const double level = send ? send->level_db : -1e8;
        if (level <= loudest) continue;
        best = &mix;
        loudest = level;
    }
    return best ? best->id : std::string();
}

}  // namespace howlmap
