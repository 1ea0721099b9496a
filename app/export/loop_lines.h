// SPDX-License-Identifier: GPL-3.0-or-later
// The loops that matter as lines from loudspeaker to microphone: heavier and darker as they near ringing.
#pragma once
#include <QLineF>
#include <optional>
#include <string>
#include <vector>

#include "app/export/plan_style.h"
#include "app/export/risk_scale.h"
#include "core/analysis/analysis.h"

namespace howlmap::app {

struct LoopLine {
    std::string input, loudspeaker;
    QLineF page;             ///< from the loudspeaker to the input
    double margin_db = 0.0;  ///< of this path alone, at its worst phase
    double hz = 0.0;         ///< its worst frequency, or that of the ring it is lit for
    bool lit = false;        ///< carries a good part of the ring that is selected
    bool labelled = false;   ///< the one line that says its frequency
    friend bool operator==(const LoopLine&, const LoopLine&) = default;
};

inline constexpr double kLoopsWithinDb = 12.0;  ///< of the worst
inline constexpr double kLitShare = 0.2;        ///< of a ring

/// One line for each loudspeaker and input with a loop within 12 dB of the worst, the worst last. Those of the
/// highlighted ring are there in any case.
std::vector<LoopLine> loop_lines(const Show& show, const AnalysisResult& result, const std::optional<Ring>& highlight);
void paint_loop_line(QPainter& painter, const LoopLine& line, const PlanStyle& style, const RiskScale& scale);
/// Area that the drawn line takes, its label included.
QRectF bounds_of(const LoopLine& line, const PlanStyle& style);
/// "Wedge 1 to Fiddle: 3.2 dB left at 415 Hz by this path alone".
QString loop_words(const Show& show, const LoopLine& line);

}  // namespace howlmap::app
