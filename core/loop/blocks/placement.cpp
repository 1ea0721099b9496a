// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/placement.h"

#include <algorithm>
#include <cmath>

namespace howlmap {

Placement::Placement(const LoopModel& model, const NodeTables& tables)
    : model_(&model), tables_(&tables), air_(tables.stride()) {
    for (const LoopModel::In& in : model.inputs())
        for (const LoopModel::Speaker& speaker : model.speakers())
            planes_.push_back(planes_between(model.show().stage, speaker.emitter.position, in.receiver.position));
    for (Planes& planes : planes_)
        for (int via = 1; via < kVias; ++via)
            if (tables.is_dead(static_cast<Via>(via))) planes[static_cast<std::size_t>(via)].reset();
    first_.resize(planes_.size() + 1);
    gains_.resize(planes_.size() * kVias * tables.stride());
    sizes_.resize(planes_.size() * tables.stride());
}

void Placement::set(const Stance& stance) {
    speed_ = speed_of_sound(stance.air.temperature_c);
    const AirAbsorption air(stance.air);
    for (std::size_t i = 0; i < tables_->nodes().size(); ++i)
        air_[i] = static_cast<float>(air.db_per_m(tables_->nodes()[i]) * kNepersPerDb);
    rows_.clear();
    for (std::size_t c = 0; c < stance.inputs.size(); ++c)
        for (std::size_t l = 0; l < stance.speakers.size(); ++l) add_pair(c, l, stance);
    first_.back() = rows_.size();
}

void Placement::add_pair(std::size_t input, std::size_t speaker, const Stance& stance) {
    const std::size_t pair = input * stance.speakers.size() + speaker, stride = tables_->stride();
    first_[pair] = rows_.size();
    std::array<Path, kVias> paths;
    const std::size_t count =
        paths_between(stance.speakers[speaker].position, stance.inputs[input].position, planes_[pair], paths);
    float* sizes = sizes_.data() + pair * stride;
    std::fill(sizes, sizes + stride, 0.0F);
    for (std::size_t i = 0; i < count; ++i) {
        add_leg(paths[i], input, speaker, stance);
        add_sizes(rows_.size() - 1, sizes);
    }
}

void Placement::add_sizes(std::size_t row, float* sizes) {
    const std::size_t stride = tables_->stride();
    const float* gains = gains_.data() + row * stride;
    if (rows_[row].envelope) {
        envelope_.assign(gains, gains + stride);
        rows_[row].envelope->apply(rows_[row].off_axis, envelope_.data());
        gains = envelope_.data();
    }
    for (std::size_t node = 0; node < stride; ++node) sizes[node] += std::abs(gains[node]);
}

void Placement::add_leg(const Path& path, std::size_t input, std::size_t speaker, const Stance& stance) {
    const Frame& out = stance.speakers[speaker].frame;
    const ReceiverPattern& pattern = model_->inputs()[input].receiver.pattern;
    const LocalAngles leaving = local_angles(out, path.leaving);
    double factor = 1.0 / path.held_m;
    // The cosine is enough for a first-order pattern; where the two coincide the arrival counts as on axis.
    const double cosine = path.distance_m > 0.0 ? dot(stance.inputs[input].frame.forward, path.arriving) : 1.0;
    if (!pattern.is_table()) factor *= pattern.a() + (1.0 - pattern.a()) * cosine;
    const NodeTables::CoverageRows coverage = tables_->coverage(speaker);
    const double c = std::cos(leaving.turn), s = std::sin(leaving.turn), square = leaving.off_axis * leaving.off_axis;
    const LegGains leg{tables_->reflection(path.via),
                       air_.data(),
                       static_cast<float>(path.held_m),
                       static_cast<float>(factor),
                       coverage.across,
                       coverage.above,
                       static_cast<float>(square * c * c),
                       static_cast<float>(square * s * s),
                       coverage.depth,
                       coverage.decay};
    float* gains = gains_.data() + rows_.size() * tables_->stride();
    leg_gains(leg, tables_->stride(), gains);
    tables_->apply_table(speaker, leaving.off_axis, gains);
    if (pattern.is_table())
        tables_->apply_pattern(input, local_angles(stance.inputs[input].frame, path.arriving).off_axis, gains);
    rows_.push_back({path.held_m / speed_, -stance.phases[speaker], tables_->cap(speaker), tables_->envelope(speaker),
                     leaving.off_axis});
}

double Placement::largest_size(std::size_t pair, std::size_t first_node, std::size_t last_node) const {
    const float* row = sizes_.data() + pair * tables_->stride();
    return *std::max_element(row + first_node, row + last_node + 1);
}

void Placement::transfer(std::size_t pair, const Block& block, Lanes& h) const {
    LegInBlock legs[kVias];
    double by_point[kVias][kBlockPoints];
    std::size_t count = 0;
    for (std::size_t r = first_[pair]; r < first_[pair + 1]; ++r) {
        const Row& row = rows_[r];
        const float* gains = gains_.data() + r * tables_->stride() + block.node;
        const double low = gains[0], rise = gains[1] - low, turns = block.low_hz * row.delay_s + row.turns;
        LegInBlock& leg = legs[count];
        leg = {turns, block.step_hz * row.delay_s, low + rise * block.at, rise * block.rise, nullptr};
        if (row.cap) {
            for (std::size_t i = 0; i < kBlockPoints; ++i)
                by_point[count][i] = leg.gain + leg.slope * static_cast<double>(i);
            row.cap->apply(row.off_axis, speed_, block, by_point[count]);
            leg.by_point = by_point[count];
        }
        ++count;
    }
    sum_legs(legs, count, h);
}

}  // namespace howlmap
