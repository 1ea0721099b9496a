// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/chain_table.h"

#include "core/loop/blocks/filter_kernel.h"

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

namespace {
Lanes product(const Lanes& a, const Lanes& b) {
    Lanes product;
    for (std::size_t i = 0; i < kBlockPoints; ++i) product.set(i, times(a.at(i), b.at(i)));
    return product;
}
}  // namespace

ChainValues chain_values(const LoopModel& model, const Wiring& wiring, double common_s, const Block& block) {
    const auto in_block = [&](const auto& response) {
        return response_in_block(response, block.low_hz, block.step_hz);
    };
    ChainValues values;
    for (const LoopModel::In& in : model.inputs())
        values.hears.push_back(product(in_block(in.response), in_block(in.chain)));
    std::vector<Lanes> buses, speakers;
    for (const LoopModel::Bus& bus : model.buses()) {
        Filter late = bus.chain;
        late.delay_s += model.latency_s() - common_s;
        buses.push_back(in_block(late));
    }
    for (const LoopModel::Speaker& speaker : model.speakers()) speakers.push_back(in_block(speaker.response));
    for (const Wiring::Slot& slot : wiring.slots)
        values.speaks.push_back(product(buses[slot.bus], speakers[slot.speaker]));
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
