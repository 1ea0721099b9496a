// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/panels/inspector/number_rows.h"

namespace howlmap::app {

/// Absorption of a surface octave by octave; an empty table stands for one number for all frequencies (the field above
/// it).
NumberTableSource absorption_table(const char* title, const std::function<Surface*(Show&)>& find);
/// A spectrum that is given by third-octave bands; for a named one the table does not apply.
NumberTableSource spectrum_table(const std::function<Spectrum*(Show&)>& find);

}  // namespace howlmap::app
