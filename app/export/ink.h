// SPDX-License-Identifier: GPL-3.0-or-later
// Ink on paper or chalk on slate. Colour is kept for risk; one accent marks selection and focus.
#pragma once
#include <QColor>

class QPalette;

namespace howlmap::app {

struct Ink {
    QColor paper;   ///< the page
    QColor stage;   ///< the stage floor, hardly different from the page
    QColor ink;     ///< objects and names
    QColor soft;    ///< edges of stage and risers, secondary text: at least 4.5:1 against the page
    QColor faint;   ///< grid
    QColor accent;  ///< selection and focus
    bool dark = false;

    /// For paper: black on white.
    static Ink for_print();
    /// Ink on paper or chalk on slate as the palette says (its Base and Text).
    static Ink from(const QPalette& palette);
};

}  // namespace howlmap::app
