// SPDX-License-Identifier: GPL-3.0-or-later
// One call from a show to all figures. Pure: the same show gives the same result on every machine.
#pragma once
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/listening/figures.h"
#include "core/loop/figures.h"
#include "core/show/show.h"
#include "core/units/job.h"

namespace howlmap {

enum class Verdict { rings, tight, holds };

struct AnalysisResult {
    std::string title;
    std::optional<double> margin_db;              ///< as drawn
    std::optional<double> worst_phase_margin_db;  ///< if every element's phase falls badly
    std::optional<ToleranceFigures> tolerance;    ///< absent when the draws were not asked for
    Verdict verdict = Verdict::holds;
    std::vector<Ring> rings;        ///< worst first, within 12 dB of the first, 20 at most
    std::vector<PairFigure> pairs;  ///< worst first
    std::vector<PerformerFigure> performers;
    std::vector<HouseFigure> house;
    std::vector<std::string> warnings;
};

struct AnalysisOptions {
    bool tolerance = true;  ///< run the draws; without them the verdict is judged by the margin as drawn
    bool rings = true;      ///< rings with notes and shares, and the pair figures
    bool listening = true;  ///< ears and house
    /// Result of a show with the same loop_part(), made with `rings` if these are asked for: margins, rings, pairs and,
    /// where it has them, draws are taken from it rather than computed again. Null: there is none.
    std::shared_ptr<const AnalysisResult> earlier{};
};

/// Full analysis of a show that passed the reader. Absent only when the job was cancelled.
std::optional<AnalysisResult> analyse(const Show& show, const AnalysisOptions& options = {}, const Job& job = {});

/// "rings", "tight" or "holds" from the 5th percentile (absent: no loop) and the target.
Verdict verdict_of(std::optional<double> count_on_db, double target_db);
const char* to_string(Verdict verdict);

}  // namespace howlmap
