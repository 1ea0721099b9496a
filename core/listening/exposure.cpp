// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/exposure.h"

#include <cmath>

namespace howlmap {
namespace {
struct Rule {
    double criterion_dba, exchange_db;
};
constexpr Rule kNiosh{85.0, 3.0}, kOsha{90.0, 5.0};
constexpr double kDayMinutes = 480.0;

double minutes_by(Rule rule, double level_dba) {
    return kDayMinutes / std::exp2((level_dba - rule.criterion_dba) / rule.exchange_db);
}
double level_by(Rule rule, double minutes) {
    return rule.criterion_dba + rule.exchange_db * std::log2(kDayMinutes / minutes);
}
}  // namespace

double niosh_minutes(double level_dba) { return minutes_by(kNiosh, level_dba); }
double osha_minutes(double level_dba) { return minutes_by(kOsha, level_dba); }
double niosh_dose_pct(double level_dba, double minutes) { return 100.0 * minutes / niosh_minutes(level_dba); }
double osha_dose_pct(double level_dba, double minutes) { return 100.0 * minutes / osha_minutes(level_dba); }
double niosh_level_dba(double minutes) { return level_by(kNiosh, minutes); }
double osha_level_dba(double minutes) { return level_by(kOsha, minutes); }

}  // namespace howlmap
