// SPDX-License-Identifier: GPL-3.0-or-later
// Ink on paper or chalk on slate, by palette roles only. Colour is kept for risk; one accent marks selection and focus.
#pragma once
#include <QFont>
#include <QPalette>

#include "app/settings/preferences.h"

class QWidget;

namespace howlmap::app {

QPalette light_palette();
QPalette dark_palette();
/// Whether a palette is light on dark.
bool is_dark(const QPalette& palette);

/// Sets style and palette of the whole application. `system` follows what the desktop had before the first call.
void apply_look(Look look);

/// The two type sizes of a panel: the widget's own, and this one for the figures that count.
QFont figure_font(const QFont& base);
/// The same font with digits that are all equally wide.
QFont tabular(QFont font);

}  // namespace howlmap::app
