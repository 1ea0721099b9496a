// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/draw_run.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <atomic>
#include <limits>
#include <numeric>

#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr std::size_t kLearnedFrom = 32, kWorthLearning = 300;  // draws
constexpr double kByFar = 0.7;                                  // a forecast of another show may be this much too low
}  // namespace

DrawRun::DrawRun(const Show& show, int draws, const Job& job, const DrawHints& hints)
    : shared_(show, Purpose::draws),
      job_(job),
      margins_(hints.known),
      looked_to_(margins_.size(), std::max(kLeastLoop, db_to_ratio(-hints.known_to_db))),
      forecast_(hints.forecast) {
    margins_.resize(static_cast<std::size_t>(draws));
    looked_to_.resize(margins_.size(), std::numeric_limits<double>::infinity());
}

void DrawRun::run(double least) {
    std::vector<std::size_t> all(margins_.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    run(least, all);
}

void DrawRun::run(double least, const std::vector<std::size_t>& draws) {
    if (shared_.model().empty()) return;
    if (!learned_ && margins_.size() >= kWorthLearning) learn(least);
    std::atomic<std::size_t> done = 0;
    tbb::parallel_for(std::size_t{0}, draws.size(), [&](std::size_t i) {
        if (job_.cancelled()) return;
        const std::size_t d = draws[i];
        if (!margins_[d] && looked_to_[d] > least) {
            margins_[d] = scans_.local().margin(d, least, forecast_.get());
            looked_to_[d] = least;
        }
        job_.report(static_cast<double>(++done) / static_cast<double>(draws.size()));
    });
}

std::shared_ptr<const PeakForecast> DrawRun::forecast() {
    if (!learned_ && !shared_.model().empty()) learn(kLeastLoop);
    return forecast_ ? std::make_shared<const PeakForecast>(forecast_->for_others()) : nullptr;
}

/// From stretches in which a loop gain of `least` is not out of the question by far.
void DrawRun::learn(double least) {
    learned_ = true;
    if (!shared_.room()) return;
    std::vector<std::vector<bool>> chances(kLearnedFrom);
    tbb::parallel_for(std::size_t{0}, kLearnedFrom, [&](std::size_t d) {
        if (!job_.cancelled()) chances[d] = scans_.local().chances(d, kByFar * least, forecast_.get());
    });
    if (job_.cancelled()) return;
    std::vector<bool> wanted = chances.front();
    for (const auto& draw : chances)
        for (std::size_t i = 0; i < wanted.size(); ++i) wanted[i] = wanted[i] || draw[i];
    std::vector<std::vector<double>> peaks(kLearnedFrom);
    tbb::parallel_for(std::size_t{0}, kLearnedFrom, [&](std::size_t d) {
        if (!job_.cancelled()) peaks[d] = scans_.local().peaks(d, wanted);
    });
    if (job_.cancelled()) return;
    const PeakForecast own(scans_.local().stretches(), peaks);
    forecast_ = std::make_shared<const PeakForecast>(forecast_ ? own.or_else(*forecast_) : own);
}

std::optional<double> DrawRun::lowest(std::size_t n) const {
    std::vector<double> known;
    for (const auto& margin : margins_)
        if (margin) known.push_back(margin->margin_db);
    if (known.size() < n) return std::nullopt;
    const auto place = known.begin() + static_cast<std::ptrdiff_t>(n - 1);
    std::nth_element(known.begin(), place, known.end());
    return *place;
}

}  // namespace howlmap
