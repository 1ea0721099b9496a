// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/propose.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <functional>

#include "core/cures/counted_bands.h"
#include "core/cures/judge.h"

namespace howlmap::cures {
namespace {
constexpr double kLeastScreenedGainDb = 0.15;
constexpr std::size_t kMostScreened = 18;
constexpr double kLeastScreenedDb = 0.2, kEndlessDb = 60.0;
constexpr double kBlindGainDb = 0.5;  // what a cure is trusted with that only the full analysis can judge

using Task = std::function<Proposals()>;

/// Kinds that have nothing to look for.
std::vector<Task> simple_tasks(const Situation& now) {
    std::vector<Task> tasks;
    for (const std::size_t i : now.inputs)
        for (const auto kind : {cover_sound_holes, input_high_pass, change_pattern})
            tasks.push_back([&now, i, kind] { return kind(now, i); });
    for (const std::size_t m : now.mixes) tasks.push_back([&now, m] { return mix_high_pass(now, m); });
    return tasks;
}

std::vector<Task> other_tasks(const Situation& now) {
    std::vector<Task> tasks;
    for (const std::size_t i : now.inputs)
        for (const auto kind : {closer_to_source, input_polarity, aim_microphone, move_microphone})
            tasks.push_back([&now, i, kind] { return kind(now, i); });
    for (const std::size_t l : now.loudspeakers)
        for (const auto kind : {aim_loudspeaker, move_loudspeaker})
            tasks.push_back([&now, l, kind] { return kind(now, l); });
    for (const std::size_t m : now.mixes) tasks.push_back([&now, m] { return mix_polarity(now, m); });
    for (const auto kind : {graphic_bands, narrow_notches, remove_sends, in_ears, turn_down})
        tasks.push_back([&now, kind] { return kind(now); });
    return tasks;
}

/// Adds what some tasks propose and is of use, and ranks all.
Proposals with(Proposals all, const Situation& now, const TroubleWeights& weights, const std::vector<Task>& tasks) {
    std::vector<Proposals> found(tasks.size());
    tbb::parallel_for(std::size_t{0}, tasks.size(), [&](std::size_t i) {
        if (now.job.cancelled()) return;
        found[i] = tasks[i]();
        for (Candidate& one : found[i]) {
            if (one.blind)
                one.guessed_gain_db = kBlindGainDb;
            else if (one.keeps_level)
                one.guessed_gain_db = now.guessed_gain(one.edit);
        }
    });
    for (Proposals& some : found)
        for (Candidate& one : some)
            if (weights.offers(one.kind) && one.guessed_gain_db >= kLeastScreenedGainDb) all.push_back(std::move(one));
    const auto worth = [&](const Candidate& one) {
        return std::min(one.guessed_gain_db, now.needed_db + 1.0) /
               (weights.of(one.kind) + weights.per_metre * one.movement_m + 0.3);
    };
    std::stable_sort(all.begin(), all.end(),
                     [&](const Candidate& a, const Candidate& b) { return worth(a) > worth(b); });
    return all;
}
}  // namespace

Proposals propose_simple(const Situation& now, const TroubleWeights& weights) {
    return with({}, now, weights, simple_tasks(now));
}

Proposals propose_all(const Situation& now, const TroubleWeights& weights, Proposals simple) {
    return with(std::move(simple), now, weights, other_tasks(now));
}

Proposals screened(const Situation& now, Proposals candidates, const TroubleWeights& weights, Analyst& analyst) {
    if (candidates.size() > kMostScreened) candidates.resize(kMostScreened);
    const double before = analyst.screened_db(now.show);
    std::vector<std::pair<double, Candidate>> ranked;
    for (Candidate& one : candidates) {
        if (now.job.cancelled()) break;
        if (one.kind == CureKind::graphic_bands) {
            const BandCuts cuts = smallest_counted_cuts(now, before + now.needed_db, analyst);
            if (cuts.empty()) continue;
            one = band_cure(now, cuts);
        }
        const Show after = applied(now.show, now.loudness, one);
        one.screened_gain_db = std::min(analyst.screened_db(after) - before, kEndlessDb);
        one.correction_db = one.screened_gain_db - (now.guard.changed(after).margin_db() - now.guard.margin_db());
        if (one.screened_gain_db < kLeastScreenedDb) continue;
        const Loss loss = now.loudness.loss(after);
        const double cost = cost_of(one, now.show, after, loss, now.loudness.tone_cost_db(after), weights);
        ranked.emplace_back(one.screened_gain_db / std::max(cost, 0.05), std::move(one));
    }
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    Proposals all;
    for (auto& [worth, one] : ranked) all.push_back(std::move(one));
    return all;
}

}  // namespace howlmap::cures
