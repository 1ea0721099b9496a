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

std::optional<AnalysisResult> analyse(const Show& show, const AnalysisOptions& options, const Job& job) {
    AnalysisResult result;
    result.title = show.title;
    Stability stability = stability_of(show, options.rings, job);
    if (job.cancelled()) return std::nullopt;
    result.margin_db = stability.margin_db;
    result.worst_phase_margin_db = stability.worst_phase_margin_db;
    result.rings = std::move(stability.rings);
    result.pairs = std::move(stability.pairs);
    if (options.tolerance) {
        result.tolerance = tolerance_figures(show, job);
        if (!result.tolerance) return std::nullopt;
    }
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
