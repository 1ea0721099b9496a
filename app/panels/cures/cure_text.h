// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

#include "core/cures/cures.h"

namespace howlmap::app {

/// "Aim the microphone".
QString kind_text(CureKind kind);
/// "Aim microphone: Tessa voice".
QString cure_title(const Show& show, const Cure& cure);
/// What to do, what it buys, what it loses, what to mind. Rich text.
QString cure_words(const Cure& cure);
/// The figures before and after as a small table. Rich text.
QString cure_figures(const Margins& before, const Cure& cure);
/// The plan in steps. Rich text.
QString plan_words(const CureReport& report);
/// "+3.2 dB", a dash where there is no loop on one side.
QString gain_or_dash(std::optional<double> db);

}  // namespace howlmap::app
