// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/blocks/block_grid.h"
#include "core/show/directivity.h"

namespace howlmap {

/// Gains of a cap on a sphere, tabulated over frequency and angle closely enough for its lobes: within about half a per
/// cent of the lobe that a value lies in.
class CapTable {
  public:
    /// Given: the cap, speed of sound in m/s that the table is made for, coarse nodes for the envelope (rising, Hz).
    CapTable(const CapOnSphere& cap, double speed, const std::vector<double>& nodes);
    const CapOnSphere& cap() const { return cap_; }

    /// Multiplies gains by the directivity at the points of a block. Given: angle off axis in rad, speed of sound now.
    void apply(double off_axis, double speed, const Block& block, double* gains) const;
    /// Multiplies gains by node by the largest value around this node and angle.
    void apply_envelope(double off_axis, double* gains) const;

  private:
    void fill();
    void find_envelope(const std::vector<double>& nodes);

    CapOnSphere cap_;
    double speed_, step_hz_, angle_step_;
    std::size_t rows_, columns_, nodes_;
    std::vector<float> gains_;     // by angle, then frequency
    std::vector<float> envelope_;  // by angle, then node
};

}  // namespace howlmap
