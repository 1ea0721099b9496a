// SPDX-License-Identifier: GPL-3.0-or-later
// What to count on: the margin over many draws of a stage that is not quite as drawn.
#pragma once
#include <memory>
#include <optional>
#include <vector>

#include "core/loop/figures.h"
#include "core/show/show.h"
#include "core/units/job.h"

namespace howlmap {

class PeakForecast;

/// Strongest crossing of one draw.
struct DrawnMargin {
    double margin_db = 0.0;
    double hz = 0.0;
};
/// Margin of one draw by the full analysis, slowly and plainly: each draw a show of its own. Absent without a crossing
/// above -60 dB.
std::optional<DrawnMargin> drawn_margin(const Show& show, std::uint64_t draw);

/// What some draws of a show say of the others, and of those of shows that differ from it by a cure or two: a draw is
/// wrong by a tenth of a decibel about once in 10^4, and takes half the time. Null without a room, and when cancelled.
std::shared_ptr<const PeakForecast> learned_forecast(const Show& show, const Job& job = {});

/// Percentiles and first rings of a show's draws, on all cores. Absent when cancelled.
std::optional<ToleranceFigures> tolerance_figures(const Show& show, const Job& job = {});

/// What is known of a show's draws beforehand: only the time depends on it.
struct DrawHints {
    /// May be null. Where it leaves a chance, many draws of a show are learned from as well.
    std::shared_ptr<const PeakForecast> forecast;
    /// Margins of its first draws; those that are absent are better than `known_to_db`.
    std::vector<std::optional<DrawnMargin>> known;
    double known_to_db = 0.0;
    std::vector<std::size_t> lowest;  ///< draws that may well be among the lowest twentieth, each once
};

/// The 5th percentile of a show's draws alone.
struct CountOn {
    std::optional<double> margin_db;  ///< absent when fewer than 95 draws of 100 have a loop
    std::vector<std::size_t> lowest;  ///< about the lowest tenth of the draws, lowest first
};
/// The same 5th percentile as tolerance_figures (to 0.01 dB) in less time: draws that are better than needed for it are
/// not looked into. `likely_db`: a margin that somewhat more than 5 draws of 100 fall below; only the time depends on
/// how good a guess it is. Absent when cancelled.
std::optional<CountOn> margin_to_count_on(const Show& show, double likely_db, const Job& job = {},
                                          const DrawHints& hints = {});

/// Margins of the first draws of a show, as many as there are or 0, on all cores; those without a loop are absent. Any
/// values when cancelled.
std::vector<std::optional<DrawnMargin>> drawn_margins(const Show& show, int draws, const Job& job = {});

/// The same of those draws only that are not better than `likely_db`, or better than that until their 5th percentile is
/// among them; the others are absent.
std::vector<std::optional<DrawnMargin>> lowest_margins(const Show& show, int draws, double likely_db,
                                                       const Job& job = {}, const DrawHints& hints = {});

/// The figures from margins of all draws; a draw without one counts as infinite.
ToleranceFigures figures_of(const std::vector<std::optional<DrawnMargin>>& margins, std::uint64_t seed);

/// Quantile q (0..1) of values sorted rising, linear between order statistics at q (n - 1). May be infinite. n of 1 or
/// more.
double quantile(const std::vector<double>& sorted, double q);

}  // namespace howlmap
