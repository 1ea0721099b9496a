// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/blocks/block_grid.h"
#include "core/loop/blocks/block_kernel.h"
#include "core/loop/blocks/node_tables.h"
#include "core/loop/blocks/stance.h"

namespace howlmap {

/// All paths of a model in one stance, their gains at the nodes. Kept and filled again for the next draw.
class Placement {
  public:
    /// Refers to model and tables. Floors are those of the model as drawn.
    Placement(const LoopModel& model, const NodeTables& tables);
    void set(const Stance& stance);

    double speed() const { return speed_; }
    /// H of one pair (input * speakers + speaker) at the points of a block, without the room.
    void transfer(std::size_t pair, const Block& block, Lanes& h) const;
    /// Largest sum of the sizes of all gains of a pair at nodes first .. last: |H| between them is nowhere larger.
    double largest_size(std::size_t pair, std::size_t first_node, std::size_t last_node) const;

    /// One path.
    struct Row {
        double delay_s, turns;  ///< turns: the loudspeaker's drawn phase, as a delay
        const CapTable* cap;    ///< multiplies the gains, if there
        const CapEnvelope* envelope;
        double off_axis;  ///< rad
    };
    std::size_t legs() const { return rows_.size(); }
    std::size_t first_leg(std::size_t pair) const { return first_[pair]; }  ///< up to that of the next pair
    const Row& leg(std::size_t leg) const { return rows_[leg]; }
    /// Gains of a path by node, without the lobes of a cap.
    const float* gains(std::size_t leg) const { return gains_.data() + leg * tables_->stride(); }

  private:
    void add_pair(std::size_t input, std::size_t speaker, const Stance& stance);
    void add_sizes(std::size_t row, float* sizes);
    void add_leg(const Path& path, std::size_t input, std::size_t speaker, const Stance& stance);

    const LoopModel* model_;
    const NodeTables* tables_;
    std::vector<Planes> planes_;  // by pair
    double speed_ = 0.0;
    std::vector<float> air_;  // Np/m by node
    std::vector<Row> rows_;
    std::vector<std::size_t> first_;  // row of each pair, and the end
    std::vector<float> gains_, sizes_, envelope_;
};

}  // namespace howlmap
