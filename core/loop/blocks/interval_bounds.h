// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/blocks/placement.h"
#include "core/loop/blocks/room_blocks.h"

namespace howlmap {

/// How large an eigenvalue can be at most in a stretch of frequencies, whatever the phases: where to look first, and
/// where not at all. Any norm bounds the eigenvalues; the rows and columns are weighted so that the norm comes close to
/// the Perron root.
class IntervalBounds {
  public:
    /// `room` may be null.
    IntervalBounds(const LoopModel& model, const Wiring& wiring, const BlockGrid& grid, const RoomBlocks* room);

    struct Entry {
        double bound;   ///< of the largest modulus
        double direct;  ///< of the part without the room
        std::size_t interval;
        std::size_t first, last;  ///< blocks [first, last)
    };
    /// All intervals for a placement, largest bound first. With a room the bound holds at a frequency but for once in
    /// 10^8 draws.
    void order(const Placement& placement, const Wiring& wiring, std::vector<Entry>& entries);
    /// After order: weights by pair, so that the room part's norm is at most sqrt(sum of weights |z|^2).
    const std::vector<double>& room_weights(std::size_t interval) const { return weights_[interval]; }

  private:
    struct Interval {
        std::size_t first, last, low_node, high_node;
        std::vector<double> hears, speaks;  // largest |B P| by input, |R E| by slot
        std::vector<double> rms;            // largest by pair
    };
    void fill_matrix(const Interval& interval, const Placement& placement, const Wiring& wiring);
    double balanced_norm(std::size_t n);
    double room_norm(const Interval& interval, const Wiring& wiring, std::vector<double>& weights) const;

    std::vector<Interval> intervals_;
    std::vector<std::vector<double>> weights_;
    std::vector<double> heard_, matrix_, right_, left_, next_, balance_;
};

}  // namespace howlmap
