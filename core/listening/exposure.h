// SPDX-License-Identifier: GPL-3.0-or-later
// How long an ear may stay at a level. An estimate for planning, no hearing-safety measurement.
#pragma once

namespace howlmap {

/// Minutes at a level in dBA that use up the daily dose: 480 / 2^((L - 85) / 3), not capped.
/// Source: NIOSH publication 98-126 (1998), section 1.1.1.
double niosh_minutes(double level_dba);
/// The same by 29 CFR 1910.95, Table G-16a: 480 / 2^((L - 90) / 5), not capped.
double osha_minutes(double level_dba);

/// Daily dose in per cent of so many minutes at a level (100: used up). minutes >= 0.
double niosh_dose_pct(double level_dba, double minutes);
double osha_dose_pct(double level_dba, double minutes);

/// Level in dBA that could be borne for these minutes. minutes > 0.
double niosh_level_dba(double minutes);
double osha_level_dba(double minutes);

}  // namespace howlmap
