// SPDX-License-Identifier: GPL-3.0-or-later
// The strongest crossing of a stance, found block by block where it may be.
#pragma once
#include <memory>
#include <optional>

#include "core/loop/blocks/block_spectrum.h"
#include "core/loop/blocks/chain_table.h"
#include "core/loop/blocks/interval_bounds.h"
#include "core/loop/blocks/placement.h"
#include "core/loop/blocks/room_blocks.h"
#include "core/loop/tolerance.h"

namespace howlmap {

/// What all draws of a show share. Refers to the show.
class BlockModel {
  public:
    explicit BlockModel(const Show& show);

    const LoopModel& model() const { return model_; }
    const StancePlan& plan() const { return plan_; }
    const BlockGrid& grid() const { return grid_; }
    const Wiring& wiring() const { return wiring_; }
    const NodeTables& tables() const { return tables_; }
    const ChainTable& chains() const { return chains_; }
    const IntervalBounds& bounds() const { return bounds_; }
    const RoomBlocks* room() const { return room_ ? &*room_ : nullptr; }
    double common_s() const { return timing_.common_s; }

  private:
    LoopModel model_;
    StancePlan plan_;
    LoopTiming timing_;
    BlockGrid grid_;
    Wiring wiring_;
    NodeTables tables_;
    ChainTable chains_;
    IntervalBounds bounds_;
    std::optional<RoomBlocks> room_;
};

/// Works through draws one after another; one a thread.
class BlockScan {
  public:
    explicit BlockScan(const BlockModel& shared);
    /// Strongest crossing of a draw, its size to about 0.01 dB and its frequency to a hundredth of a step. Absent below
    /// -60 dB.
    std::optional<DrawnMargin> margin(std::uint64_t draw);

  private:
    struct Found {
        double hz = 0.0, size = 0.0;
    };
    void scan(const Block& block, const ChainValues& chains, int depth);
    void look_between(const Block& block, const BlockSpectrum& spectrum, std::size_t point, int depth);

    const BlockModel* shared_;
    Stance stance_;
    Wiring wiring_;
    Placement placement_;
    std::vector<Lanes> h_, scratch_;
    std::vector<std::unique_ptr<BlockSpectrum>> spectra_;  // one a depth
    std::optional<RoomDraw> room_;
    Found best_;
};

}  // namespace howlmap
