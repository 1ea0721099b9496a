// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/suspects.h"

#include <algorithm>
#include <cmath>

#include "core/air/air.h"
#include "core/loop/crossings.h"
#include "core/loop/frequency_grid.h"
#include "core/loop/ring.h"
#include "core/loop/sweep.h"
#include "core/show/find.h"
#include "core/units/bands.h"

namespace howlmap {
namespace {

constexpr double kLeastShare = 0.2, kLeastOfLargest = 0.5;
constexpr double kFarthest_db = 6.0;  // what moving to the end of the tolerance costs in rank
constexpr double kWidest = 0.35;      // of the frequency: no ring is looked for farther away
constexpr double kRange = 31.6;       // rings down to 30 dB below the strongest near by
constexpr std::size_t kEnough = 60;   // of them
constexpr std::size_t kMostSuspects = 10;

struct Candidate {
    LoopSuspect suspect;
    double rank_db;
};

// How far the show's tolerances may move the ring of a loudspeaker and an input, in Hz.
double reach_hz(const Show& show, const Input& input, const Loudspeaker& loudspeaker, double hz) {
    const double speed = speed_of_sound(show.air.temperature_c);
    const double way = std::max(0.05, length(input.position - loudspeaker.position));
    const double delay = way / speed + (show.system.latency_ms + loudspeaker.delay_ms) / 1000.0;
    const double in_air = way / speed / delay;
    // Both ends move by up to the tolerance along each axis: along the way that is at most sqrt(3) of it, twice.
    const double moved = 2.0 * std::sqrt(3.0) * show.tolerance.position_m / way;
    const double warmed = 0.5 * show.tolerance.temperature_c / (show.air.temperature_c + 273.15);
    return hz * in_air * (moved + warmed) + show.tolerance.phase_deg / 360.0 / delay;
}

std::vector<Ring> rings_near(const LoopModel& model, double hz, const Job& job) {
    const LoopTiming timing = timing_of(model);
    std::vector<double> grid = frequency_grid(timing, 16.0);
    std::erase_if(grid, [&](double f) { return std::abs(f - hz) > kWidest * hz; });
    if (grid.size() < 2) return {};
    const Sweep swept = sweep(model, {}, std::move(grid), job);
    if (job.cancelled()) return {};
    const Loci loci{[&](double f) { return model.small_matrix(model.factors(f)); }, timing.common_s};
    std::vector<Ring> rings;
    for (const Crossing& crossing : find_crossings(loci, {swept.hz, swept.bounds, swept.points}, kRange, kEnough, job))
        if (auto ring = ring_at(model, crossing)) rings.push_back(std::move(*ring));
    return rings;
}

void consider(std::vector<Candidate>& candidates, const Show& show, const Ring& ring, const Share& share, double hz) {
    const Input* input = find_by_id(show.inputs, share.input);
    const Loudspeaker* loudspeaker = find_by_id(show.loudspeakers, share.loudspeaker);
    if (!input || !loudspeaker || share.share < std::min(kLeastShare, kLeastOfLargest * ring.shares.front().share))
        return;
    const double away = std::abs(ring.hz - hz) / reach_hz(show, *input, *loudspeaker, hz);
    if (away > 1.0) return;
    candidates.push_back(
        {{share.input, share.loudspeaker, ring.hz, ring.margin_db}, ring.margin_db + kFarthest_db * away});
}

}  // namespace

std::vector<LoopSuspect> loops_for_frequency(const Show& show, double hz, const Job& job) {
    const LoopModel model(show);
    if (model.empty() || hz < kLowestHz || hz > kHighestHz) return {};
    std::vector<Candidate> candidates;
    for (const Ring& ring : rings_near(model, hz, job))
        for (const Share& share : ring.shares) consider(candidates, show, ring, share, hz);
    if (job.cancelled()) return {};
    std::stable_sort(candidates.begin(), candidates.end(),
                     [](const Candidate& a, const Candidate& b) { return a.rank_db < b.rank_db; });
    std::vector<LoopSuspect> out;
    for (const Candidate& c : candidates) {
        const bool named = std::any_of(out.begin(), out.end(), [&](const LoopSuspect& s) {
            return s.input == c.suspect.input && s.loudspeaker == c.suspect.loudspeaker;
        });
        if (!named && out.size() < kMostSuspects) out.push_back(c.suspect);
    }
    return out;
}

}  // namespace howlmap
