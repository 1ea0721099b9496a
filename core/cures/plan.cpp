// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/plan.h"

#include <tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <memory>

#include "core/cures/counted_bands.h"
#include "core/cures/words.h"
#include "core/listening/send_model.h"

namespace howlmap::cures {
namespace {
constexpr std::size_t kMostCandidates = 12, kMostStepsInPlan = 4;
constexpr std::size_t kMostSets = 320;         // weighed with the guard
constexpr std::size_t kMostFinished = 2;       // sets that graphic cuts are solved on top of
constexpr std::size_t kMostSetsScreened = 16;  // sets put before a few draws
constexpr double kDoubtDb = 1.0;               // the guard may be this much too cautious
constexpr double kScreenDb = 0.2;              // a few draws may be this much too cautious
constexpr double kLevelCounts = 2.0;           // trouble of each decibel that has to come out of the level
constexpr double kMostShortDb = 0.5;           // of the target, for cuts to be solved again
constexpr double kCutsCount = 2.0;             // trouble of each decibel bought by graphic cuts, about

/// Some of the candidates together.
struct Set {
    std::vector<const Candidate*> steps;
    double cost = 0.0;
    double margin_db = 0.0;  ///< of the guard, corrected by what the steps were found to gain one by one
    Show show;
    bool to_finish = false;           ///< waits for graphic cuts
    std::optional<double> cuts_cost;  ///< of cuts that fell a little short, with more on top
    double further_db = 0.0;          ///< that those fell short of
    bool screened = false;            ///< the margin is that of a few draws
};

/// A set and what it was found to have.
struct Tried {
    Set set;
    double promised_db, found_db;
};

bool holds(const Set& set, const Set& part) {
    return std::all_of(part.steps.begin(), part.steps.end(), [&](const Candidate* step) {
        return std::find(set.steps.begin(), set.steps.end(), step) != set.steps.end();
    });
}

bool excludes(const Candidate& a, const Candidate& b) { return a.slot == b.slot; }

/// What can be combined: everything but what is solved for the rest that is missing.
std::vector<const Candidate*> parts_of(const Proposals& candidates) {
    std::vector<const Candidate*> parts;
    for (const Candidate& one : candidates)
        if (one.keeps_level && one.kind != CureKind::graphic_bands && parts.size() < kMostCandidates)
            parts.push_back(&one);
    return parts;
}

double rough_cost(const Candidate& one, const TroubleWeights& weights) {
    return weights.of(one.kind) + weights.per_metre * one.movement_m;
}

/// Sets of up to four that do not exclude each other: each alone, and the cheapest by trouble and movement alone.
std::vector<Set> sets_of(const std::vector<const Candidate*>& parts, const TroubleWeights& weights) {
    std::vector<Set> all(1);
    for (std::size_t first = 0, size = 1; size <= kMostStepsInPlan; ++size) {
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
    std::stable_partition(all.begin(), all.end(), [](const Set& set) { return set.steps.size() <= 1; });
    if (all.size() > kMostSets) all.resize(kMostSets);
    return all;
}

class Planner {
  public:
    Planner(const Situation& now, const Margins& before, const Proposals& candidates, const CureOptions& options,
            Analyst& analyst)
        : now_(now),
          before_(before),
          options_(options),
          analyst_(analyst),
          target_(now.show.system.target_margin_db),
          offset_(before.margin_p05_db.value_or(0.0) - now.guard.margin_db()),
          candidates_(candidates) {}

    std::optional<Plan> make() {
        sets_ = sets_of(parts_of(candidates_), options_.weights);
        tbb::parallel_for(std::size_t{0}, sets_.size(), [&](std::size_t i) {
            if (!now_.job.cancelled()) weigh(sets_[i]);
        });
        if (options_.weights.offers(CureKind::graphic_bands)) {
            add_bands_alone();
            add_those_to_finish();
        }
        while (tried_.size() < kMostSetsScreened && !now_.job.cancelled()) {
            const auto next = cheapest_open();
            if (next == sets_.end()) break;
            const Set set = *next;
            sets_.erase(next);
            if (set.to_finish)
                add_with_bands(set);
            else if (reaches_when_tried(set))
                return steps_of(without_needless(set));
        }
        return now_.job.cancelled() ? std::nullopt : last_resort();
    }

  private:
    /// What a part of it was found to fall short of, the whole does too.
    double promised(const Set& set) const {
        std::optional<double> correction;
        for (const Tried& tried : tried_)
            if (!set.screened && holds(set, tried.set)) {
                const double more = tried.found_db - tried.promised_db;
                correction = std::min(correction.value_or(more), more);
            }
        return set.margin_db + offset_ + correction.value_or(0.0);
    }

    /// By a few draws, put right by what all draws say of the show as it is.
    double screened_db(const Set& set) {
        return analyst_.screened_db(set.show) - analyst_.screened_db(now_.show) + before_.margin_p05_db.value_or(0.0);
    }

    bool reaches(const Set& set) {
        const auto findings = analyst_.full(set.show);
        return findings && findings->margins.margin_p05_db.value_or(kNoLoopDb) >= target_;
    }

    /// A few draws first, then all.
    bool reaches_when_tried(const Set& set) {
        double found = screened_db(set);
        const bool likely = found >= target_ - kScreenDb;
        if (likely)
            if (const auto findings = analyst_.full(set.show))
                found = findings->margins.margin_p05_db.value_or(kNoLoopDb);
        tried_.push_back({set, set.margin_db + offset_, found});
        if (likely && found < target_) finish_again(set, target_ - found);
        return likely && found >= target_;
    }

    /// Cuts that were fitted to a few draws may turn out a little too shallow for all: once more, with so much on top.
    void finish_again(const Set& set, double short_db) {
        const bool has_cuts = set.steps.size() > 1 && set.steps.back()->kind == CureKind::graphic_bands;
        if (!has_cuts || set.further_db > 0.0 || short_db > kMostShortDb) return;
        Set base;
        base.steps.assign(set.steps.begin(), set.steps.end() - 1);
        weigh(base);
        base.to_finish = true;
        base.further_db = short_db;
        base.cuts_cost = set.cost - base.cost + kCutsCount * short_db;
        sets_.push_back(std::move(base));
    }

    void weigh(Set& set) const {
        set.show = now_.show;
        double correction = 0.0;
        for (const Candidate* step : set.steps) {
            step->edit(set.show);
            // Alone it is known; together with others, what the guard does not see is believed by half.
            const bool known = set.steps.size() == 1 || step->blind || step->correction_db < 0.0;
            correction += known ? step->correction_db : 0.5 * step->correction_db;
        }
        set.show = now_.loudness.restored(set.show);
        set.margin_db = now_.guard.changed(set.show).margin_db() + correction;
        set.cost = cost(set);
    }

    double cost(const Set& set) const {
        double total = 0.0;
        for (const Candidate* step : set.steps) total += rough_cost(*step, options_.weights);
        const double lost = std::max(0.0, std::abs(now_.loudness.loss(set.show).change_db) - 0.1);
        return total + options_.weights.per_lost_db * std::min(lost, 2.0 * static_cast<double>(set.steps.size())) +
               options_.weights.per_send * static_cast<double>(send_changes(now_.show, set.show).size()) +
               options_.weights.tone_per_db * now_.loudness.tone_cost_db(set.show);
    }

    /// About, where the cuts are not solved yet.
    double cost_when_finished(const Set& set) const {
        if (!set.to_finish) return set.cost;
        const double missing = std::max(0.0, target_ - promised(set));
        return set.cost + set.cuts_cost.value_or(options_.weights.of(CureKind::graphic_bands) + kCutsCount * missing);
    }

    std::vector<Set>::iterator cheapest_open() {
        auto best = sets_.end();
        for (auto set = sets_.begin(); set != sets_.end(); ++set)
            if ((set->to_finish || promised(*set) >= target_ - kDoubtDb) &&
                (best == sets_.end() || cost_when_finished(*set) < cost_when_finished(*best)))
                best = set;
        return best;
    }

    /// The graphic cuts that were solved for the show as it is reach the target by themselves, where any can.
    void add_bands_alone() {
        for (const Candidate& one : candidates_) {
            if (one.kind != CureKind::graphic_bands || now_.job.cancelled()) continue;
            Set alone;
            alone.steps = {&one};
            weigh(alone);
            alone.margin_db = screened_db(alone) - offset_;
            alone.screened = true;
            sets_.push_back(std::move(alone));
        }
    }

    /// Sets that come near for little, to be finished with the smallest graphic cuts that buy the rest. Cuts that were
    /// solved for a polarity would not fit without it.
    void add_those_to_finish() {
        std::vector<Set> order;
        for (const Set& set : sets_)
            if (promised(set) < target_ && !set.screened &&
                std::none_of(set.steps.begin(), set.steps.end(), [](const Candidate* step) { return step->blind; }))
                order.push_back(set);
        for (Set& set : order) set.to_finish = true;
        std::stable_sort(order.begin(), order.end(),
                         [&](const Set& a, const Set& b) { return cost_when_finished(a) < cost_when_finished(b); });
        if (order.size() > kMostFinished) order.resize(kMostFinished);
        for (Set& set : order) sets_.push_back(std::move(set));
    }

    /// The set with graphic cuts on top that bring a few draws to the target.
    void add_with_bands(const Set& set) {
        const Guard guard = now_.guard.changed(set.show);
        const Situation here = situation_of(set.show, now_.loudness, guard, target_ - promised(set), {}, now_.job);
        const double wanted =
            target_ + set.further_db + analyst_.screened_db(now_.show) - before_.margin_p05_db.value_or(0.0);
        const BandCuts cuts = smallest_counted_cuts(here, wanted, analyst_);
        if (cuts.empty()) return;
        extra_.push_back(std::make_unique<Candidate>(band_cure(here, cuts)));
        Set larger = set;
        larger.to_finish = false;
        larger.steps.push_back(extra_.back().get());
        weigh(larger);
        larger.margin_db = screened_db(larger) - offset_;
        larger.screened = true;
        sets_.push_back(std::move(larger));
    }

    /// The set less every step that it reaches the target without.
    Set without_needless(Set set) {
        for (std::size_t i = 0; i < set.steps.size() && set.steps.size() > 1;) {
            Set less = set;
            less.steps.erase(less.steps.begin() + static_cast<std::ptrdiff_t>(i));
            weigh(less);
            if (less.cost < set.cost && screened_db(less) >= target_ - kScreenDb && reaches(less))
                set = std::move(less);
            else
                ++i;
        }
        return set;
    }

    /// Nothing keeps the level and reaches the target: the best there is, and the rest out of the level.
    std::optional<Plan> last_resort() {
        const auto value = [&](const Set& set, double margin_db) {
            return kLevelCounts * std::min(margin_db, target_) - set.cost;
        };
        std::erase_if(sets_, [](const Set& set) { return set.to_finish; });
        std::vector<std::pair<double, std::size_t>> order;
        for (std::size_t i = 0; i < sets_.size(); ++i) order.emplace_back(-value(sets_[i], promised(sets_[i])), i);
        std::sort(order.begin(), order.end());
        order.resize(std::min(order.size(), kMostFinished));
        for (const auto& [worth, i] : order)
            if (!now_.job.cancelled() && reaches_when_tried(sets_[i])) return steps_of(without_needless(sets_[i]));
        const auto best = std::max_element(tried_.begin(), tried_.end(), [&](const Tried& a, const Tried& b) {
            return value(a.set, a.found_db) < value(b.set, b.found_db);
        });
        auto plan = steps_of(best == tried_.end() ? Set{} : best->set);
        if (!plan || now_.job.cancelled()) return std::nullopt;
        const double short_db = target_ - plan->after.margin_p05_db.value_or(kNoLoopDb);
        if (short_db > 0.0 && options_.weights.offers(CureKind::turn_down))
            add_turn_down(*plan, short_db);
        else if (short_db > 0.0)
            plan->reason = words(
                "No sequence that was found reaches {:.1f} dB at equal loudness, and turning down is ruled out: {:.1f} "
                "dB are missing.",
                target_, short_db);
        return plan;
    }

    void add_turn_down(Plan& plan, double short_db) {
        const Guard guard = now_.guard.changed(plan.show);
        Situation here = situation_of(plan.show, now_.loudness, guard, short_db, {}, now_.job);
        here.needed_db = short_db;
        for (const Candidate& down : turn_down(here)) {
            const auto step = judged(plan.show, plan.after, now_.loudness, down, options_.weights, analyst_);
            if (!step) return;
            plan.reason = words(
                "No sequence that was found reaches {:.1f} dB at equal loudness: without the last step the margin to "
                "count on is {:.1f} dB. The last {:.1f} dB come out of the level.",
                target_, target_ - short_db, std::abs(step->loudness_change_db));
            plan.steps.push_back(*step);
            plan.show = step->after;
            plan.after = step->margins_after;
            plan.reaches_target = plan.after.margin_p05_db.value_or(kNoLoopDb) >= target_;
        }
    }

    std::optional<Plan> steps_of(const Set& set) {
        Plan plan;
        plan.show = now_.show;
        plan.after = before_;
        for (const Candidate* step : set.steps) {
            auto cure = judged(plan.show, plan.after, now_.loudness, *step, options_.weights, analyst_);
            if (!cure) return std::nullopt;
            plan.show = cure->after;
            plan.after = cure->margins_after;
            plan.steps.push_back(std::move(*cure));
        }
        plan.reaches_target = plan.after.margin_p05_db.value_or(kNoLoopDb) >= target_;
        return plan;
    }

    const Situation& now_;
    Margins before_;
    const CureOptions& options_;
    Analyst& analyst_;
    double target_, offset_;
    const Proposals& candidates_;
    std::vector<Set> sets_;
    std::vector<Tried> tried_;
    std::vector<std::unique_ptr<Candidate>> extra_;
};
}  // namespace

std::optional<Plan> cheapest_plan(const Situation& now, const Margins& before, const Proposals& candidates,
                                  const CureOptions& options, Analyst& analyst) {
    return Planner(now, before, candidates, options, analyst).make();
}

}  // namespace howlmap::cures
