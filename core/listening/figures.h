// SPDX-License-Identifier: GPL-3.0-or-later
// What players hear and what reaches the house. Levels are A-weighted (IEC 61672-1) dB; absent means silent.
#pragma once
#include <optional>
#include <string>

namespace howlmap {

struct PerformerFigure {
    std::string id;
    std::optional<double> ear_dba, own_dba, others_dba, hear_margin_db;
    std::optional<double> niosh_minutes, osha_minutes;  ///< permitted by the estimate, not capped
};

struct HouseFigure {
    std::string id;
    std::optional<double> wash_dba, against_target_db;
};

}  // namespace howlmap
