// SPDX-License-Identifier: GPL-3.0-or-later
// What the program remembers between runs. View state lives here, never in a show file.
#pragma once
#include <QSettings>
#include <memory>

#include "core/show/show.h"

namespace howlmap::app {

/// The settings file; a damaged one reads as empty.
std::unique_ptr<QSettings> settings();

enum class Look { system, light, dark };
enum class UnitChoice { by_locale, metric, imperial };

struct Preferences {
    Look look = Look::system;
    UnitChoice new_show_units = UnitChoice::by_locale;
    int autosave_rest_s = 3;  ///< 1..60

    static Preferences load();
    void save() const;
    /// Units of a new show: feet and inches where the locale is that of the United States, unless chosen otherwise.
    Units units() const;
};

}  // namespace howlmap::app
