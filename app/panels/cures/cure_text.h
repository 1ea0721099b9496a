// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

#include "core/cures/cures.h"

namespace howlmap::app {

/// "Aim the microphone".
QString kind_text(CureKind kind);
/// "Aim microphone: Tessa voice".
QString cure_title(const Show& show, const Cure& cure);
/// What to do to `from`, what it buys, what it loses, what to mind. Rich text.
QString cure_words(const Show& from, const Cure& cure);
/// The figures before and after as a small table. Rich text.
QString cure_figures(const Margins& before, const Cure& cure);
/// The plan for `from` in steps. Rich text.
QString plan_words(const Show& from, const CureReport& report);
/// "+3.2 dB"; "no loop" where none is left, a dash where there was none before.
QString gained_text(std::optional<double> gain_db, std::optional<double> margin_after_db);

}  // namespace howlmap::app
