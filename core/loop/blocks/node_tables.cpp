// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/node_tables.h"

#include <algorithm>
#include <cmath>

#include "core/propagation/reflection.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr std::size_t kPad = 8;  // widest vector of doubles
constexpr double kNepersADb = 0.11512925464970229;

double inverse_square(double angle_deg, double size_m, double hz) {
    const double half = radians(angle_deg / 2.0) * std::max(1.0, control_hz(angle_deg, size_m) / hz);
    return 1.0 / (half * half);
}
}  // namespace

NodeTables::NodeTables(const LoopModel& model, std::vector<double> nodes)
    : model_(&model),
      nodes_(std::move(nodes)),
      stride_((nodes_.size() + kPad - 1) / kPad * kPad),
      speed_(model.surroundings().speed) {
    for (auto& row : reflections_) row.resize(stride_);
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        const auto factors = model.surroundings().reflections(nodes_[i]);
        for (std::size_t via = 0; via < factors.size(); ++via) reflections_[via][i] = factors[via];
    }
    for (std::size_t via = 1; via < dead_.size(); ++via)
        dead_[via] = std::ranges::all_of(reflections_[via], [](double r) { return r == 0.0; });
    const std::size_t speakers = model.speakers().size();
    across_.resize(speakers);
    above_.resize(speakers);
    tables_.resize(speakers);
    angle_step_.resize(speakers);
    for (std::size_t l = 0; l < speakers; ++l) {
        const Directivity& directivity = *model.speakers()[l].emitter.directivity;
        if (const auto* coverage = std::get_if<Coverage>(&directivity)) add_coverage(*coverage, l);
        if (const auto* cap = std::get_if<CapOnSphere>(&directivity)) add_cap(*cap, l);
        if (std::holds_alternative<DirectivityTable>(directivity)) tables_[l].push_back(0.0);  // read as it is
    }
}

const double* NodeTables::reflection(Via via) const {
    return via == Via::direct ? nullptr : reflections_[static_cast<std::size_t>(via)].data();
}

void NodeTables::add_coverage(const Coverage& coverage, std::size_t speaker) {
    across_[speaker].resize(stride_);
    above_[speaker].resize(stride_);
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        across_[speaker][i] = inverse_square(coverage.horizontal_deg, coverage.width_m, nodes_[i]);
        above_[speaker][i] = inverse_square(coverage.vertical_deg, coverage.height_m, nodes_[i]);
    }
}

void NodeTables::add_cap(const CapOnSphere& cap, std::size_t speaker) {
    const auto same = [&](const LoopModel::Speaker& other) { return *other.emitter.directivity == Directivity(cap); };
    const auto first = std::ranges::find_if(model_->speakers(), same) - model_->speakers().begin();
    if (static_cast<std::size_t>(first) < speaker) {
        tables_[speaker] = tables_[static_cast<std::size_t>(first)];
        angle_step_[speaker] = angle_step_[static_cast<std::size_t>(first)];
        return;
    }
    const double lobes = 2.0 * 2.0 * kPi * nodes_.back() / speed_ * cap.sphere_radius_m / kPi;  // about 2 ka / pi
    const auto rows = static_cast<std::size_t>(std::clamp(8.0 * lobes, 180.0, 2000.0)) + 1;
    angle_step_[speaker] = kPi / static_cast<double>(rows - 1);
    tables_[speaker].resize(rows * stride_);
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        const CapSlice slice(cap, 2.0 * kPi * nodes_[i] / speed_);
        for (std::size_t row = 0; row < rows; ++row)
            tables_[speaker][row * stride_ + i] = slice.gain(std::cos(angle_step_[speaker] * static_cast<double>(row)));
    }
}

NodeTables::CoverageRows NodeTables::coverage(std::size_t speaker) const {
    const auto* coverage = std::get_if<Coverage>(model_->speakers()[speaker].emitter.directivity);
    if (!coverage) return {nullptr, nullptr, 0.0, 0.0};
    return {across_[speaker].data(), above_[speaker].data(), coverage->floor_db * kNepersADb,
            std::log1p(-6.0 / coverage->floor_db)};
}

void NodeTables::apply_directivity(std::size_t speaker, double off_axis, double speed, double* gains) const {
    const Directivity& directivity = *model_->speakers()[speaker].emitter.directivity;
    if (const auto* table = std::get_if<DirectivityTable>(&directivity)) {
        for (std::size_t i = 0; i < nodes_.size(); ++i)
            gains[i] *= db_to_ratio(table_db(*table, between_log(table->hz, nodes_[i]), degrees(off_axis)));
    } else if (std::holds_alternative<CapOnSphere>(directivity)) {
        const double place = off_axis / angle_step_[speaker];
        const auto rows = tables_[speaker].size() / stride_;
        const auto row = std::min(static_cast<std::size_t>(place), rows - 2);
        const double t = place - static_cast<double>(row);
        const double *low = tables_[speaker].data() + row * stride_, *high = low + stride_;
        const auto at = [&](std::size_t i) { return low[i] * (1.0 - t) + high[i] * t; };
        // Another speed of sound is another frequency of the same k: a small step towards the neighbouring node.
        const double stretch = speed_ / speed - 1.0;
        const std::size_t last = nodes_.size() - 1;
        for (std::size_t i = 0; i <= last; ++i) {
            const std::size_t other = stretch > 0.0 ? std::min(i + 1, last) : (i > 0 ? i - 1 : 0);
            const double away = nodes_[other] - nodes_[i];
            const double part = away == 0.0 ? 0.0 : nodes_[i] * stretch / away;
            gains[i] *= at(i) * (1.0 - part) + at(other) * part;
        }
    }
}

void NodeTables::apply_pattern(std::size_t input, double off_axis, double* gains) const {
    const ReceiverPattern& pattern = model_->inputs()[input].receiver.pattern;
    if (!pattern.is_table()) return;
    for (std::size_t i = 0; i < nodes_.size(); ++i) gains[i] *= pattern.gain(off_axis, nodes_[i]);
}

}  // namespace howlmap
