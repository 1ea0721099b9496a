// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <memory>
#include <vector>

#include "core/loop/blocks/cap_table.h"
#include "core/loop/loop_model.h"

namespace howlmap {

/// What all draws of a model share at the nodes of its grid: reflection factors and directivities.
class NodeTables {
  public:
    NodeTables(const LoopModel& model, std::vector<double> nodes);

    const std::vector<double>& nodes() const { return nodes_; }
    /// Length of every array here: the nodes, then a few more up to a whole vector.
    std::size_t stride() const { return stride_; }
    /// Reflection factors of a surface by node; null for the direct path.
    const float* reflection(Via via) const;
    /// Whether a surface reflects nothing at all.
    bool is_dead(Via via) const { return dead_[static_cast<std::size_t>(via)]; }
    /// 1 / half-angle^2 of a speaker's coverage by node (rad^-2); null for other directivities.
    struct CoverageRows {
        const float *across, *above;
        float depth, decay;  ///< D = exp(-depth (1 - exp(decay x)))
    };
    CoverageRows coverage(std::size_t speaker) const;
    /// Multiplies gains by the directivity of a speaker with a measured table. Nothing to do for others. Angle in rad.
    void apply_table(std::size_t speaker, double off_axis, float* gains) const;
    /// The lobes of a speaker that is a cap on a sphere; null for others.
    const CapTable* cap(std::size_t speaker) const { return caps_[speaker].get(); }
    const CapEnvelope* envelope(std::size_t speaker) const { return envelopes_[speaker].get(); }
    /// Multiplies gains by a microphone's table.
    void apply_pattern(std::size_t input, double off_axis, float* gains) const;

  private:
    void add_coverage(const Coverage& coverage, std::size_t speaker);

    const LoopModel* model_;
    std::vector<double> nodes_;
    std::size_t stride_;
    std::array<std::vector<float>, kVias> reflections_;
    std::array<bool, kVias> dead_{};
    std::vector<std::vector<float>> across_, above_;     // by speaker
    std::vector<std::shared_ptr<const CapTable>> caps_;  // by speaker
    std::vector<std::shared_ptr<const CapEnvelope>> envelopes_;
};

}  // namespace howlmap
