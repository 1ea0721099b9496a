// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/analyst.h"

#include <algorithm>

#include "core/loop/stability.h"
#include "core/loop/tolerance.h"
#include "core/units/notes.h"

namespace howlmap::cures {
namespace {
constexpr int kScreeningDraws = 64;
constexpr double kLikely = 0.15;  // quantile of the draws that a margin to count on is looked for among
constexpr double kFirstDb = 1.5;  // above the base: what a cure gains is mostly less
constexpr double kNextDb = 2.0;   // from the margin to count on to that quantile, at most

template <class Value>
Value* find(std::vector<std::pair<Show, Value>>& all, const Show& show) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == show; });
    return found == all.end() ? nullptr : &found->second;
}

int few_of(const Show& show) { return std::min(show.tolerance.draws, kScreeningDraws); }
}  // namespace

std::optional<Findings> Analyst::full(const Show& show) {
    if (const Findings* known = find(known_, show)) return *known;
    Findings findings;
    const Stability stability = stability_of(show, false, job_);
    if (job_.cancelled()) return std::nullopt;
    findings.margins.margin_db = stability.margin_db;
    if (stability.margin_hz) findings.worst = WorstAfter{*stability.margin_hz, note_of(*stability.margin_hz).name};
    const Screened few = screened(show, base_few().margin_db + kFirstDb);
    const auto all = margin_to_count_on(show, few.margin_db + base_few().to_likely_db, job_, hints(few));
    if (!all) return std::nullopt;
    if (lowest_.empty()) lowest_ = all->lowest;
    findings.margins.margin_p05_db = all->margin_db;
    known_.emplace_back(show, findings);
    return findings;
}

DrawHints Analyst::hints(const Screened& known) {
    if (!forecast_) forecast_ = learned_forecast(base_, job_);
    return {*forecast_, known.draws, known.up_to_db, lowest_};
}

/// Where the margins of the base are known, its better draws need not be looked into.
const Analyst::Few& Analyst::base_few() {
    if (base_few_) return *base_few_;
    const bool known = before_ && before_->margin_p05_db;
    const Screened few = screened(base_, known ? *before_->margin_p05_db + kNextDb : kNoLoopDb);
    if (few.margin_db == kNoLoopDb) return base_few_.emplace(Few{kNoLoopDb, 0.0});
    std::vector<double> sorted;
    for (const auto& draw : few.draws) sorted.push_back(draw ? draw->margin_db : kNoLoopDb);
    std::sort(sorted.begin(), sorted.end());
    return base_few_.emplace(Few{few.margin_db, std::min(quantile(sorted, kLikely) - few.margin_db, kNextDb)});
}

double Analyst::screened_db(const Show& show) { return screened(show, base_few().margin_db + kFirstDb).margin_db; }

std::vector<std::optional<DrawnMargin>> Analyst::few_draws(const Show& show, double up_to_db) {
    return screened(show, up_to_db).draws;
}

/// What is known already is enough where it was asked for up to a margin as good.
Analyst::Screened Analyst::screened(const Show& show, double up_to_db) {
    Screened* known = find(screened_, show);
    if (known && known->up_to_db >= up_to_db) return *known;
    Screened screened;
    screened.draws = lowest_margins(show, few_of(show), up_to_db, job_, hints(known ? *known : Screened{}));
    if (job_.cancelled()) return {};
    screened.margin_db = figures_of(screened.draws, show.tolerance.seed).margin_p05_db.value_or(kNoLoopDb);
    screened.up_to_db = up_to_db;
    if (known)
        *known = screened;
    else
        screened_.emplace_back(show, screened);
    return screened;
}

}  // namespace howlmap::cures
