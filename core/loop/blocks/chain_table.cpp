// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/chain_table.h"

#include <cmath>

namespace howlmap {

Wiring wiring_of(const LoopModel& model) {
    Wiring wiring;
    wiring.inputs = model.inputs().size();
    wiring.buses = model.buses().size();
    wiring.speakers = model.speakers().size();
    for (std::size_t m = 0; m < wiring.buses; ++m)
        for (const int l : model.buses()[m].speakers) wiring.slots.push_back({m, static_cast<std::size_t>(l)});
    for (std::size_t m = 0; m < wiring.buses; ++m)
        for (std::size_t c = 0; c < wiring.inputs; ++c)
            wiring.sends.push_back(model.sends()(static_cast<Eigen::Index>(m), static_cast<Eigen::Index>(c)));
    return wiring;
}

namespace {
std::vector<QuickLanes> quick(const std::vector<Lanes>& values) {
    std::vector<QuickLanes> quick(values.size());
    for (std::size_t i = 0; i < values.size(); ++i)
        for (std::size_t point = 0; point < kBlockPoints; ++point) {
            quick[i].re[point] = static_cast<float>(values[i].re[point]);
            quick[i].im[point] = static_cast<float>(values[i].im[point]);
        }
    return quick;
}
}  // namespace

ChainValues chain_values(const LoopModel& model, const Wiring& wiring, double common_s, const Block& block) {
    ChainValues values{std::vector<Lanes>(wiring.inputs), std::vector<Lanes>(wiring.slots.size()), {}, {}};
    std::vector<Complex> buses(wiring.buses), speakers(wiring.speakers);
    for (std::size_t i = 0; i < kBlockPoints; ++i) {
        const double hz = block.hz(i);
        for (std::size_t c = 0; c < wiring.inputs; ++c)
            values.hears[c].set(i, times(model.inputs()[c].response.at(hz), model.inputs()[c].chain.at(hz)));
        const Complex late = std::polar(1.0, -2.0 * kPi * std::fmod(hz * (model.latency_s() - common_s), 1.0));
        for (std::size_t m = 0; m < wiring.buses; ++m) buses[m] = times(model.buses()[m].chain.at(hz), late);
        for (std::size_t l = 0; l < wiring.speakers; ++l) speakers[l] = model.speakers()[l].response.at(hz);
        for (std::size_t slot = 0; slot < wiring.slots.size(); ++slot)
            values.speaks[slot].set(i, times(buses[wiring.slots[slot].bus], speakers[wiring.slots[slot].speaker]));
    }
    values.quick_hears = quick(values.hears);
    values.quick_speaks = quick(values.speaks);
    return values;
}

ChainTable::ChainTable(const LoopModel& model, const Wiring& wiring, double common_s, const BlockGrid& grid)
    : model_(&model),
      wiring_(&wiring),
      common_s_(common_s),
      grid_(&grid),
      once_(std::make_unique<std::once_flag[]>(grid.blocks.size())),
      values_(grid.blocks.size()) {}

const ChainValues& ChainTable::at(std::size_t block) const {
    std::call_once(once_[block],
                   [&] { values_[block] = chain_values(*model_, *wiring_, common_s_, grid_->blocks[block]); });
    return values_[block];
}

}  // namespace howlmap
