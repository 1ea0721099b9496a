// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/analyst.h"

#include <algorithm>

#include "core/loop/stability.h"
#include "core/loop/tolerance.h"
#include "core/units/notes.h"

namespace howlmap::cures {
namespace {
constexpr int kScreeningDraws = 64;
// Of a normal distribution this far from its 5th percentile to its median lies about the 12th.
constexpr double kLikely = 0.3;
constexpr double kFirstDb = 1.5;  // above the base: what a cure gains is mostly less

template <class Value>
const Value* find(const std::vector<std::pair<Show, Value>>& all, const Show& show) {
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
    const auto all = margin_to_count_on(show, screened_db(show) + base_few().to_likely_db, job_, forecast());
    if (!all) return std::nullopt;
    findings.margins.margin_p05_db = all->margin_db;
    known_.emplace_back(show, findings);
    return findings;
}

const std::shared_ptr<const PeakForecast>& Analyst::forecast() {
    if (!forecast_) forecast_ = learned_forecast(base_, job_);
    return *forecast_;
}

const Analyst::Few& Analyst::base_few() {
    if (base_few_) return *base_few_;
    const auto draws = lowest_margins(base_, few_of(base_), kNoLoopDb, job_, forecast());
    const ToleranceFigures figures = figures_of(draws, base_.tolerance.seed);
    if (!figures.margin_p05_db) return base_few_.emplace(Few{kNoLoopDb, 0.0});
    const double low = *figures.margin_p05_db;
    return base_few_.emplace(Few{low, kLikely * (figures.margin_p50_db.value_or(low) - low)});
}

double Analyst::screened_db(const Show& show) { return screened(show, base_few().margin_db + kFirstDb).margin_db; }

std::vector<std::optional<DrawnMargin>> Analyst::few_draws(const Show& show, double up_to_db) {
    return screened(show, up_to_db).draws;
}

/// What is known already is enough where it was asked for up to a margin as good.
Analyst::Screened Analyst::screened(const Show& show, double up_to_db) {
    const Screened* known = find(screened_, show);
    if (known && known->up_to_db >= up_to_db) return *known;
    Screened screened;
    screened.up_to_db = up_to_db;
    screened.draws = lowest_margins(show, few_of(show), up_to_db, job_, forecast());
    if (job_.cancelled()) return {};
    screened.margin_db = figures_of(screened.draws, show.tolerance.seed).margin_p05_db.value_or(kNoLoopDb);
    screened_.emplace_back(show, screened);
    return screened;
}

}  // namespace howlmap::cures
