// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/block_scan.h"

#include <algorithm>

#include "core/loop/crossings.h"
#include "core/loop/locus_step.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr double kStepsATurn = 8.0;  // 45 deg a step for the most delayed path; most turn far less
constexpr int kDeepest = 5;          // a block, then each interval of it divided 15-fold, again and again
/// How much larger a locus may be between two points than interpolation says, and than at the points.
constexpr double kSlack = 1.1;
constexpr double kSure = 1e-3;  // 0.01 dB

/// About how wrong the size between two points is: a locus that turns by b and grows by a (nepers) between them bends away from the
/// spiral through both by an eighth of its second difference, which is of the order of a^2 + b^2.
double interpolation_error(const LocusStep& step) {
    const double turn = step.turn(), growth = std::log(std::abs(step.to) / std::abs(step.from));
    return 0.125 * (turn * turn + growth * growth);
}
}  // namespace

BlockModel::BlockModel(const Show& show)
    : model_(show),
      plan_(model_),
      timing_(timing_of(model_)),
      grid_(block_grid(model_, timing_, kStepsATurn,
                       show.stage.room ? std::optional(2.2 / show.stage.room->rt60_s) : std::nullopt)),
      wiring_(wiring_of(model_)),
      tables_(model_, grid_.nodes),
      chains_(model_, wiring_, timing_.common_s, grid_),
      bounds_(model_, wiring_, grid_) {
    if (show.stage.room) room_.emplace(model_, grid_.nodes);
}

BlockScan::BlockScan(const BlockModel& shared)
    : shared_(&shared),
      stance_(shared.plan().as_drawn()),
      wiring_(shared.wiring()),
      placement_(shared.model(), shared.tables()),
      h_(wiring_.inputs * wiring_.speakers),
      scratch_(wiring_.inputs * wiring_.buses) {
    for (int i = 0; i <= kDeepest; ++i) spectra_.push_back(std::make_unique<BlockSpectrum>(wiring_.size()));
}

std::optional<DrawnMargin> BlockScan::margin(std::uint64_t draw) {
    const DrawNumbers numbers(shared_->model().show().tolerance.seed, draw);
    shared_->plan().draw(numbers, stance_);
    placement_.set(stance_);
    wiring_.sends = stance_.sends;
    if (shared_->room()) room_.emplace(*shared_->room(), numbers, shared_->plan().layout().room, stance_.phases);
    best_ = {0.0, kLeastLoop};
    for (const IntervalBounds::Entry& interval :
         shared_->bounds().ordered(placement_, wiring_, room_ ? &*room_ : nullptr)) {
        if (interval.bound < best_.size) break;
        for (std::size_t b = interval.first; b < interval.last; ++b)
            scan(shared_->grid().blocks[b], shared_->chains().at(b), 0);
    }
    if (best_.hz == 0.0) return std::nullopt;
    return DrawnMargin{-ratio_to_db(best_.size), best_.hz};
}

void BlockScan::scan(const Block& block, const ChainValues& chains, int depth) {
    for (std::size_t pair = 0; pair < h_.size(); ++pair) {
        placement_.transfer(pair, block, h_[pair]);
        if (room_) room_->add(pair, block, h_[pair]);
    }
    BlockSpectrum& spectrum = *spectra_[static_cast<std::size_t>(depth)];
    loop_matrix(wiring_, h_.data(), chains.hears.data(), chains.speaks.data(), scratch_.data(), spectrum.matrix());
    if (spectrum.find_bounds() * kSlack < best_.size) return;
    spectrum.find_eigenvalues();
    for (std::size_t point = 0; point + 1 < kBlockPoints; ++point)
        if (std::max(spectrum.bound(point), spectrum.bound(point + 1)) * kSlack >= best_.size)
            look_between(block, spectrum, point, depth);
}

void BlockScan::look_between(const Block& block, const BlockSpectrum& spectrum, std::size_t point, int depth) {
    std::vector<Complex> low, high;
    double largest = 0.0;
    for (std::size_t i = 0; i < spectrum.size(); ++i) {
        low.push_back(spectrum.eigenvalue(i, point));
        high.push_back(spectrum.eigenvalue(i, point + 1));
        largest = std::max({largest, std::abs(low.back()), std::abs(high.back())});
    }
    const double least = best_.size / kSlack;
    if (largest < least) return;
    const StepSpan span{block.hz(point), block.hz(point + 1), shared_->common_s()};
    const std::vector<LocusStep> steps = paired(low, high);
    bool close = !is_clear(steps, span, least);
    for (const LocusStep& step : steps) {
        if (close || step.largest() < least) continue;
        const bool sure = interpolation_error(step) < kSure;
        for_each_passing(step, span, [&](const Passing& passing) {
            if (sure && passing.size > best_.size) best_ = {passing.hz, passing.size};
            if (!sure && passing.size * kSlack > best_.size) close = true;
        });
    }
    if (!close || depth == kDeepest) return;
    const Block inner = between_points(block, point);
    scan(inner, chain_values(shared_->model(), wiring_, shared_->common_s(), inner), depth + 1);
}

}  // namespace howlmap
