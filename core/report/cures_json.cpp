// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cures_json.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/report/json_values.h"
#include "core/units/notes.h"

namespace howlmap {
namespace {
Json json_of(const Margins& margins) {
    return {{"margin_db", number(margins.margin_db)}, {"margin_p05_db", number(margins.margin_p05_db)}};
}

/// What to do, what is lost by it and what to mind.
std::string told(const Cure& cure) {
    std::string text = cure.instruction;
    for (const std::string& more : {cure.loses, cure.caution})
        if (!more.empty()) text += " " + more;
    return text;
}

/// What is nothing but the rounding of sums, in decibels, is nothing.
double without_dust(double db) { return std::abs(db) < 1e-9 ? 0.0 : db; }

Json json_of(const Cure& cure) {
    Json changes = Json::array();
    for (const ChangedValue& value : cure.changes)
        changes.push_back(
            {{"pointer", value.pointer}, {"from", Json::parse(value.from)}, {"to", Json::parse(value.to)}});
    Json worst = nullptr;
    if (cure.worst_after) worst = {{"hz", cure.worst_after->hz}, {"note", international_note(cure.worst_after->hz)}};
    return {{"id", cure.id},
            {"kind", to_string(cure.kind)},
            {"instruction", told(cure)},
            {"changes", changes},
            {"margin_gain_db", number(cure.margin_gain_db)},
            {"count_on_gain_db", number(cure.count_on_gain_db)},
            {"tone_cost_db", without_dust(cure.tone_cost_db)},
            {"loudness_change_db", without_dust(cure.loudness_change_db)},
            {"worst_after", worst}};
}

Json json_of(const std::vector<Cure>& cures) {
    Json all = Json::array();
    for (const Cure& cure : cures) all.push_back(json_of(cure));
    return all;
}
}  // namespace

std::string cures_json(const CureReport& report) {
    Json plan = {{"steps", json_of(report.plan.steps)},
                 {"after", json_of(report.plan.after)},
                 {"reaches_target", report.plan.reaches_target}};
    if (!report.plan.reason.empty()) plan["reason"] = report.plan.reason;
    const Json json = {{"format", "howlmap-cures"},      {"version", 1},
                       {"target_db", report.target_db},  {"before", json_of(report.before)},
                       {"cures", json_of(report.cures)}, {"plan", plan}};
    return json.dump(1) + "\n";
}

}  // namespace howlmap
