// SPDX-License-Identifier: GPL-3.0-or-later
// Which levels to set so that players hear what they wish: linear least squares in energy with bounds.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/listening/send_model.h"

namespace howlmap {

enum class WishKind {
    own_level,   ///< her own sound at her ear, dBA
    ear_level,   ///< everything at her ear, dBA
    hear_margin  ///< own over others, dB
};

struct Wish {
    std::string performer;
    WishKind kind = WishKind::hear_margin;
    double value_db = 0.0;
};

enum class Limit {
    none,
    no_own_send,  ///< nothing of her own is in the mix she hears
    margin,       ///< the loops would ring before
    loudspeaker,  ///< a loudspeaker is at its max_spl_db
    neighbour,    ///< what others send or play stands in the way
    range         ///< a level would leave -60..160 dB
};

/// What became of a wish.
struct WishOutcome {
    Wish wish;
    std::optional<double> before_db, after_db;
    bool met = false;  ///< to 0.05 dB
    Limit limit = Limit::none;
    std::string reason;  ///< one sentence when it is not met
};

struct SolveOptions {
    /// Margin as drawn of a show, absent without a loop; empty: margins are not looked at.
    std::function<std::optional<double>(const Show&)> margin;
    double target_margin_db = 6.0;  ///< raising stops there; a show that is below already may not lose more
};

struct SendSolution {
    std::vector<WishOutcome> outcomes;  ///< in the order of the wishes
    std::vector<SendChange> changes;
    Show after;
    std::optional<double> margin_before_db, margin_after_db;
    bool all_met() const;
};

/// Sets the own sends of each wishing performer (all of hers in her mix by the same number of dB) so that the wishes
/// come as near as can be, all together. Wishes: at most one a performer. Unknown performers count as not met.
SendSolution solve_sends(const Show& show, const std::vector<Wish>& wishes, const SolveOptions& options = {});

}  // namespace howlmap
