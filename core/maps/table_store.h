// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of the kernels, kept from one map to the next as long as what they were made from is the same.
#pragma once
#include <map>
#include <memory>
#include <vector>

#include "core/maps/kernel/rows.h"
#include "core/show/show.h"

namespace howlmap::maps {

class TableStore {
  public:
    using Rows = std::shared_ptr<const DirectivityRows>;
    /// Rows of a loudspeaker's directivity. The sweep must be kSwept or kBandSweep.
    Rows directivity(const Directivity& directivity, const Sweep& sweep, double speed);
    /// Value on axis of a cap on a sphere over the fine frequencies; null for every other directivity.
    struct Axis {
        Floats fine, sparse;  ///< cap_axis() at the fine and the sparse ones
    };
    std::shared_ptr<const Axis> axis(const Directivity& directivity, double speed);
    /// Rows of a microphone's measured pattern; null for first-order patterns and pickups.
    Rows pattern(const Input& input, const Sweep& sweep);
    /// Air and reflections as far as `farthest_m` at least.
    std::shared_ptr<const AirRows> air(const Show& show, const Sweep& sweep, double farthest_m);

  private:
    struct Made {
        Directivity from;
        const Sweep* sweep;
        double speed;
        Rows rows;
    };
    struct MadeAir {
        Air air;
        Surfaces surfaces;
        double farthest_m = -1.0;
        std::shared_ptr<const AirRows> rows;
    };
    struct MadeAxis {
        CapOnSphere from;
        double speed;
        std::shared_ptr<const Axis> axis;
    };
    std::vector<Made> directivities_, patterns_;
    std::vector<MadeAxis> axes_;
    std::map<const Sweep*, MadeAir> air_;
};

}  // namespace howlmap::maps
