// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/plan.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <memory>

#include "core/cures/band_solver.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
constexpr std::size_t kMostCandidates = 12, kMostSteps = 4;
constexpr std::size_t kMostSets = 320;    // looked at with the guard
constexpr std::size_t kMostFinished = 8;  // sets that graphic cuts are solved on top of
constexpr int kMostConfirmed = 5;         // sets put before the full analysis
constexpr double kReserveDb = 0.1;

/// Some of the candidates together.
struct Set {
    std::vector<const Candidate*> steps;
    double cost = 0.0;
    double margin_db = 0.0;  ///< of the guard
    Show show;
};

bool excludes(const Candidate& a, const Candidate& b) { return a.slot == b.slot; }

/// What can be combined: everything but what is solved for the rest that is missing.
std::vector<const Candidate*> parts_of(const Proposals& candidates) {
    std::vector<const Candidate*> parts;
    for (const Candidate& one : candidates)
        if (one.keeps_level && !one.blind && one.kind != CureKind::graphic_bands &&
            one.kind != CureKind::narrow_notches && parts.size() < kMostCandidates)
            parts.push_back(&one);
    return parts;
}

double rough_cost(const Candidate& one, const TroubleWeights& weights) {
    return weights.of(one.kind) + weights.per_metre * one.movement_m;
}

/// All sets of up to four that do not exclude each other, cheapest first by trouble and movement alone.
std::vector<Set> sets_of(const std::vector<const Candidate*>& parts, const TroubleWeights& weights) {
    std::vector<Set> all{{{}, 0.0, 0.0, {}}};
    for (std::size_t first = 0, size = 1; size <= kMostSteps; ++size) {
        const std::size_t last = all.size();
        for (std::size_t s = first; s < last; ++s)
            for (const Candidate* part : parts) {
                const auto& steps = all[s].steps;
                const bool after = steps.empty() || steps.back() < part;
                if (!after || std::any_of(steps.begin(), steps.end(),
                                          [&](const Candidate* step) { return excludes(*step, *part); }))
                    continue;
                Set larger = all[s];
                larger.steps.push_back(part);
                larger.cost += rough_cost(*part, weights);
                all.push_back(std::move(larger));
            }
        first = last;
    }
    std::stable_sort(all.begin(), all.end(), [](const Set& a, const Set& b) { return a.cost < b.cost; });
    if (all.size() > kMostSets) all.resize(kMostSets);
    return all;
}

class Planner {
  public:
    Planner(const Situation& now, const Margins& before, const Proposals& candidates, const CureOptions& options)
        : now_(now),
          before_(before),
          options_(options),
          target_(now.show.system.target_margin_db),
          offset_(before.margin_p05_db.value_or(0.0) - now.guard.margin_db()),
          candidates_(candidates) {}

    std::optional<Plan> make() {
        sets_ = sets_of(parts_of(candidates_), options_.weights);
        tbb::parallel_for(std::size_t{0}, sets_.size(), [&](std::size_t i) {
            if (!now_.job.cancelled()) weigh(sets_[i]);
        });
        now_.job.report(0.7);
        finish_with_bands();
        if (now_.job.cancelled()) return std::nullopt;
        for (int attempt = 0; attempt < kMostConfirmed; ++attempt) {
            const Set* best = cheapest_that_reaches();
            if (!best) break;
            const auto findings = full_analysis(best->show, now_.job);
            if (!findings) return std::nullopt;
            const double reached = findings->margins.margin_p05_db.value_or(1e9);
            if (reached >= target_) return steps_of(*best, true);
            // The guard was too hopeful here: whatever it promises has to be so much more.
            offset_ = std::min(offset_ - 0.05, reached - best->margin_db);
            refinish(*best);
        }
        return last_resort();
    }

  private:
    double promised(const Set& set) const { return set.margin_db + offset_; }

    void weigh(Set& set) const {
        set.show = now_.show;
        for (const Candidate* step : set.steps) step->edit(set.show);
        set.show = now_.loudness.restored(set.show);
        set.margin_db = now_.guard.changed(set.show).margin_db();
        set.cost = cost(set);
    }

    double cost(const Set& set) const {
        double total = 0.0;
        for (const Candidate* step : set.steps) total += rough_cost(*step, options_.weights);
        const double lost = std::min(std::max(0.0, std::abs(now_.loudness.loss(set.show).change_db) - 0.1),
                                     2.0 * static_cast<double>(set.steps.size()));
        return total + options_.weights.per_lost_db * lost +
               options_.weights.tone_per_db * now_.loudness.tone_cost_db(set.show);
    }

    const Set* cheapest_that_reaches() const {
        const Set* best = nullptr;
        for (const Set& set : sets_)
            if (promised(set) >= target_ + kReserveDb && (!best || set.cost < best->cost)) best = &set;
        return best;
    }

    /// Sets that come near for little, with the smallest graphic cuts that buy the rest.
    void finish_with_bands() {
        std::vector<const Set*> order;
        for (const Set& set : sets_)
            if (promised(set) < target_ + kReserveDb) order.push_back(&set);
        const auto worth = [&](const Set* set) { return set->cost + 0.25 * (target_ - promised(*set)); };
        std::stable_sort(order.begin(), order.end(), [&](const Set* a, const Set* b) { return worth(a) < worth(b); });
        if (order.size() > kMostFinished) order.resize(kMostFinished);
        std::vector<Set> finished(order.size());
        extra_.resize(order.size());
        tbb::parallel_for(std::size_t{0}, order.size(), [&](std::size_t i) {
            if (!now_.job.cancelled()) finished[i] = with_bands(*order[i], extra_[i]);
        });
        for (Set& set : finished)
            if (set.steps.size() > 0) sets_.push_back(std::move(set));
    }

    /// The set with graphic cuts solved on top; `bands` becomes their candidate and must stay where it is.
    Set with_bands(const Set& set, std::unique_ptr<Candidate>& bands) const {
        const Guard guard = now_.guard.changed(set.show);
        const Situation here =
            situation_of(set.show, now_.loudness, guard, target_ + 2.0 * kReserveDb - promised(set), {}, now_.job);
        Proposals found = graphic_bands(here);
        if (found.empty()) return {};
        bands = std::make_unique<Candidate>(std::move(found.front()));
        Set larger = set;
        larger.steps.push_back(bands.get());
        weigh(larger);
        return larger;
    }

    /// A set that the full analysis refused gets its graphic cuts again, deeper.
    void refinish(Set failed) {
        std::erase_if(failed.steps, [](const Candidate* step) { return step->kind == CureKind::graphic_bands; });
        weigh(failed);
        extra_.emplace_back();
        Set again = with_bands(failed, extra_.back());
        if (!again.steps.empty()) sets_.push_back(std::move(again));
    }

    /// Nothing keeps the level and reaches the target: the best there is, and the rest out of the level.
    std::optional<Plan> last_resort() {
        const auto value = [&](const Set& set) { return std::min(promised(set), target_) - set.cost; };
        const auto best = std::max_element(sets_.begin(), sets_.end(),
                                           [&](const Set& a, const Set& b) { return value(a) < value(b); });
        auto plan = steps_of(*best, false);
        if (!plan) return plan;
        const double short_db = target_ - plan->after.margin_p05_db.value_or(target_);
        if (short_db > 0.0) add_turn_down(*plan, short_db);
        return now_.job.cancelled() ? std::nullopt : std::optional<Plan>(std::move(plan));
    }

    void add_turn_down(Plan& plan, double short_db) {
        const Guard guard = now_.guard.changed(plan.show);
        Situation here = situation_of(plan.show, now_.loudness, guard, short_db, {}, now_.job);
        here.needed_db = short_db;
        for (const Candidate& down : turn_down(here)) {
            const auto step = judged(plan.show, plan.after, now_.loudness, down, options_.weights, now_.job);
            if (!step) return;
            plan.reason = words(
                "Nothing found reaches {:.1f} dB at equal loudness: {:.1f} dB is the best, the last {:.1f} dB come out "
                "of the level.",
                target_, target_ - short_db, short_db);
            plan.steps.push_back(*step);
            plan.show = step->after;
            plan.after = step->margins_after;
            plan.reaches_target = plan.after.margin_p05_db.value_or(1e9) >= target_;
        }
    }

    std::optional<Plan> steps_of(const Set& set, bool reaches) const {
        Plan plan;
        plan.show = now_.show;
        plan.after = before_;
        for (const Candidate* step : set.steps) {
            auto cure = judged(plan.show, plan.after, now_.loudness, *step, options_.weights, now_.job);
            if (!cure) return std::nullopt;
            plan.show = cure->after;
            plan.after = cure->margins_after;
            plan.steps.push_back(std::move(*cure));
        }
        plan.reaches_target = plan.after.margin_p05_db.value_or(1e9) >= target_;
        if (reaches && !plan.reaches_target)
            plan.reason = words("Setting the sends again step by step took a little of it.");
        return plan;
    }

    const Situation& now_;
    Margins before_;
    const CureOptions& options_;
    double target_, offset_;
    const Proposals& candidates_;
    std::vector<Set> sets_;
    std::vector<std::unique_ptr<Candidate>> extra_;
};
}  // namespace

std::optional<Plan> cheapest_plan(const Situation& now, const Margins& before, const Proposals& candidates,
                                  const CureOptions& options) {
    return Planner(now, before, candidates, options).make();
}

}  // namespace howlmap::cures
