// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/room_blocks.h"

#include <algorithm>
#include <cmath>

#include "core/loop/blocks/block_kernel.h"

namespace howlmap {

RoomBlocks::RoomBlocks(const LoopModel& model, const std::vector<double>& nodes)
    : field_(model.show()), nodes_(nodes.size()) {
    for (const LoopModel::In& in : model.inputs()) inputs_.push_back(in.index);
    for (const LoopModel::Speaker& speaker : model.speakers()) speakers_.push_back(speaker.index);
    for (std::size_t pair = 0; pair < pairs(); ++pair)
        for (const double hz : nodes) rms_.push_back(field_.rms(input(pair), loudspeaker(pair), hz));
}

double RoomBlocks::largest_rms(std::size_t pair, std::size_t first_node, std::size_t last_node) const {
    const double* row = rms_.data() + pair * nodes_;
    return *std::max_element(row + first_node, row + last_node + 1);
}

KnotSpan knot_span(const Block& block, double spacing) {
    const double first = std::floor(block.low_hz / spacing + 1e-9);  // a block that begins on a knot begins there
    const double last = std::ceil(block.hz(kBlockPoints - 1) / spacing - 1e-9);
    return {static_cast<std::uint64_t>(first), static_cast<std::size_t>(std::max(1.0, last - first)) + 1};
}

KnotSpan::Place KnotSpan::place(double hz, double spacing) const {
    const double x = hz / spacing - static_cast<double>(first);
    const auto k = std::min(static_cast<std::size_t>(std::max(0.0, x)), count - 2);
    const double t = x - static_cast<double>(k), size = std::sqrt((1.0 - t) * (1.0 - t) + t * t);
    return {k, (1.0 - t) / size, t / size};
}

RoomDraw::RoomDraw(const RoomBlocks& room)
    : room_(&room), stride_((room.pairs() + 7) / 8 * 8), states_(stride_), turns_(room.speakers()) {}

void RoomDraw::set(const DrawNumbers& numbers, std::uint64_t first, const std::vector<double>& phases) {
    for (std::size_t pair = 0; pair < room_->pairs(); ++pair)
        states_[pair] = numbers.state(room_->field().place(first, room_->input(pair), room_->loudspeaker(pair), 0));
    for (std::size_t l = 0; l < turns_.size(); ++l) turns_[l] = std::polar(1.0, 2.0 * kPi * phases[l]);
}

void RoomDraw::enter(const Block& block) {
    const double spacing = room_->field().knot_spacing_hz();
    const KnotSpan span = knot_span(block, spacing);
    knots_ = span.count;
    if (re_.size() < knots_ * stride_) {
        re_.resize(knots_ * stride_);
        im_.resize(knots_ * stride_);
    }
    for (std::size_t k = 0; k < knots_; ++k)
        gaussian_knots(states_.data(), kGoldenGamma * 2 * (span.first + k), stride_, re_.data() + k * stride_,
                       im_.data() + k * stride_);
    weights_.assign(knots_, RealLanes{});
    for (std::size_t i = 0; i < kBlockPoints; ++i) {
        const KnotSpan::Place place = span.place(block.hz(i), spacing);
        weights_[place.knot].v[i] = place.low;
        weights_[place.knot + 1].v[i] = place.high;
    }
}

double RoomDraw::largest(const std::vector<double>& weights) const {
    double most = 0.0, before = 0.0;
    for (std::size_t k = 0; k < knots_; ++k) {
        const double *re = re_.data() + k * stride_, *im = im_.data() + k * stride_;
        double sum = 0.0;
        for (std::size_t pair = 0; pair < weights.size(); ++pair)
            sum += weights[pair] * (re[pair] * re[pair] + im[pair] * im[pair]);
        if (k > 0) most = std::max(most, before + sum);  // |z|^2 between two knots is at most the sum of theirs
        before = sum;
    }
    return std::sqrt(most);
}

void RoomDraw::add(std::size_t pair, const Block& block, Lanes& h) const {
    const double low = room_->rms(pair, block.node), rise = room_->rms(pair, block.node + 1) - low;
    add_room(re_.data() + pair, im_.data() + pair, stride_, knots_, weights_.data(), turns_[pair % turns_.size()],
             low + rise * block.at, rise * block.rise, h);
}

}  // namespace howlmap
