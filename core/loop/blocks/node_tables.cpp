// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/node_tables.h"

#include <algorithm>
#include <cmath>

#include "core/propagation/reflection.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr std::size_t kPad = 16;  // widest vector of floats
}  // namespace

NodeTables::NodeTables(const LoopModel& model, std::vector<double> nodes)
    : model_(&model), nodes_(std::move(nodes)), stride_((nodes_.size() + kPad - 1) / kPad * kPad) {
    for (auto& row : reflections_) row.resize(stride_);
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        const auto factors = model.surroundings().reflections(nodes_[i]);
        for (std::size_t via = 0; via < factors.size(); ++via) reflections_[via][i] = static_cast<float>(factors[via]);
    }
    for (std::size_t via = 1; via < dead_.size(); ++via)
        dead_[via] = std::ranges::all_of(reflections_[via], [](float r) { return r == 0.0F; });
    const std::size_t speakers = model.speakers().size();
    across_.resize(speakers);
    above_.resize(speakers);
    caps_.resize(speakers);
    envelopes_.resize(speakers);
    for (std::size_t l = 0; l < speakers; ++l) {
        const Directivity& directivity = *model.speakers()[l].emitter.directivity;
        if (const auto* coverage = std::get_if<Coverage>(&directivity)) add_coverage(*coverage, l);
        if (const auto* cap = std::get_if<CapOnSphere>(&directivity)) {
            caps_[l] = cap_table(*cap, model.surroundings().speed);
            const auto same =
                std::ranges::find(caps_.begin(), caps_.begin() + static_cast<std::ptrdiff_t>(l), caps_[l]);
            const auto place = static_cast<std::size_t>(same - caps_.begin());
            envelopes_[l] = place < l ? envelopes_[place] : std::make_shared<const CapEnvelope>(*caps_[l], nodes_);
        }
    }
}

const float* NodeTables::reflection(Via via) const {
    return via == Via::direct ? nullptr : reflections_[static_cast<std::size_t>(via)].data();
}

void NodeTables::add_coverage(const Coverage& coverage, std::size_t speaker) {
    across_[speaker].resize(stride_);
    above_[speaker].resize(stride_);
    for (std::size_t i = 0; i < nodes_.size(); ++i) {
        across_[speaker][i] =
            static_cast<float>(inverse_square_half_angle(coverage.horizontal_deg, coverage.width_m, nodes_[i]));
        above_[speaker][i] =
            static_cast<float>(inverse_square_half_angle(coverage.vertical_deg, coverage.height_m, nodes_[i]));
    }
}

NodeTables::CoverageRows NodeTables::coverage(std::size_t speaker) const {
    const auto* coverage = std::get_if<Coverage>(model_->speakers()[speaker].emitter.directivity);
    if (!coverage) return {nullptr, nullptr, 0.0F, 0.0F};
    return {across_[speaker].data(), above_[speaker].data(), static_cast<float>(coverage->floor_db * kNepersPerDb),
            static_cast<float>(std::log1p(-6.0 / coverage->floor_db))};
}

void NodeTables::apply_table(std::size_t speaker, double off_axis, float* gains) const {
    const auto* table = std::get_if<DirectivityTable>(model_->speakers()[speaker].emitter.directivity);
    if (!table) return;
    for (std::size_t i = 0; i < nodes_.size(); ++i)
        gains[i] *=
            static_cast<float>(db_to_ratio(table_db(*table, between_log(table->hz, nodes_[i]), degrees(off_axis))));
}

void NodeTables::apply_pattern(std::size_t input, double off_axis, float* gains) const {
    const ReceiverPattern& pattern = model_->inputs()[input].receiver.pattern;
    if (!pattern.is_table()) return;
    for (std::size_t i = 0; i < nodes_.size(); ++i) gains[i] *= static_cast<float>(pattern.gain(off_axis, nodes_[i]));
}

}  // namespace howlmap
