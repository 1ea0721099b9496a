// SPDX-License-Identifier: GPL-3.0-or-later
// Ears as linear functions of the energies of the sends: what every question about levels is solved with.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/show/show.h"

namespace howlmap {

/// One send: positions of its mix in the show and of the send in the mix.
struct SendVariable {
    int mix = -1, send = -1;
    double level_db = 0.0;
    double energy() const;
};

/// One performer's ear: A-weighted energy per unit of each send's energy, and what does not depend on sends.
struct EarRow {
    std::string performer;
    std::vector<double> own, others;             ///< one a send
    double own_fixed = 0.0, others_fixed = 0.0;  ///< her own acoustic sound; backline
    bool has_own_send() const;
};

/// Levels in dB at an ear for given energies of all sends; absent for silence.
struct EarLevels {
    std::optional<double> own_dba, others_dba, ear_dba, hear_margin_db;
};

struct SendModel {
    std::vector<SendVariable> sends;
    std::vector<EarRow> ears;  ///< in the order of the performers
    std::vector<double> energies() const;
};

SendModel send_model(const Show& show);
/// What energies make by a row of factors (EarRow::own or ::others).
double weighed(const std::vector<double>& row, const std::vector<double>& energies);
EarLevels levels_at(const EarRow& row, const std::vector<double>& energies);
/// The show with its sends set to these energies, in the order of the model; levels are held within -60..160 dB.
Show with_energies(const Show& show, const SendModel& model, const std::vector<double>& energies);

/// What changed in a send: "mix", "input" are ids.
struct SendChange {
    std::string mix, input;
    double from_db = 0.0, to_db = 0.0;
};
/// All sends whose level differs by more than 0.005 dB.
std::vector<SendChange> send_changes(const Show& before, const Show& after);

}  // namespace howlmap
