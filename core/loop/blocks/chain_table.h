// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <memory>
#include <mutex>
#include <vector>

#include "core/loop/blocks/block_grid.h"
#include "core/loop/blocks/block_kernel.h"

namespace howlmap {

/// What a draw does not change, at the points of a block.
struct ChainValues {
    std::vector<Lanes> hears;                           ///< B P by input
    std::vector<Lanes> speaks;                          ///< R E exp(-jw (tau - common)) by slot
    std::vector<QuickLanes> quick_hears, quick_speaks;  ///< the same two in single precision
};

/// How the loops of a model are wired; sends as drawn.
Wiring wiring_of(const LoopModel& model);

/// Chains of a model at the points of any block.
ChainValues chain_values(const LoopModel& model, const Wiring& wiring, double common_s, const Block& block);

/// The same for the blocks of a grid, each computed when it is first asked for. May be asked from many threads.
class ChainTable {
  public:
    ChainTable(const LoopModel& model, const Wiring& wiring, double common_s, const BlockGrid& grid);
    const ChainValues& at(std::size_t block) const;

  private:
    const LoopModel* model_;
    const Wiring* wiring_;
    double common_s_;
    const BlockGrid* grid_;
    mutable std::unique_ptr<std::once_flag[]> once_;
    mutable std::vector<ChainValues> values_;
};

}  // namespace howlmap
