// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/quick_field.h"

#include <algorithm>
#include <cmath>

namespace howlmap {
namespace {
constexpr std::size_t kNoNode = static_cast<std::size_t>(-1);
constexpr double kMostColumns = 2.5;  // of a table of lobes within a block: a lobe is about 20 wide

std::size_t padded(std::size_t count) { return (count + kQuickPad - 1) / kQuickPad * kQuickPad; }
}  // namespace

QuickField::QuickField(const BlockModel& shared, const Placement& placement)
    : shared_(&shared),
      placement_(&placement),
      wiring_(&shared.wiring()),
      pairs_(wiring_->inputs * wiring_->speakers),
      stride_(padded(pairs_)),
      first_(pairs_ + 1),
      phases_(wiring_->speakers),
      factors_(wiring_->size() * wiring_->size(), 1.0F),
      states_(stride_),
      rms_low_(stride_),
      rms_high_(stride_),
      rms_(stride_),
      rms_rise_(stride_),
      h_(pairs_),
      heard_(wiring_->inputs * wiring_->buses + wiring_->slots.size()),
      matrix_(wiring_->size() * wiring_->size()),
      powers_(2 * matrix_.size()) {}

void QuickField::set(const Stance& stance, const DrawNumbers& numbers) {
    legs_ = placement_->legs();
    const std::size_t all = padded(legs_);
    for (std::size_t pair = 0; pair <= pairs_; ++pair)
        first_[pair] = static_cast<std::uint32_t>(placement_->first_leg(pair));
    for (auto* values : {&low_, &high_, &gains_, &rises_}) values->assign(all, 0.0F);
    delays_.assign(all, 0.0);
    starts_.resize(all);
    cap_count_ = 0;
    for (std::size_t leg = 0; leg < legs_; ++leg) {
        const Placement::Row& row = placement_->leg(leg);
        delays_[leg] = row.delay_s;
        if (!row.cap) continue;
        if (caps_.size() == cap_count_) caps_.emplace_back();
        CapLeg& cap = caps_[cap_count_++];
        cap.leg = leg;
        cap.columns_a_hertz = row.cap->columns_a_hertz(placement_->speed());
        row.cap->row(row.off_axis, cap.row);
    }
    for (Steps& steps : steps_) steps.step_hz = 0.0;
    for (std::size_t l = 0; l < phases_.size(); ++l)
        phases_[l] = static_cast<std::complex<float>>(std::polar(1.0, 2.0 * kPi * stance.phases[l]));
    stance_sends_ = stance.sends;
    sends_scale_ = 0.0;
    node_ = kNoNode;
    if (const RoomBlocks* room = shared_->room())
        for (std::size_t pair = 0; pair < pairs_; ++pair)
            states_[pair] = numbers.state(
                room->field().place(shared_->plan().layout().room, room->input(pair), room->loudspeaker(pair), 0));
}

void QuickField::balance(const std::vector<double>& weights) {
    const std::size_t n = weights.size();
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j) factors_[i * n + j] = static_cast<float>(weights[j] / weights[i]);
}

bool QuickField::fits(const Block& block) const {
    const double width = block.step_hz * (kBlockPoints - 1.0);
    return std::all_of(caps_.begin(), caps_.begin() + static_cast<std::ptrdiff_t>(cap_count_),
                       [&](const CapLeg& cap) { return width * cap.columns_a_hertz <= kMostColumns; });
}

void QuickField::load_node(std::size_t node) {
    if (node_ == node) return;
    node_ = node;
    for (std::size_t leg = 0; leg < legs_; ++leg) {
        const float* gains = placement_->gains(leg) + node;
        low_[leg] = gains[0];
        high_[leg] = gains[1];
    }
    if (const RoomBlocks* room = shared_->room())
        for (std::size_t pair = 0; pair < pairs_; ++pair) {
            rms_low_[pair] = static_cast<float>(room->rms(pair, node));
            rms_high_[pair] = static_cast<float>(room->rms(pair, node + 1));
        }
}

const std::vector<QuickLanes>& QuickField::steps_of(double step_hz) {
    for (int i = 0; i < 2; ++i)
        if (steps_[i].step_hz == step_hz) {
            latest_ = i;
            return steps_[i].phasors;
        }
    latest_ = 1 - latest_;
    Steps& steps = steps_[latest_];
    steps.step_hz = step_hz;
    steps.phasors.resize(padded(legs_));
    quick_steps(delays_.data(), legs_, step_hz, steps.phasors.data());
    return steps.phasors;
}

void QuickField::enter(const Block& block, const ChainValues& chains, double scale, bool at_knots) {
    load_node(block.node);
    const auto t = static_cast<float>(block.at), step = static_cast<float>(block.rise);
    quick_between(low_.data(), high_.data(), low_.size(), t, step, gains_.data(), rises_.data());
    add_caps(block);
    quick_starts(delays_.data(), gains_.data(), rises_.data(), delays_.size(), block.low_hz, starts_);
    quick_paths(first_.data(), pairs_, steps_of(block.step_hz).data(), starts_, h_.data());
    if (shared_->room()) add_room(block, at_knots);
    if (scale != sends_scale_) sends_.set(*wiring_, stance_sends_, scale);
    sends_scale_ = scale;
    quick_matrix(*wiring_, sends_, h_.data(), chains.quick_hears.data(), chains.quick_speaks.data(), phases_.data(),
                 factors_.data(), heard_.data(), matrix_.data());
}

namespace {
/// A place between two columns of a table.
struct Column {
    Column(double place, std::size_t columns)
        : low(std::min(static_cast<std::size_t>(place), columns - 2)),
          t(static_cast<float>(place - static_cast<double>(low))) {}
    float of(const std::vector<float>& row) const { return row[low] + t * (row[low + 1] - row[low]); }
    std::size_t low;
    float t;
};
}  // namespace

void QuickField::add_caps(const Block& block) {
    for (std::size_t i = 0; i < cap_count_;) {
        // All legs of one kind of cabinet lie at the same columns.
        const double scale = caps_[i].columns_a_hertz;
        const std::size_t columns = caps_[i].row.size();
        const Column first(block.low_hz * scale, columns), last(block.hz(kBlockPoints - 1) * scale, columns);
        for (; i < cap_count_ && caps_[i].columns_a_hertz == scale && caps_[i].row.size() == columns; ++i) {
            const CapLeg& cap = caps_[i];
            const float end = (gains_[cap.leg] + 15.0F * rises_[cap.leg]) * last.of(cap.row);
            gains_[cap.leg] *= first.of(cap.row);
            rises_[cap.leg] = (end - gains_[cap.leg]) / 15.0F;
        }
    }
}

void QuickField::add_room(const Block& block, bool at_knots) {
    quick_between(rms_low_.data(), rms_high_.data(), stride_, static_cast<float>(block.at),
                  static_cast<float>(block.rise), rms_.data(), rms_rise_.data());
    const double spacing = shared_->room()->field().knot_spacing_hz();
    if (at_knots) {
        const auto first = static_cast<std::uint64_t>(std::llround(block.low_hz / spacing));
        quick_room_at_knots(states_.data(), 2 * kGoldenGamma * first, pairs_, rms_.data(), rms_rise_.data(), h_.data());
        return;
    }
    const KnotSpan span = knot_span(block, spacing);
    knots_re_.resize(std::max(knots_re_.size(), span.count * stride_));
    knots_im_.resize(knots_re_.size());
    for (std::size_t k = 0; k < span.count; ++k)
        quick_gaussians(states_.data(), 2 * kGoldenGamma * (span.first + k), stride_, knots_re_.data() + k * stride_,
                        knots_im_.data() + k * stride_);
    weights_.assign(span.count, QuickRealLanes{});
    for (std::size_t i = 0; i < kBlockPoints; ++i) {
        const KnotSpan::Place place = span.place(block.hz(i), spacing);
        weights_[place.knot].v[i] = static_cast<float>(place.low);
        weights_[place.knot + 1].v[i] = static_cast<float>(place.high);
    }
    quick_room(knots_re_.data(), knots_im_.data(), stride_, span.count, weights_.data(), pairs_, rms_.data(),
               rms_rise_.data(), h_.data());
}

void QuickField::copy(double scale, Lanes* matrix) const {
    for (std::size_t i = 0; i < matrix_.size(); ++i)
        for (std::size_t point = 0; point < kBlockPoints; ++point) {
            matrix[i].re[point] = scale * matrix_[i].re[point];
            matrix[i].im[point] = scale * matrix_[i].im[point];
        }
}

}  // namespace howlmap
