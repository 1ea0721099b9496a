// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <span>
#include <vector>

#include "core/loop/blocks/block_model.h"
#include "core/loop/blocks/interval_bounds.h"
#include "core/loop/blocks/peak_forecast.h"

namespace howlmap {

/// What is looked at in one go within an interval: a part of the survey, or a block that belongs to none; and what a
/// forecast says of it. One a thread.
class Stretches {
  public:
    /// Refers to the model.
    Stretches(const BlockModel& shared, const IntervalBounds& bounds);

    struct Stretch {
        int part;                 ///< of the survey, or -1
        std::size_t first, last;  ///< blocks [first, last)
        double most;              ///< largest eigenvalue in units of the rough size; infinite without a forecast
    };
    std::size_t size() const { return all_.size(); }
    /// Those of an interval are [first(interval), first(interval + 1)).
    std::size_t first(std::size_t interval) const { return first_[interval]; }
    const Stretch& operator[](std::size_t i) const { return all_[i]; }
    std::span<const Stretch> of(std::size_t interval) const {
        return {all_.data() + first_[interval], first_[interval + 1] - first_[interval]};
    }
    /// By rising frequency, side by side.
    std::vector<PeakForecast::Interval> frequencies() const;

    /// Fills in what a forecast (may be null) says.
    void heed(const PeakForecast* forecast);
    /// Largest of those of each interval; empty without a forecast.
    const std::vector<double>& most() const { return most_; }

  private:
    void add(std::size_t first_block, std::size_t last_block);

    const BlockModel* shared_;
    std::vector<Stretch> all_;
    std::vector<std::size_t> first_;
    std::vector<double> most_;
    const PeakForecast* heeded_ = nullptr;
};

}  // namespace howlmap
