// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/stability.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>

#include "core/loop/blocks/block_sweep.h"
#include "core/loop/crossings.h"
#include "core/loop/frequency_grid.h"
#include "core/loop/peak.h"
#include "core/loop/ring.h"
#include "core/loop/sweep.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr double kStepsATurn = 16.0;  // 22.5 deg a step
constexpr std::size_t kMostRings = 20;

std::optional<double> worst_phase_margin(const LoopModel& model, const Sweep& swept) {
    const Peak peak = largest_peak(swept.hz, swept.worst_phase,
                                   [&](double hz) { return worst_phase_gain(model, model.factors(hz)); });
    if (peak.value < kLeastLoop) return std::nullopt;
    return -ratio_to_db(peak.value);
}

std::vector<Ring> rings_of(const LoopModel& model, const std::vector<Crossing>& crossings) {
    std::vector<Ring> rings;
    for (std::size_t first = 0; first < crossings.size() && rings.size() < kMostRings; first += kMostRings) {
        std::vector<std::optional<Ring>> found(std::min(kMostRings, crossings.size() - first));
        tbb::parallel_for(std::size_t{0}, found.size(),
                          [&](std::size_t i) { found[i] = ring_at(model, crossings[first + i]); });
        for (auto& ring : found)
            if (ring && rings.size() < kMostRings) rings.push_back(std::move(*ring));
    }
    if (rings.empty()) return rings;
    const double last = rings.front().margin_db + 12.0;
    std::erase_if(rings, [&](const Ring& ring) { return ring.margin_db > last; });
    return rings;
}

PairFigure figure_of(const LoopModel& model, const Pair& pair, const Peak& peak) {
    const Show& show = model.show();
    const auto& in = model.inputs()[static_cast<std::size_t>(pair.input)];
    const auto& speaker = model.speakers()[static_cast<std::size_t>(pair.speaker)];
    const Input& input = show.inputs[static_cast<std::size_t>(in.index)];
    const Loudspeaker& loudspeaker = show.loudspeakers[static_cast<std::size_t>(speaker.index)];
    const Leg& direct = model.legs(pair.input, pair.speaker).front();
    PairFigure figure;
    figure.input = input.id;
    figure.loudspeaker = loudspeaker.id;
    figure.mix = show.mixes[static_cast<std::size_t>(model.buses()[static_cast<std::size_t>(pair.bus)].index)].id;
    figure.distance_m = length(input.position - loudspeaker.position);
    if (microphone_of(input)) figure.microphone_angle_deg = degrees(direct.in_angle);
    figure.loudspeaker_angle_deg = degrees(direct.out.off_axis);
    figure.worst_hz = peak.hz;
    figure.loop_gain_db = ratio_to_db(peak.value);
    return figure;
}

std::vector<PairFigure> pair_figures(const LoopModel& model, const std::vector<Pair>& pairs, const Sweep& swept) {
    std::vector<PairFigure> figures(pairs.size());
    tbb::parallel_for(std::size_t{0}, pairs.size(), [&](std::size_t i) {
        const auto gain = [&](double hz) { return pair_gain(model, pairs[i], hz); };
        figures[i] = figure_of(model, pairs[i], largest_peak(swept.hz, swept.pair_gains[i], gain));
    });
    std::stable_sort(figures.begin(), figures.end(),
                     [](const PairFigure& a, const PairFigure& b) { return a.loop_gain_db > b.loop_gain_db; });
    return figures;
}
}  // namespace

namespace {
Stability stability_from(const LoopModel& model, const std::vector<Pair>& pairs, const Sweep& swept, double common_s,
                         bool details, const Job& job) {
    const Loci loci{[&](double hz) { return model.small_matrix(model.factors(hz)); }, common_s};
    const double range = details ? kRingRange * 1.1 : 1.0;
    const SampledLoci sampled{swept.hz, swept.bounds, swept.points};
    std::vector<Crossing> crossings = find_crossings(loci, sampled, range, kMostRings + kMostRings / 2, job);
    std::vector<Ring> rings = details ? rings_of(model, crossings) : std::vector<Ring>{};
    if (rings.size() < kMostRings && crossings.size() > kMostRings) {  // many of them die as the gain rises
        crossings = find_crossings(loci, sampled, range, kMostCrossings, job);
        rings = details ? rings_of(model, crossings) : std::vector<Ring>{};
    }
    if (job.cancelled()) return {};
    Stability stability;
    stability.worst_phase_margin_db = worst_phase_margin(model, swept);
    if (!crossings.empty()) {
        stability.margin_db = -ratio_to_db(crossings.front().lambda.real());
        stability.margin_hz = crossings.front().hz;
    }
    if (!details) return stability;
    stability.rings = std::move(rings);
    stability.pairs = pair_figures(model, pairs, swept);
    return stability;
}
}  // namespace

Stability stability_of(const Show& show, bool details, const Job& job) {
    const BlockModel blocks(show, Purpose::as_drawn);
    if (blocks.model().empty()) return {};
    const std::vector<Pair> pairs = details ? pairs_of(blocks.model()) : std::vector<Pair>{};
    const Sweep swept = block_sweep(blocks, pairs, job);
    if (job.cancelled()) return {};
    return stability_from(blocks.model(), pairs, swept, blocks.common_s(), details, job);
}

Stability exact_stability_of(const LoopModel& model, bool details, const Job& job) {
    if (model.empty()) return {};
    const LoopTiming timing = timing_of(model);
    const std::vector<Pair> pairs = details ? pairs_of(model) : std::vector<Pair>{};
    const Sweep swept = sweep(model, pairs, frequency_grid(timing, kStepsATurn, model.most_hz()), job);
    if (job.cancelled()) return {};
    return stability_from(model, pairs, swept, timing.common_s, details, job);
}

}  // namespace howlmap
