// SPDX-License-Identifier: GPL-3.0-or-later
// How loudness feeds on itself: what a louder neighbour costs everybody, and the quietest stage at which all still hear
// themselves.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/listening/figures.h"
#include "core/listening/send_model.h"

namespace howlmap {

using MarginOf = std::function<std::optional<double>(const Show&)>;  ///< margin as drawn, dB; absent without a loop

/// What one performer pays when something gets louder.
struct LouderCost {
    std::string performer;
    std::optional<double> hear_margin_change_db;  ///< if nobody answers; absent where she has no hear margin
    double turned_up_db = 0.0;                    ///< of her own sends, once everybody has turned up to hear as before
};

/// What a louder source costs everyone.
struct Louder {
    std::string source;  ///< id of a backline item or of a mix
    std::vector<LouderCost> performers;
    bool settles = true;  ///< false: each answer calls for another, and there is no end
    std::optional<double> margin_before_db, margin_after_db;  ///< of the loops, before and when everybody has answered
    double total_db() const;  ///< what all turn up together, more than anything that ends where there is no end
};

/// The spiral: each backline item and each mix in turn gets `louder_db` louder (3 dB is common practice for "a bit
/// up"), then every performer turns her own sends up until her hear margin is what it was.
std::vector<Louder> cost_of_louder(const Show& show, const MarginOf& margin = {}, double louder_db = 3.0);

struct QuietStageOptions {
    double hear_margin_db = 0.0;      ///< that every performer with an own send is to have, at least
    double others_may_fall_db = 6.0;  ///< how far what is not the listener's own may be lowered in her mix
    MarginOf margin;
};

struct QuietStage {
    bool possible = true;  ///< false: no levels let all hear themselves; `limited_by` says who cannot
    std::vector<std::string> limited_by;
    std::vector<SendChange> changes;
    Show after;
    std::vector<PerformerFigure> ears_before, ears_after;
    std::vector<HouseFigure> house_before, house_after;
    std::optional<double> margin_before_db, margin_after_db;
};

/// The lowest levels of all sends together at which every performer with an own send hears herself with the wished hear
/// margin. The conditions are linear in energy with non-negative coefficients, so there is one solution that is lowest
/// in every send at once (R. D. Yates, A framework for uplink power control, IEEE J. Sel. Areas Commun. 13, 1995).
QuietStage quietest_stage(const Show& show, const QuietStageOptions& options = {});

}  // namespace howlmap
