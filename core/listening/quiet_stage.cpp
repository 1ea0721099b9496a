// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/quiet_stage.h"

#include <algorithm>
#include <cmath>

#include "core/listening/listening.h"
#include "core/listening/restore.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr double kEndless_db = 1e5;  // of a spiral without an end
constexpr double kLowestOwn = 1e-6;  // of energy: an own send may fall by 60 dB where it is not needed

/// Everybody's present hear margin as a wish that can be restored.
std::vector<HearWish> wishes_of_now(const SendModel& model, const std::vector<double>& now) {
    std::vector<HearWish> wishes;
    for (std::size_t ear = 0; ear < model.ears.size(); ++ear) {
        const auto margin = levels_at(model.ears[ear], now).hear_margin_db;
        if (margin && model.ears[ear].has_own_send()) wishes.push_back({ear, db_to_energy(*margin), 1.0});
    }
    return wishes;
}

std::optional<double> change(const std::optional<double>& before, const std::optional<double>& after) {
    if (!before || !after) return std::nullopt;
    return *after - *before;
}

/// `model` and `energies`: with the source already louder.
Louder cost_of(const std::string& source, const Show& show, const SendModel& before, const SendModel& model,
               const std::vector<double>& energies, const MarginOf& margin) {
    Louder louder;
    louder.source = source;
    const std::vector<double> now = before.energies();
    for (std::size_t ear = 0; ear < model.ears.size(); ++ear)
        louder.performers.push_back({model.ears[ear].performer,
                                     change(levels_at(before.ears[ear], now).hear_margin_db,
                                            levels_at(model.ears[ear], energies).hear_margin_db),
                                     0.0});
    const auto wishes = wishes_of_now(before, now);
    const Restored answer = restore_hearing(model, energies, wishes);
    louder.settles = answer.settles;
    for (std::size_t w = 0; w < wishes.size(); ++w)
        louder.performers[wishes[w].ear].turned_up_db = energy_to_db(answer.factors[w]);
    if (!margin) return louder;
    louder.margin_before_db = margin(show);
    if (answer.settles) louder.margin_after_db = margin(with_energies(show, model, answer.energies));
    return louder;
}

/// The floor of every send: what is nobody's own falls by so much, own sends are left to the fixed point.
std::vector<double> lowered(const SendModel& model, double fall_db) {
    std::vector<double> energies = model.energies();
    for (std::size_t s = 0; s < energies.size(); ++s) {
        const bool own =
            std::any_of(model.ears.begin(), model.ears.end(), [s](const EarRow& row) { return row.own[s] > 0.0; });
        if (!own) energies[s] *= db_to_energy(-fall_db);
    }
    return energies;
}
}  // namespace

double Louder::total_db() const {
    double total = settles ? 0.0 : kEndless_db;
    for (const LouderCost& cost : performers) total += cost.turned_up_db;
    return total;
}

std::vector<Louder> cost_of_louder(const Show& show, const MarginOf& margin, double louder_db) {
    const SendModel before = send_model(show);
    std::vector<Louder> costs;
    for (std::size_t b = 0; b < show.backline.size(); ++b) {
        Show louder = show;
        louder.backline[b].level_1m_dba += louder_db;
        costs.push_back(cost_of(show.backline[b].id, show, before, send_model(louder), before.energies(), margin));
    }
    for (std::size_t m = 0; m < show.mixes.size(); ++m) {
        std::vector<double> energies = before.energies();
        for (std::size_t s = 0; s < energies.size(); ++s)
            if (before.sends[s].mix == static_cast<int>(m)) energies[s] *= db_to_energy(louder_db);
        costs.push_back(cost_of(show.mixes[m].id, show, before, before, energies, margin));
    }
    return costs;
}

QuietStage quietest_stage(const Show& show, const QuietStageOptions& options) {
    const SendModel model = send_model(show);
    std::vector<HearWish> wishes;
    for (std::size_t ear = 0; ear < model.ears.size(); ++ear)
        if (model.ears[ear].has_own_send()) wishes.push_back({ear, db_to_energy(options.hear_margin_db), kLowestOwn});
    const Restored lowest = restore_hearing(model, lowered(model, options.others_may_fall_db), wishes);

    QuietStage stage;
    stage.possible = lowest.settles;
    if (!lowest.settles) {
        const auto most = std::max_element(lowest.factors.begin(), lowest.factors.end());
        for (std::size_t w = 0; w < wishes.size(); ++w)
            if (lowest.factors[w] > 0.1 * *most) stage.limited_by.push_back(model.ears[wishes[w].ear].performer);
    }
    stage.after = lowest.settles ? with_energies(show, model, lowest.energies) : show;
    stage.changes = send_changes(show, stage.after);
    stage.ears_before = performer_figures(show);
    stage.ears_after = performer_figures(stage.after);
    stage.house_before = house_figures(show);
    stage.house_after = house_figures(stage.after);
    if (options.margin) {
        stage.margin_before_db = options.margin(show);
        stage.margin_after_db = options.margin(stage.after);
    }
    return stage;
}

}  // namespace howlmap
