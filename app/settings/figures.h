// SPDX-License-Identifier: GPL-3.0-or-later
// Figures as the window shows them: the words of the report, as Qt strings.
#pragma once
#include <QString>
#include <optional>

#include "core/analysis/analysis.h"
#include "core/show/show.h"

namespace howlmap::app {

/// A number in the user's way of writing: "1.50" with two decimals.
QString decimal_text(double value, int decimals);
/// The same without needless zeros: "1.5", "12".
QString number_text(double value, int decimals);
QString hz_text(double hz);
QString band_text(double nominal_hz);
/// "3.2 dB", "no loop" where absent.
QString margin_text(std::optional<double> db);
/// "+1.5 dB".
QString gain_text(double db);
/// "D#6 +8 c".
QString note_text(const Ring& ring);
/// Name of anything in the show, its id where it has none.
QString name_text(const Show& show, const std::string& id);
/// Margin to count on, absent before the draws or without a loop.
std::optional<double> count_on(const AnalysisResult& result);

inline QString qstr(const std::string& text) { return QString::fromStdString(text); }

}  // namespace howlmap::app
