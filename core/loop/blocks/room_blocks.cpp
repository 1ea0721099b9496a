// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/room_blocks.h"

#include <algorithm>
#include <cmath>

namespace howlmap {

RoomBlocks::RoomBlocks(const LoopModel& model, const std::vector<double>& nodes)
    : field_(model.show()), nodes_(nodes.size()) {
    for (const LoopModel::In& in : model.inputs()) inputs_.push_back(in.index);
    for (const LoopModel::Speaker& speaker : model.speakers()) speakers_.push_back(speaker.index);
    for (std::size_t pair = 0; pair < inputs_.size() * speakers_.size(); ++pair)
        for (const double hz : nodes) rms_.push_back(field_.rms(input(pair), loudspeaker(pair), hz));
}

RoomDraw::RoomDraw(const RoomBlocks& room, const DrawNumbers& numbers, std::uint64_t first,
                   const std::vector<double>& phases)
    : room_(&room), numbers_(numbers), first_(first) {
    for (const double turns : phases) turns_.push_back(std::polar(1.0, 2.0 * kPi * turns));
}

void RoomDraw::add(std::size_t pair, const Block& block, Lanes& h) const {
    const RoomField& field = room_->field();
    const Complex turn = turns_[pair % turns_.size()];
    const double rise = room_->rms(pair, block.node + 1) - room_->rms(pair, block.node);
    std::uint64_t known = ~std::uint64_t{0};
    Complex low, high;
    for (std::size_t i = 0; i < kBlockPoints; ++i) {
        const double x = block.hz(i) / field.knot_spacing_hz(), k = std::floor(x), t = x - k;
        const auto knot = static_cast<std::uint64_t>(k);
        const int input = room_->input(pair), loudspeaker = room_->loudspeaker(pair);
        if (knot != known) {
            low = known + 1 == knot ? high : field.knot(numbers_, first_, input, loudspeaker, knot);
            high = field.knot(numbers_, first_, input, loudspeaker, knot + 1);
            known = knot;
        }
        const double rms = room_->rms(pair, block.node) + rise * (block.at + block.rise * static_cast<double>(i));
        const Complex z = (1.0 - t) * low + t * high;
        h.set(i, h.at(i) + times(z, turn) * (rms / std::sqrt((1.0 - t) * (1.0 - t) + t * t)));
    }
}

double RoomDraw::largest(std::size_t pair, std::size_t node) const {
    constexpr double most = 6.1 * 1.415;  // sqrt(-ln 2^-53) at both knots
    return most * std::max(room_->rms(pair, node), room_->rms(pair, node + 1));
}

}  // namespace howlmap
