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
constexpr double kLeastGainDb = 0.2;  // what gains less is no cure
constexpr double kSame = 0.01;        // scores closer than this are a tie

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
    Start(const Show& show, const CureOptions& options, const Job& job)
        : analyst(show, options.before, job), loudness(show), guard(show) {}
    cures::Analyst analyst;
    cures::Loudness loudness;
    cures::Guard guard;
    Margins before;
    double needed_db = 0.0;
};

/// None when cancelled.
std::unique_ptr<Start> start(const Show& show, const CureOptions& options, const Job& job) {
    auto s = std::make_unique<Start>(show, options, job);
    if (options.before) {
        s->before = *options.before;
    } else {
        const auto findings = s->analyst.full(show);
        if (!findings) return nullptr;
        s->before = findings->margins;
    }
    s->needed_db = show.system.target_margin_db - s->before.margin_p05_db.value_or(show.system.target_margin_db);
    return s;
}

/// The most promising proposals by guess, judged before the others are screened, until one is a cure: so that something
/// to do is soon there.
std::optional<Cure> first_cure(Start& s, const cures::Situation& now, const cures::Proposals& proposals,
                               const CureOptions& options) {
    constexpr std::size_t kTried = 3;
    std::size_t tried = 0;
    for (const cures::Candidate& one : proposals) {
        if (one.kind == CureKind::graphic_bands || one.blind) continue;  // these are worked out by the screening
        if (!one.keeps_level) continue;                                  // nobody begins with the level
        if (tried++ == kTried) break;
        auto cure = cures::judged(now.show, s.before, s.loudness, one, options.weights, s.analyst);
        if (!cure || is_cure(*cure, s.before)) return cure;
    }
    return std::nullopt;
}
}  // namespace

std::optional<CureReport> find_cures(const Show& show, const CureOptions& options, const Job& job,
                                     const CureFound& found) {
    const Job quiet{job.stop, {}};  // its parts would each count from 0 to 1
    const auto s = start(show, options, quiet);
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
    const auto tell = [&](Cure cure) {
        if (found) found(cure);
        report.cures.push_back(std::move(cure));
    };
    cures::Proposals proposals = cures::propose_simple(now, options.weights);
    if (auto cure = first_cure(*s, now, proposals, options)) tell(std::move(*cure));
    proposals = cures::propose_all(now, options.weights, std::move(proposals));
    if (report.cures.empty())
        if (auto cure = first_cure(*s, now, proposals, options)) tell(std::move(*cure));
    const auto candidates = cures::screened(now, std::move(proposals), options.weights, s->analyst);
    job.report(0.3);
    const std::string first = report.cures.empty() ? std::string() : report.cures.front().id;
    auto others = candidates;
    std::erase_if(others, [&](const cures::Candidate& one) { return cures::id_of(one) == first; });
    const std::size_t left = options.most_cures - std::min(options.most_cures, report.cures.size());
    if (others.size() > left) others.resize(left);
    for (std::size_t i = 0; i < others.size(); ++i) {
        auto cure = cures::judged(show, s->before, s->loudness, others[i], options.weights, s->analyst);
        if (!cure) return std::nullopt;
        job.report(0.3 + 0.4 * static_cast<double>(i + 1) / static_cast<double>(others.size()));
        if (is_cure(*cure, s->before)) tell(std::move(*cure));
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
    const auto s = start(show, options, quiet);
    if (!s) return std::nullopt;
    job.report(0.1);
    if (s->needed_db <= 0.0) return nothing_to_do(show, s->before);
    const auto now = cures::situation_of(show, s->loudness, s->guard, s->needed_db, options.input, quiet);
    const auto candidates =
        cures::screened(now, cures::propose_all(now, options.weights, cures::propose_simple(now, options.weights)),
                        options.weights, s->analyst);
    job.report(0.5);
    auto plan = cures::cheapest_plan(now, s->before, candidates, options, s->analyst);
    if (plan) job.report(1.0);
    return plan;
}

}  // namespace howlmap
