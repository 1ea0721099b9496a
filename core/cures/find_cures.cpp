// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <memory>

#include "core/cures/judge.h"
#include "core/cures/plan.h"
#include "core/cures/propose.h"
#include "core/cures/words.h"

namespace howlmap {
namespace {
constexpr double kLeastGainDb = 0.05;  // what gains less is no cure
constexpr double kSame = 0.01;         // scores closer than this are a tie

/// Ranking: most decibels to count on for tone and trouble; ties by least movement.
bool ranks_before(const Cure& a, const Cure& b) {
    if (std::abs(a.score - b.score) > kSame) return a.score > b.score;
    return a.movement_m < b.movement_m;
}

bool is_cure(const Cure& cure, const Margins& before) {
    if (before.margin_p05_db && !cure.margins_after.margin_p05_db) return true;
    return cure.count_on_gain_db.value_or(0.0) > kLeastGainDb;
}

Plan nothing_to_do(const Show& show, const Margins& before) {
    Plan plan;
    plan.after = before;
    plan.show = show;
    plan.reaches_target = true;
    plan.reason = cures::words(before.margin_p05_db ? "The target is reached as it stands."
                                                    : "There is no loop that could ring.");
    return plan;
}

/// Everything that both calls start from. The analyst refers to the job.
struct Start {
    Start(const Show& show, const Job& job) : analyst(job), loudness(show), guard(show) {}
    cures::Analyst analyst;
    cures::Loudness loudness;
    cures::Guard guard;
    Margins before;
    double needed_db = 0.0;
};

/// None when cancelled.
std::unique_ptr<Start> start(const Show& show, const Job& job) {
    auto s = std::make_unique<Start>(show, job);
    const auto findings = s->analyst.full(show);
    if (!findings) return nullptr;
    s->before = findings->margins;
    s->needed_db = show.system.target_margin_db - s->before.margin_p05_db.value_or(show.system.target_margin_db);
    return s;
}

cures::Proposals candidates_for(Start& s, const cures::Situation& now, const CureOptions& options) {
    return cures::screened(now, cures::propose(now, options.weights), options.weights, s.analyst);
}
}  // namespace

std::optional<CureReport> find_cures(const Show& show, const CureOptions& options, const Job& job,
                                     const CureFound& found) {
    const Job quiet{job.stop, {}};  // its parts would each count from 0 to 1
    const auto s = start(show, quiet);
    if (!s) return std::nullopt;
    job.report(0.1);
    CureReport report{show.system.target_margin_db, s->before, {}, {}};
    if (!s->before.margin_p05_db) {
        report.plan = nothing_to_do(show, s->before);
        job.report(1.0);
        return report;
    }
    // With the target reached already, cures for 3 dB more are still worth knowing.
    const double wanted = s->needed_db > 0.0 ? s->needed_db : 3.0;
    const auto now = cures::situation_of(show, s->loudness, s->guard, wanted, options.input, quiet);
    const auto candidates = candidates_for(*s, now, options);
    job.report(0.3);
    const std::size_t most = std::min(candidates.size(), options.most_cures);
    for (std::size_t i = 0; i < most; ++i) {
        auto cure = cures::judged(show, s->before, s->loudness, candidates[i], options.weights, s->analyst);
        if (!cure) return std::nullopt;
        job.report(0.3 + 0.4 * static_cast<double>(i + 1) / static_cast<double>(most));
        if (!is_cure(*cure, s->before)) continue;
        if (found) found(*cure);
        report.cures.push_back(std::move(*cure));
    }
    std::stable_sort(report.cures.begin(), report.cures.end(), ranks_before);
    if (options.plan) {
        std::optional<Plan> plan = s->needed_db <= 0.0
                                       ? std::optional(nothing_to_do(show, s->before))
                                       : cures::cheapest_plan(now, s->before, candidates, options, s->analyst);
        if (!plan) return std::nullopt;
        report.plan = std::move(*plan);
    }
    if (job.cancelled()) return std::nullopt;
    job.report(1.0);
    return report;
}

std::optional<Plan> make_plan(const Show& show, const CureOptions& options, const Job& job) {
    const Job quiet{job.stop, {}};
    const auto s = start(show, quiet);
    if (!s) return std::nullopt;
    job.report(0.1);
    if (s->needed_db <= 0.0) return nothing_to_do(show, s->before);
    const auto now = cures::situation_of(show, s->loudness, s->guard, s->needed_db, options.input, quiet);
    const auto candidates = candidates_for(*s, now, options);
    job.report(0.5);
    auto plan = cures::cheapest_plan(now, s->before, candidates, options, s->analyst);
    if (plan) job.report(1.0);
    return plan;
}

}  // namespace howlmap
