// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <vector>

#include "core/loop/blocks/chain_table.h"
#include "core/loop/blocks/placement.h"
#include "core/loop/blocks/room_blocks.h"

namespace howlmap {

/// What a grid is for: following all loci of the show as drawn, without the room term; its draws; finding the strongest
/// crossing as drawn alone; or a curve over frequency as drawn, at least 85 points an octave however many paths there
/// are.
enum class Purpose { as_drawn, draws, strongest, curve };

/// What all stances of a show share: its loops, a grid of blocks, and everything on it that a stance does not change.
/// Refers to the show; its parts refer to each other.
class BlockModel {
  public:
    BlockModel(const Show& show, Purpose purpose);
    BlockModel(const BlockModel&) = delete;
    BlockModel& operator=(const BlockModel&) = delete;

    Purpose purpose() const { return purpose_; }
    const LoopModel& model() const { return model_; }
    const StancePlan& plan() const { return plan_; }
    const BlockGrid& grid() const { return grid_; }
    const Wiring& wiring() const { return wiring_; }
    const NodeTables& tables() const { return tables_; }
    const ChainTable& chains() const { return chains_; }
    /// For a first look, with a room; empty without.
    const Survey& survey() const { return survey_; }
    const ChainTable& survey_chains() const { return *survey_chains_; }
    /// Which part of the survey a block belongs to, or -1.
    int part_of(std::size_t block) const { return part_of_.empty() ? -1 : part_of_[block]; }
    const RoomBlocks* room() const { return room_ ? &*room_ : nullptr; }
    double common_s() const { return timing_.common_s; }

  private:
    Purpose purpose_;
    LoopModel model_;
    StancePlan plan_;
    LoopTiming timing_;
    BlockGrid grid_;
    Wiring wiring_;
    NodeTables tables_;
    ChainTable chains_;
    std::optional<RoomBlocks> room_;
    Survey survey_;
    std::optional<ChainTable> survey_chains_;
    std::vector<int> part_of_;
};

}  // namespace howlmap
