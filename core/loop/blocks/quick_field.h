// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/blocks/block_model.h"
#include "core/loop/blocks/block_spectrum.h"
#include "core/loop/blocks/quick_kernel.h"

namespace howlmap {

/// The loop matrices of a stance in single precision, block by block. Kept and set again; one a thread.
class QuickField {
  public:
    /// Refers to both.
    QuickField(const BlockModel& shared, const Placement& placement);
    /// After the placement was set to the same stance. `numbers` are those of the draw; they matter with a room only.
    void set(const Stance& stance, const DrawNumbers& numbers);

    /// Matrices come as D^-1 M D, with the same eigenvalues and smaller norms. Given: D by row.
    void balance(const std::vector<double>& weights);

    /// Whether the gains of all paths are all but linear within a block.
    bool fits(const Block& block) const;
    /// Loop matrices at the points of a block in units of `scale`. `at_knots`: its points are neighbouring knots of the
    /// room term, all whole multiples of the spacing.
    void enter(const Block& block, const ChainValues& chains, double scale, bool at_knots);
    /// Whether any eigenvalue of the block entered may reach `least` times the scale. Bounds are as tight as that
    /// takes.
    bool may_reach(double least) {
        return quick_bounds(matrix_.data(), wiring_->size(), float(least), powers_.data(), bounds_);
    }
    /// After may_reach, in units of the scale.
    double bound(std::size_t point) const { return bounds_.v[point]; }
    /// The matrices of the block entered.
    void copy(double scale, Lanes* matrix) const;

  private:
    void load_node(std::size_t node);
    void add_caps(const Block& block);
    void add_room(const Block& block, bool at_knots);
    const std::vector<QuickLanes>& steps_of(double step_hz);

    struct CapLeg {
        std::size_t leg;
        double columns_a_hertz;
        std::vector<float> row;
    };
    struct Steps {
        double step_hz = 0.0;
        std::vector<QuickLanes> phasors;
    };
    const BlockModel* shared_;
    const Placement* placement_;
    const Wiring* wiring_;
    std::size_t pairs_, stride_, legs_ = 0;
    std::vector<std::uint32_t> first_;
    std::vector<double> delays_;
    std::vector<float> low_, high_, gains_, rises_;  // by leg: at the nodes around, at the first point
    std::vector<CapLeg> caps_;
    std::size_t cap_count_ = 0;
    Steps steps_[2];
    int latest_ = 0;
    QuickStarts starts_;
    std::vector<double> stance_sends_;
    QuickSends sends_;
    double sends_scale_ = 0.0;  // that they are divided by; 0: not set yet
    std::vector<std::complex<float>> phases_;
    std::vector<float> factors_;  // of the elements of a matrix
    std::size_t node_ = 0;
    std::vector<std::uint64_t> states_;
    std::vector<float> rms_low_, rms_high_, rms_, rms_rise_, knots_re_, knots_im_;
    std::vector<QuickRealLanes> weights_;
    std::vector<QuickLanes> h_, heard_, matrix_, powers_;
    QuickRealLanes bounds_{};
};

}  // namespace howlmap
