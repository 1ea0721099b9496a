// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/settings/preferences.h"

#include <QLocale>
#include <QStandardPaths>
#include <algorithm>

namespace howlmap::app {
namespace {

constexpr auto kLook = "preferences/look";
constexpr auto kUnits = "preferences/new_show_units";
constexpr auto kRest = "preferences/autosave_rest_s";

template <class Enum>
Enum read(const QSettings& settings, const char* key, Enum last, Enum missing) {
    const int value = settings.value(QLatin1StringView(key), -1).toInt();
    return value >= 0 && value <= static_cast<int>(last) ? static_cast<Enum>(value) : missing;
}

}  // namespace

std::unique_ptr<QSettings> settings() {
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation);
    return std::make_unique<QSettings>(folder + QStringLiteral("/howlmap.ini"), QSettings::IniFormat);
}

Preferences Preferences::load() {
    const auto stored = settings();
    Preferences preferences;
    preferences.look = read(*stored, kLook, Look::dark, Look::system);
    preferences.new_show_units = read(*stored, kUnits, UnitChoice::imperial, UnitChoice::by_locale);
    preferences.autosave_rest_s = std::clamp(stored->value(QLatin1StringView(kRest), 3).toInt(), 1, 60);
    return preferences;
}

void Preferences::save() const {
    const auto stored = settings();
    stored->setValue(QLatin1StringView(kLook), static_cast<int>(look));
    stored->setValue(QLatin1StringView(kUnits), static_cast<int>(new_show_units));
    stored->setValue(QLatin1StringView(kRest), autosave_rest_s);
}

Units Preferences::units() const {
    if (new_show_units == UnitChoice::by_locale)
        return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? Units::imperial : Units::metric;
    return new_show_units == UnitChoice::imperial ? Units::imperial : Units::metric;
}

}  // namespace howlmap::app
