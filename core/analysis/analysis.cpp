// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/analysis.h"

#include "core/analysis/warnings.h"
#include "core/listening/listening.h"
#include "core/loop/stability.h"
#include "core/loop/tolerance.h"

namespace howlmap {

Verdict verdict_of(std::optional<double> count_on_db, double target_db) {
    if (!count_on_db) return Verdict::holds;
    if (*count_on_db < 0.0) return Verdict::rings;
    return *count_on_db < target_db ? Verdict::tight : Verdict::holds;
}

const char* to_string(Verdict verdict) {
    switch (verdict) {
        case Verdict::rings:
            return "rings";
        case Verdict::tight:
            return "tight";
        case Verdict::holds:
            return "holds";
    }
    return "";
}

namespace {
/// Margins, rings and pairs; returns whether it came to its end.
bool add_stability(const Show& show, const AnalysisOptions& options, const Job& job, AnalysisResult& result) {
    if (options.earlier) {
        const AnalysisResult& earlier = *options.earlier;
        result.margin_db = earlier.margin_db;
        result.worst_phase_margin_db = earlier.worst_phase_margin_db;
        result.rings = earlier.rings;
        result.pairs = earlier.pairs;
        return true;
    }
    Stability stability = stability_of(show, options.rings, job);
    if (job.cancelled()) return false;
    result.margin_db = stability.margin_db;
    result.worst_phase_margin_db = stability.worst_phase_margin_db;
    result.rings = std::move(stability.rings);
    result.pairs = std::move(stability.pairs);
    return true;
}

bool add_draws(const Show& show, const AnalysisOptions& options, const Job& job, AnalysisResult& result) {
    if (options.earlier && options.earlier->tolerance)
        result.tolerance = options.earlier->tolerance;
    else
        result.tolerance = tolerance_figures(show, job);
    return result.tolerance.has_value();
}
}  // namespace

std::optional<AnalysisResult> analyse(const Show& show, const AnalysisOptions& options, const Job& job) {
    AnalysisResult result;
    result.title = show.title;
    if (!add_stability(show, options, job, result)) return std::nullopt;
    if (options.tolerance && !add_draws(show, options, job, result)) return std::nullopt;
    const auto count_on = result.tolerance ? result.tolerance->margin_p05_db : result.margin_db;
    result.verdict = verdict_of(count_on, show.system.target_margin_db);
    if (options.listening) {
        result.performers = performer_figures(show);
        result.house = house_figures(show);
    }
    if (job.cancelled()) return std::nullopt;
    result.warnings = warnings_of(show, LoopModel(show));
    return result;
}

}  // namespace howlmap
