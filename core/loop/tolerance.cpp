// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/tolerance.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "core/loop/draw_run.h"
#include "core/loop/drawn_models.h"
#include "core/loop/first_rings.h"
#include "core/loop/stability.h"
#include "core/units/bands.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
std::optional<double> finite(double value) {
    return std::isfinite(value) ? std::optional<double>(value) : std::nullopt;
}
}  // namespace

std::optional<DrawnMargin> drawn_margin(const Show& show, std::uint64_t draw) {
    const DrawnModels models(show);
    std::optional<DrawnMargin> margin;
    models.with(draw, [&](const LoopModel& model) {
        const Stability stability = exact_stability_of(model, false);
        if (stability.margin_db) margin = DrawnMargin{*stability.margin_db, *stability.margin_hz};
    });
    return margin;
}

double quantile(const std::vector<double>& sorted, double q) {
    const double place = q * static_cast<double>(sorted.size() - 1);
    const auto low = static_cast<std::size_t>(place);
    const double t = place - static_cast<double>(low);
    // Infinity times 0 is no number, so that an end is taken as it is.
    if (t == 0.0) return sorted[low];
    if (std::isinf(sorted[low + 1])) return sorted[low + 1];
    return sorted[low] * (1.0 - t) + sorted[low + 1] * t;
}

ToleranceFigures figures_of(const std::vector<std::optional<DrawnMargin>>& margins, std::uint64_t seed) {
    ToleranceFigures figures;
    figures.draws = static_cast<int>(margins.size());
    figures.seed = seed;
    std::vector<double> sorted;
    std::map<int, int> bands;
    for (const auto& margin : margins) {
        sorted.push_back(margin ? margin->margin_db : std::numeric_limits<double>::infinity());
        if (margin) ++bands[third_octave_of(margin->hz)];
    }
    std::sort(sorted.begin(), sorted.end());
    figures.margin_p05_db = finite(quantile(sorted, 0.05));
    figures.margin_p50_db = finite(quantile(sorted, 0.50));
    figures.margin_p95_db = finite(quantile(sorted, 0.95));
    for (const auto& [band, count] : bands)
        figures.first_ring.push_back({kNominalThirdOctaves[static_cast<std::size_t>(band)],
                                      count / static_cast<double>(margins.size()),
                                      0.0,
                                      {},
                                      {},
                                      {},
                                      {}});
    std::stable_sort(figures.first_ring.begin(), figures.first_ring.end(),
                     [](const auto& a, const auto& b) { return a.probability > b.probability; });
    return figures;
}

std::shared_ptr<const PeakForecast> learned_forecast(const Show& show, const Job& job) {
    return DrawRun(show, 0, job).forecast();
}

std::optional<ToleranceFigures> tolerance_figures(const Show& show, const Job& job) {
    DrawRun draws(show, show.tolerance.draws, job);
    draws.run(kLeastLoop);
    if (job.cancelled()) return std::nullopt;
    ToleranceFigures figures = figures_of(draws.margins(), show.tolerance.seed);
    name_first_rings(show, draws.margins(), figures, job);
    if (job.cancelled()) return std::nullopt;
    return figures;
}

std::vector<std::optional<DrawnMargin>> drawn_margins(const Show& show, int draws, const Job& job) {
    DrawRun run(show, draws, job);
    run.run(kLeastLoop);
    return run.margins();
}

namespace {
/// Order statistics that the 5th percentile lies between, the lower ones included.
std::size_t needed_of(std::size_t draws) { return std::min(draws, (draws - 1) / 20 + 2); }

/// Loop gain above which crossings are looked for; goes down until enough draws have one.
void run_until_enough(DrawRun& run, double least, const Job& job) {
    constexpr double kFurtherDb = 2.0;
    const std::size_t needed = needed_of(run.margins().size());
    for (double further = kFurtherDb; !job.cancelled(); further *= 2.0) {
        run.run(least);
        const auto enough = run.lowest(needed);
        if ((enough && db_to_ratio(-*enough) >= least) || least <= kLeastLoop) break;
        least = std::max(kLeastLoop, least * db_to_ratio(-further));
    }
}

double least_of(double likely_db) { return std::max(kLeastLoop, db_to_ratio(-likely_db)); }

/// The draws in the order in which they are looked into, some at a time: those that may be the lowest first.
std::vector<std::vector<std::size_t>> batches_of(std::size_t draws, const std::vector<std::size_t>& first) {
    constexpr std::size_t kBatch = 250;
    std::vector<std::vector<std::size_t>> batches{{}};
    std::vector<bool> taken(draws);
    for (const std::size_t d : first) {
        if (d >= draws) continue;
        batches.front().push_back(d);
        taken[d] = true;
    }
    for (std::size_t d = 0; d < draws; ++d) {
        if (taken[d]) continue;
        if (batches.size() == 1 || batches.back().size() == kBatch) batches.emplace_back();
        batches.back().push_back(d);
    }
    return batches;
}

/// Those with the lowest margins, at most so many, lowest first.
std::vector<std::size_t> lowest_draws(const std::vector<std::optional<DrawnMargin>>& margins, std::size_t most) {
    std::vector<std::size_t> draws;
    for (std::size_t d = 0; d < margins.size(); ++d)
        if (margins[d]) draws.push_back(d);
    std::ranges::stable_sort(draws, {}, [&](std::size_t d) { return margins[d]->margin_db; });
    draws.resize(std::min(draws.size(), most));
    return draws;
}
}  // namespace

std::vector<std::optional<DrawnMargin>> lowest_margins(const Show& show, int draws, double likely_db, const Job& job,
                                                       const DrawHints& hints) {
    DrawRun run(show, draws, job, hints);
    run_until_enough(run, least_of(likely_db), job);
    return run.margins();
}

std::optional<CountOn> margin_to_count_on(const Show& show, double likely_db, const Job& job, const DrawHints& hints) {
    DrawRun run(show, show.tolerance.draws, job, hints);
    const std::size_t needed = needed_of(run.margins().size());
    double least = least_of(likely_db);
    for (const auto& batch : batches_of(run.margins().size(), hints.lowest)) {
        run.run(least, batch);
        // The lowest of some draws are no lower than those of all: what is better than these does not count.
        if (const auto enough = run.lowest(needed)) least = std::max(least, db_to_ratio(-*enough));
    }
    run_until_enough(run, least, job);
    if (job.cancelled()) return std::nullopt;
    return CountOn{figures_of(run.margins(), show.tolerance.seed).margin_p05_db,
                   lowest_draws(run.margins(), 2 * needed)};
}

}  // namespace howlmap
