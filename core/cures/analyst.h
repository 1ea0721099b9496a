// SPDX-License-Identifier: GPL-3.0-or-later
// The full analysis, asked for as seldom as possible: what was computed is kept, and a few of the same draws come first
// where only a choice is made.
#pragma once
#include <limits>
#include <optional>
#include <utility>
#include <vector>

#include "core/cures/cures.h"

namespace howlmap::cures {

/// Margins and first ring of a show.
struct Findings {
    Margins margins;
    std::optional<WorstAfter> worst;
};

inline constexpr double kNoLoopDb = std::numeric_limits<double>::infinity();

class Analyst {
  public:
    explicit Analyst(const Job& job) : job_(job) {}
    /// With the draws of the show. Absent only when cancelled.
    std::optional<Findings> full(const Show& show);
    /// Margin to count on by the first 64 draws, dB; kNoLoopDb without a loop. For choosing only. Any value when
    /// cancelled.
    double screened_db(const Show& show);

  private:
    struct Screened {
        double margin_db = kNoLoopDb;
        double likely_db = kNoLoopDb;  ///< somewhat more than 5 draws of 100 fall below it
    };
    Screened screened(const Show& show);

    const Job& job_;
    std::vector<std::pair<Show, Findings>> known_;
    std::vector<std::pair<Show, Screened>> screened_;
};

}  // namespace howlmap::cures
