// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <vector>

#include "core/loop/blocks/block_grid.h"
#include "core/show/directivity.h"

namespace howlmap {

/// Gains of a cap on a sphere, tabulated over frequency and angle closely enough for its lobes: within about half a per
/// cent of the lobe that a value lies in, for spheres up to about half a metre. Larger ones, which no loudspeaker is,
/// get a coarser table.
class CapTable {
  public:
    /// Given: the cap, speed of sound in m/s that the table is made for.
    CapTable(const CapOnSphere& cap, double speed);
    const CapOnSphere& cap() const { return cap_; }
    double speed() const { return speed_; }
    std::size_t bytes() const { return gains_.size() * sizeof(float); }

    /// Multiplies gains by the directivity at the points of a block. Given: angle off axis in rad, speed of sound now.
    void apply(double off_axis, double speed, const Block& block, double* gains) const;
    /// The gains over frequency at one angle, column by column.
    void row(double off_axis, std::vector<float>& gains) const;
    /// Columns a hertz at a speed of sound: what counts is the wave number.
    double columns_a_hertz(double speed) const { return speed_ / speed / step_hz_; }

  private:
    friend class CapEnvelope;
    void fill();
    std::size_t row_of(double off_axis) const;

    CapOnSphere cap_;
    double speed_, step_hz_, angle_step_;
    std::size_t rows_, columns_;
    std::vector<float> gains_;  // by angle, then frequency
};

/// Tables are kept for the next model with the same cap, up to 32 MiB of them, the latest at any rate. May be asked
/// from many threads.
std::shared_ptr<const CapTable> cap_table(const CapOnSphere& cap, double speed);
/// Keeps the latest 8 MiB of them, which are those of the show in hand: for when nothing is computed for a while.
void shrink_cap_tables();

/// The largest values of a table around each of some frequencies.
class CapEnvelope {
  public:
    /// Given: coarse nodes, rising, Hz.
    CapEnvelope(const CapTable& table, const std::vector<double>& nodes);
    /// Multiplies gains by node by the largest value around this node and angle. Angle in rad.
    void apply(double off_axis, float* gains) const;

  private:
    std::size_t nodes_, rows_;
    double angle_step_;
    std::vector<float> largest_;  // by angle, then node
};

}  // namespace howlmap
