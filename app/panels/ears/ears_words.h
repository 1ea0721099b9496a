// SPDX-License-Identifier: GPL-3.0-or-later
// What the solvers of the listening side found, in words, and the rows of the tables beside them.
#pragma once
#include <QStringList>
#include <array>
#include <memory>

#include "core/analysis/analysis.h"
#include "core/listening/masking.h"
#include "core/listening/quiet_stage.h"
#include "core/listening/send_solver.h"

namespace howlmap::app {

/// "92 dBA", "+12.4 dB", "45 min", "over 24 h"; a dash where there is none.
QString dba_text(std::optional<double> level);
QString db_text(std::optional<double> gain);
QString minutes_text(std::optional<double> minutes);

/// One line a player: from, to, and what limits it where the wish is not met; then the margin and the sends.
QString solution_words(const Show& show, const SendSolution& solution);
/// Margin and wash before and after, who has what at the ear, and the sends.
QString quiet_words(const Show& before, const QuietStage& quiet);
/// One line a source, the dearest first: what each player loses and how far she turns up, and the margin.
QString louder_words(const Show& show, const std::vector<Louder>& costs);

/// Place, wash, against target.
QList<QStringList> house_rows(const Show& show, const AnalysisResult* result);
/// For each place, in the same order: who makes the wash there, what turning or moving them does.
QStringList wash_words(const Show& show);
/// Loudspeaker, what it is asked for at 1 m, what is left below its maximum.
QList<QStringList> load_rows(const Show& show);
/// Band, own, others, margin of one ear; bands where both are silent are left out.
QList<QStringList> band_rows(const EarSpectrum& spectrum);
/// What is masked at an ear, or that nothing is.
QString masked_words(const EarSpectrum& spectrum);

}  // namespace howlmap::app
