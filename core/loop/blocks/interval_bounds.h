// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/blocks/placement.h"
#include "core/loop/blocks/room_blocks.h"

namespace howlmap {

/// How large an eigenvalue can be at most between two nodes, whatever the phases: where to look first, and where not at
/// all.
class IntervalBounds {
  public:
    IntervalBounds(const LoopModel& model, const Wiring& wiring, const BlockGrid& grid);

    struct Entry {
        double bound;             ///< of the largest modulus
        std::size_t first, last;  ///< blocks [first, last)
    };
    /// All intervals for a placement, largest bound first. `room` may be null. Valid until the next call from the same
    /// thread.
    std::vector<Entry> ordered(const Placement& placement, const Wiring& wiring, const RoomDraw* room) const;

  private:
    double bound(std::size_t interval, const Placement& placement, const Wiring& wiring, const RoomDraw* room) const;

    std::vector<Entry> intervals_;
    std::vector<std::size_t> nodes_;                   // lower node by interval
    std::vector<std::vector<double>> hears_, speaks_;  // largest |B P| by input, |R E| by slot; by interval
};

}  // namespace howlmap
