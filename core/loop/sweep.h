// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/loci.h"
#include "core/loop/loop_model.h"
#include "core/units/job.h"

namespace howlmap {

/// One send back into its own input: positions in the model.
struct Pair {
    int input, speaker, bus;
};
/// All sends of microphones and pickups through all loudspeakers of their mixes.
std::vector<Pair> pairs_of(const LoopModel& model);
/// |B H Rl E_m S P| of a pair, from factors at one frequency.
double pair_gain(const LoopModel& model, const Pair& pair, const LoopFactors& factors);
/// The same, computing only what the pair needs. hz above 0.
double pair_gain(const LoopModel& model, const Pair& pair, double hz);

/// Matrix of magnitudes |L| over inputs, and its largest eigenvalue.
double worst_phase_gain(const LoopModel& model, const LoopFactors& factors);

/// What one pass over the frequencies tells about a model.
struct Sweep {
    std::vector<double> hz;
    std::vector<double> bounds;                   ///< of the largest modulus among the eigenvalues
    std::vector<double> worst_phase;              ///< Perron root of |L|
    std::vector<std::vector<double>> pair_gains;  ///< by pair, then frequency
    std::vector<LociPoint> points;                ///< eigenvalues; nothing where they were not computed
};
/// Evaluates a model on a grid, slowly and exactly, on all cores. Incomplete when cancelled.
Sweep sweep(const LoopModel& model, const std::vector<Pair>& pairs, std::vector<double> grid, const Job& job = {});

}  // namespace howlmap
