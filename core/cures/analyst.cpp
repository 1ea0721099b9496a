// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/analyst.h"

#include <algorithm>

#include "core/loop/stability.h"
#include "core/loop/tolerance.h"
#include "core/units/notes.h"

namespace howlmap::cures {
namespace {
constexpr int kScreeningDraws = 64;

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
    const auto draws = tolerance_figures(show, job_);
    if (!draws) return std::nullopt;
    findings.margins.margin_p05_db = draws->margin_p05_db;
    known_.emplace_back(show, findings);
    return findings;
}

double Analyst::screened_db(const Show& show) {
    if (const double* known = find(screened_, show)) return *known;
    Show few = show;
    few.tolerance.draws = std::min(few.tolerance.draws, kScreeningDraws);
    const auto draws = tolerance_figures(few, job_);
    const double margin = draws && draws->margin_p05_db ? *draws->margin_p05_db : kNoLoopDb;
    if (draws) screened_.emplace_back(show, margin);
    return margin;
}

}  // namespace howlmap::cures
