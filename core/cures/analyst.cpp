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

template <class Value>
const Value* find(const std::vector<std::pair<Show, Value>>& all, const Show& show) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const auto& one) { return one.first == show; });
    return found == all.end() ? nullptr : &found->second;
}
}  // namespace

std::optional<Findings> Analyst::full(const Show& show) {
    if (const Findings* known = find(known_, show)) return *known;
    Findings findings;
    const Stability stability = stability_of(show, false, job_);
    if (job_.cancelled()) return std::nullopt;
    findings.margins.margin_db = stability.margin_db;
    if (stability.margin_hz) findings.worst = WorstAfter{*stability.margin_hz, note_of(*stability.margin_hz).name};
    const Screened few = screened(show);
    const auto all = margin_to_count_on(show, few.likely_db, job_);
    if (!all) return std::nullopt;
    findings.margins.margin_p05_db = all->margin_db;
    known_.emplace_back(show, findings);
    return findings;
}

double Analyst::screened_db(const Show& show) { return screened(show).margin_db; }

Analyst::Screened Analyst::screened(const Show& show) {
    if (const Screened* known = find(screened_, show)) return *known;
    Show few = show;
    few.tolerance.draws = std::min(few.tolerance.draws, kScreeningDraws);
    const auto draws = tolerance_figures(few, job_);
    if (!draws || !draws->margin_p05_db) return {kNoLoopDb, kNoLoopDb};
    const double p05 = *draws->margin_p05_db, p50 = draws->margin_p50_db.value_or(p05);
    const Screened screened{p05, p05 + kLikely * (p50 - p05)};
    screened_.emplace_back(show, screened);
    return screened;
}

}  // namespace howlmap::cures
