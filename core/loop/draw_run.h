// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <oneapi/tbb/enumerable_thread_specific.h>

#include <memory>
#include <optional>
#include <vector>

#include "core/loop/blocks/block_scan.h"
#include "core/loop/tolerance.h"

namespace howlmap {

/// Draws of a show, looked into as far down as they are asked for, on all cores. Refers to show and job.
class DrawRun {
  public:
    DrawRun(const Show& show, int draws, const Job& job, const DrawHints& hints = {});

    /// Crossings of loop gains above `least`, in all draws.
    void run(double least);
    /// The same in some draws, each once.
    void run(double least, const std::vector<std::size_t>& draws);
    /// What the draws say of shows that differ by a cure or two; null without a room.
    std::shared_ptr<const PeakForecast> forecast();

    /// By draw, as far as they are known by now.
    const std::vector<std::optional<DrawnMargin>>& margins() const { return margins_; }
    /// The n-th lowest margin found, n from 1; none where fewer have one.
    std::optional<double> lowest(std::size_t n) const;

  private:
    void learn(double least);

    BlockModel shared_;
    tbb::enumerable_thread_specific<BlockScan> scans_{[this] { return BlockScan(shared_); }};
    const Job& job_;
    std::vector<std::optional<DrawnMargin>> margins_;
    std::vector<double> looked_to_;  // loop gain that each draw has been searched down to
    std::shared_ptr<const PeakForecast> forecast_;
    bool learned_ = false;
};

}  // namespace howlmap
