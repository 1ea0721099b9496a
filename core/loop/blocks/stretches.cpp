// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/stretches.h"

#include <algorithm>
#include <limits>

namespace howlmap {

Stretches::Stretches(const BlockModel& shared, const IntervalBounds& bounds) : shared_(&shared) {
    for (std::size_t i = 0; i < bounds.size(); ++i) {
        first_.push_back(all_.size());
        add(bounds.blocks(i).first, bounds.blocks(i).last);
    }
    first_.push_back(all_.size());
}

void Stretches::add(std::size_t first_block, std::size_t last_block) {
    for (std::size_t b = first_block; b < last_block; ++b) {
        const int part = shared_->part_of(b);
        if (part >= 0 && b > first_block && all_.back().part == part)
            all_.back().last = b + 1;
        else
            all_.push_back({part, b, b + 1, std::numeric_limits<double>::infinity()});
    }
}

std::vector<PeakForecast::Interval> Stretches::frequencies() const {
    const auto& blocks = shared_->grid().blocks;
    std::vector<PeakForecast::Interval> hz;
    for (const Stretch& one : all_) hz.push_back({blocks[one.first].low_hz, blocks[one.last - 1].hz(kBlockPoints - 1)});
    return hz;
}

void Stretches::heed(const PeakForecast* forecast) {
    if (forecast == heeded_) return;
    heeded_ = forecast;
    const auto hz = frequencies();
    for (std::size_t i = 0; i < all_.size(); ++i)
        all_[i].most = forecast ? forecast->most(hz[i]) : std::numeric_limits<double>::infinity();
    most_.clear();
    for (std::size_t i = 0; forecast && i + 1 < first_.size(); ++i)
        most_.push_back(std::ranges::max(of(i), {}, &Stretch::most).most);
}

}  // namespace howlmap
