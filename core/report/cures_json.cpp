// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cures_json.h"

#include <cmath>
#include <nlohmann/json.hpp>

namespace howlmap {
namespace {
using Json = nlohmann::ordered_json;

Json number(const std::optional<double>& value) {
    return value && std::isfinite(*value) ? Json(*value) : Json(nullptr);
}

Json json_of(const Margins& margins) {
    return {{"margin_db", number(margins.margin_db)}, {"margin_p05_db", number(margins.margin_p05_db)}};
}

Json json_of(const Cure& cure) {
    Json changes = Json::array();
    for (const ChangedValue& value : cure.changes)
        changes.push_back(
            {{"pointer", value.pointer}, {"from", Json::parse(value.from)}, {"to", Json::parse(value.to)}});
    Json worst = nullptr;
    if (cure.worst_after) worst = {{"hz", cure.worst_after->hz}, {"note", cure.worst_after->note}};
    return {{"id", cure.id},
            {"kind", to_string(cure.kind)},
            {"instruction", cure.instruction},
            {"buys", cure.buys},
            {"loses", cure.loses},
            {"caution", cure.caution},
            {"changes", changes},
            {"margin_gain_db", number(cure.margin_gain_db)},
            {"count_on_gain_db", number(cure.count_on_gain_db)},
            {"tone_cost_db", cure.tone_cost_db},
            {"loudness_change_db", cure.loudness_change_db},
            {"worst_after", worst},
            {"after", json_of(cure.margins_after)},
            {"trouble", cure.trouble},
            {"movement_m", cure.movement_m}};
}

Json json_of(const std::vector<Cure>& cures) {
    Json all = Json::array();
    for (const Cure& cure : cures) all.push_back(json_of(cure));
    return all;
}
}  // namespace

std::string cures_json(const CureReport& report) {
    const Json json = {{"format", "howlmap-cures"},
                       {"version", 1},
                       {"target_db", report.target_db},
                       {"before", json_of(report.before)},
                       {"cures", json_of(report.cures)},
                       {"plan",
                        {{"steps", json_of(report.plan.steps)},
                         {"after", json_of(report.plan.after)},
                         {"reaches_target", report.plan.reaches_target},
                         {"reason", report.plan.reason}}}};
    return json.dump(1) + "\n";
}

}  // namespace howlmap
