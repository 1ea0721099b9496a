// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/send_model.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/listening/ears.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr double kLowestSendDb = -60.0, kHighestSendDb = 160.0;  // of the show file
constexpr double kSameDb = 0.005;

/// Number of a send among all sends: mix by mix in file order.
std::vector<std::size_t> first_sends(const Show& show) {
    std::vector<std::size_t> first;
    std::size_t count = 0;
    for (const Mix& mix : show.mixes) {
        first.push_back(count);
        count += mix.sends.size();
    }
    return first;
}

EarRow row_of(const Show& show, const ChainEnergies& chains, const Performer& performer,
              const std::vector<std::size_t>& first, std::size_t count) {
    EarRow row{performer.id, std::vector<double>(count), std::vector<double>(count), 0.0, 0.0};
    for (const EarSource& source : sources_at_ear(show, chains, performer)) {
        if (source.kind == SourceKind::send) {
            const std::size_t at = first[static_cast<std::size_t>(source.mix)] + static_cast<std::size_t>(source.send);
            (source.own ? row.own : row.others)[at] += a_weighted(source.ratio);
        } else {
            (source.own ? row.own_fixed : row.others_fixed) += source.weighted();
        }
    }
    return row;
}

}  // namespace

double SendVariable::energy() const { return db_to_energy(level_db); }

bool EarRow::has_own_send() const {
    return std::any_of(own.begin(), own.end(), [](double ratio) { return ratio > 0.0; });
}

std::vector<double> SendModel::energies() const {
    std::vector<double> all;
    for (const SendVariable& send : sends) all.push_back(send.energy());
    return all;
}

SendModel send_model(const Show& show) {
    SendModel model;
    for (int m = 0; m < static_cast<int>(show.mixes.size()); ++m) {
        const auto& sends = show.mixes[static_cast<std::size_t>(m)].sends;
        for (int s = 0; s < static_cast<int>(sends.size()); ++s)
            model.sends.push_back({m, s, sends[static_cast<std::size_t>(s)].level_db});
    }
    const ChainEnergies chains(show);
    const auto first = first_sends(show);
    for (const Performer& performer : show.performers)
        model.ears.push_back(row_of(show, chains, performer, first, model.sends.size()));
    return model;
}

double weighed(const std::vector<double>& row, const std::vector<double>& energies) {
    return std::inner_product(row.begin(), row.end(), energies.begin(), 0.0);
}

EarLevels levels_at(const EarRow& row, const std::vector<double>& energies) {
    const double own = weighed(row.own, energies) + row.own_fixed;
    const double others = weighed(row.others, energies) + row.others_fixed;
    EarLevels levels{level_of(own), level_of(others), level_of(own + others), std::nullopt};
    if (levels.own_dba && levels.others_dba) levels.hear_margin_db = *levels.own_dba - *levels.others_dba;
    return levels;
}

Show with_energies(const Show& show, const SendModel& model, const std::vector<double>& energies) {
    Show after = show;
    for (std::size_t i = 0; i < model.sends.size(); ++i) {
        const SendVariable& at = model.sends[i];
        after.mixes[static_cast<std::size_t>(at.mix)].sends[static_cast<std::size_t>(at.send)].level_db =
            std::clamp(energies[i] > 0.0 ? energy_to_db(energies[i]) : kLowestSendDb, kLowestSendDb, kHighestSendDb);
    }
    return after;
}

std::vector<SendChange> send_changes(const Show& before, const Show& after) {
    std::vector<SendChange> changes;
    for (const Mix& mix : before.mixes) {
        const Mix* other = find_by_id(after.mixes, mix.id);
        if (!other) continue;
        for (const Send& send : mix.sends) {
            const Send* now = find_send(*other, send.input);
            if (now && std::abs(now->level_db - send.level_db) > kSameDb)
                changes.push_back({mix.id, send.input, send.level_db, now->level_db});
        }
    }
    return changes;
}

}  // namespace howlmap
