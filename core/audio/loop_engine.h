// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <Eigen/Core>
#include <optional>
#include <span>
#include <vector>

#include "core/audio/convolution_matrix.h"
#include "core/audio/loop_kernels.h"

namespace howlmap {

/// All loops of a stage, closed, in time. Signals are sound pressures in Pa; a bus's signal is what it makes at 1 m on
/// the axis of its loudspeakers. Each bus has an amplifier that bends softly: ceiling * tanh(x / ceiling).
class LoopEngine {
  public:
    /// sends: S by (bus, input). ceilings: Pa by bus; empty: no amplifier bends. source_input: the input in front of
    /// which the source stands, -1: none.
    LoopEngine(const LoopKernels& kernels, const Eigen::MatrixXd& sends, std::vector<double> ceilings,
               int source_input);

    std::size_t block() const { return matrix_.block(); }
    /// All sends times this from the next block on.
    void set_gain(double gain) { gain_ = gain; }

    /// One block of time. source: Pa at the input. extra: added to all inputs (their own noise, an impulse), Pa. heard:
    /// Pa at 1 m, sum of the buses.
    void step(std::span<const float> source, std::span<const float> extra, std::span<float> heard);
    /// All that is under way, as if it had been `factor` times as strong; the amplifiers must not bend.
    void scale(float factor) { matrix_.scale(factor); }
    /// Sum over the inputs of the block just reckoned, and its energy.
    std::span<const float> inputs_sum() const { return sum_; }
    double energy() const { return energy_; }

  private:
    ConvolutionMatrix matrix_;
    std::vector<std::vector<float>> sends_;  // by bus, input
    std::vector<float> ceilings_;
    std::vector<std::vector<float>> columns_;
    std::vector<float> sum_;
    double gain_ = 1.0, energy_ = 0.0;
};

}  // namespace howlmap
