// SPDX-License-Identifier: GPL-3.0-or-later
// The full analysis, asked for as seldom as possible: what was computed is kept, and a few of the same draws come first
// where only a choice is made.
#pragma once
#include <limits>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "core/cures/cures.h"
#include "core/loop/tolerance.h"

namespace howlmap::cures {

/// Margins and first ring of a show.
struct Findings {
    Margins margins;
    std::optional<WorstAfter> worst;
};

inline constexpr double kNoLoopDb = std::numeric_limits<double>::infinity();

class Analyst {
  public:
    /// `base`: the show that was asked about; the others differ from it by cures. `before`: its margins, where they are
    /// known already. Refers to base and job.
    Analyst(const Show& base, const std::optional<Margins>& before, const Job& job)
        : base_(base), before_(before), job_(job) {}
    /// With the draws of the show. Absent only when cancelled.
    std::optional<Findings> full(const Show& show);
    /// Margin to count on by the first 64 draws, dB; kNoLoopDb without a loop. For choosing only. Any value when
    /// cancelled.
    double screened_db(const Show& show);

    /// Margins of those draws, as far as they are below `up_to_db` or among the lowest twentieth. Any values when
    /// cancelled.
    std::vector<std::optional<DrawnMargin>> few_draws(const Show& show, double up_to_db);

  private:
    struct Screened {
        double margin_db = kNoLoopDb, up_to_db = 0.0;
        std::vector<std::optional<DrawnMargin>> draws;
    };
    /// What the first draws say of the base; how far above their 5th percentile the 15th lies.
    struct Few {
        double margin_db = 0.0, to_likely_db = 0.0;
    };
    Screened screened(const Show& show, double up_to_db);
    const Few& base_few();
    /// For a show of which some draws were screened.
    DrawHints hints(const Screened& known);

    const Show& base_;
    std::optional<Margins> before_;
    const Job& job_;
    std::optional<std::shared_ptr<const PeakForecast>> forecast_;  ///< of the base, once it was asked for
    std::vector<std::size_t> lowest_;  ///< draws that were the lowest in the first show that was fully analysed
    std::vector<std::pair<Show, Findings>> known_;
    std::vector<std::pair<Show, Screened>> screened_;
    std::optional<Few> base_few_;
};

}  // namespace howlmap::cures
