// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/tolerance.h"

#include <oneapi/tbb/enumerable_thread_specific.h>
#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <limits>
#include <map>

#include "core/loop/blocks/block_scan.h"
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

namespace {
constexpr std::size_t kLearnedFrom = 32, kWorthLearning = 300;  // draws

/// Margins of all draws that have none yet; those above a limit stay without. On all cores.
class DrawRun {
  public:
    DrawRun(const Show& show, int draws, const Job& job, std::shared_ptr<const PeakForecast> forecast = {})
        : shared_(show, Purpose::draws),
          job_(job),
          margins_(static_cast<std::size_t>(draws)),
          forecast_(std::move(forecast)) {}

    /// Crossings of loop gains above `least`.
    void run(double least) {
        if (shared_.model().empty()) return;
        tbb::enumerable_thread_specific<BlockScan> scans([&] { return BlockScan(shared_); });
        if (!forecast_ && margins_.size() >= kWorthLearning) learn(scans);
        std::atomic<std::size_t> done = 0;
        tbb::parallel_for(std::size_t{0}, margins_.size(), [&](std::size_t d) {
            if (job_.cancelled()) return;
            if (!margins_[d]) margins_[d] = scans.local().margin(d, least, forecast_.get());
            job_.report(static_cast<double>(++done) / static_cast<double>(margins_.size()));
        });
    }
    std::shared_ptr<const PeakForecast> forecast() {
        if (shared_.model().empty()) return {};
        tbb::enumerable_thread_specific<BlockScan> scans([&] { return BlockScan(shared_); });
        learn(scans);
        return forecast_;
    }
    const std::vector<std::optional<DrawnMargin>>& margins() const { return margins_; }
    std::size_t found() const {
        return static_cast<std::size_t>(
            std::count_if(margins_.begin(), margins_.end(), [](const auto& margin) { return margin.has_value(); }));
    }

  private:
    template <class Scans>
    void learn(Scans& scans) {
        if (!shared_.room()) return;
        std::vector<std::vector<double>> peaks(kLearnedFrom);
        tbb::parallel_for(std::size_t{0}, peaks.size(), [&](std::size_t d) {
            if (!job_.cancelled()) peaks[d] = scans.local().peaks(d);
        });
        if (!job_.cancelled()) forecast_ = std::make_shared<const PeakForecast>(scans.local().intervals(), peaks);
    }

    BlockModel shared_;
    const Job& job_;
    std::vector<std::optional<DrawnMargin>> margins_;
    std::shared_ptr<const PeakForecast> forecast_;
};
}  // namespace

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

std::vector<std::optional<DrawnMargin>> lowest_margins(const Show& show, int draws, double likely_db, const Job& job,
                                                       std::shared_ptr<const PeakForecast> forecast) {
    constexpr double kFurtherDb = 2.0;
    DrawRun run(show, draws, job, std::move(forecast));
    // Both order statistics that the percentile lies between.
    const std::size_t needed = std::min(run.margins().size(), (run.margins().size() - 1) / 20 + 2);
    double least = std::max(kLeastLoop, db_to_ratio(-likely_db));
    for (double further = kFurtherDb; !job.cancelled(); further *= 2.0) {
        run.run(least);
        if (run.found() >= needed || least <= kLeastLoop) break;
        least = std::max(kLeastLoop, least * db_to_ratio(-further));
    }
    return run.margins();
}

std::optional<CountOn> margin_to_count_on(const Show& show, double likely_db, const Job& job,
                                          std::shared_ptr<const PeakForecast> forecast) {
    const auto lowest = lowest_margins(show, show.tolerance.draws, likely_db, job, std::move(forecast));
    if (job.cancelled()) return std::nullopt;
    return CountOn{figures_of(lowest, show.tolerance.seed).margin_p05_db};
}

}  // namespace howlmap
