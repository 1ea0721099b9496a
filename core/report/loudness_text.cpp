// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/loudness_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

#include "core/listening/quiet_stage.h"
#include "core/report/check_text.h"
#include "core/report/translated.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::report {
namespace {

constexpr std::size_t kSources = 3;
constexpr double kWorthTelling_db = 0.05;  // shows in one digit

std::string source_name(const Show& show, const std::string& id) {
    const std::string name = object_name(show, id);
    return find_by_id(show.mixes, id) ? f("Mix {}", name) : name;
}

std::string louder_line(const Show& show, const Louder& louder) {
    if (!louder.settles)
        return f("  {}: each answer calls for another, and there is no end\n", source_name(show, louder.source));
    std::vector<std::string> paid;
    for (const LouderCost& cost : louder.performers)
        if (cost.turned_up_db > kWorthTelling_db)
            paid.push_back(localised("{} {:.1f} dB", object_name(show, cost.performer), cost.turned_up_db));
    return fmt::format("  {}: {}\n", source_name(show, louder.source), fmt::join(paid, ", "));
}

std::string dearest(const Show& show) {
    auto costs = cost_of_louder(show);
    std::ranges::stable_sort(costs, std::ranges::greater{}, &Louder::total_db);
    std::string lines;
    for (const Louder& louder : std::span(costs).first(std::min(kSources, costs.size())))
        if (louder.total_db() > kWorthTelling_db) lines += louder_line(show, louder);
    if (lines.empty()) return {};
    return fmt::format("\n{}\n{}", t("If one gets 3 dB louder: how far each turns up to hear as before"), lines);
}

std::string from_to(const Show& show, const std::string& id, const std::optional<double>& before,
                    const std::optional<double>& after) {
    if (!before || !after) return {};
    return f("  {}: {:.0f} dBA, then {:.0f} dBA\n", object_name(show, id), *before, *after);
}

std::string quietest(const Show& show) {
    const auto rows = send_model(show).ears;
    if (std::ranges::count_if(rows, &EarRow::has_own_send) < 2) return {};  // nobody to agree with
    const QuietStage quiet = quietest_stage(show);
    if (quiet.changes.empty() && quiet.possible) return {};
    std::string text = fmt::format("\n{}\n", t("Quietest stage on which everybody hears herself over the others"));
    if (!quiet.possible) {
        std::vector<std::string> names;
        for (const std::string& id : quiet.limited_by) names.push_back(object_name(show, id));
        return text + f("  no levels make it; in each other's way are {}\n", listed(names));
    }
    for (std::size_t i = 0; i < quiet.ears_before.size(); ++i)
        text += from_to(show, quiet.ears_before[i].id, quiet.ears_before[i].ear_dba, quiet.ears_after[i].ear_dba);
    for (std::size_t i = 0; i < quiet.house_before.size(); ++i)
        text += from_to(show, quiet.house_before[i].id, quiet.house_before[i].wash_dba, quiet.house_after[i].wash_dba);
    return text + t("  The Ears tab sets it and tells what it does to the margin.\n");
}

}  // namespace

std::string loudness_text(const Show& show) { return dearest(show) + quietest(show); }

}  // namespace howlmap::report
