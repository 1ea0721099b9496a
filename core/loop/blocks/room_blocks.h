// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/blocks/block_grid.h"
#include "core/loop/room_field.h"

namespace howlmap {

/// The reverberant field of a model at the nodes of its grid.
class RoomBlocks {
  public:
    RoomBlocks(const LoopModel& model, const std::vector<double>& nodes);

    const RoomField& field() const { return field_; }
    std::size_t speakers() const { return speakers_.size(); }
    int input(std::size_t pair) const { return inputs_[pair / speakers_.size()]; }          ///< index in the show
    int loudspeaker(std::size_t pair) const { return speakers_[pair % speakers_.size()]; }  ///< index in the show
    double rms(std::size_t pair, std::size_t node) const { return rms_[pair * nodes_ + node]; }

  private:
    RoomField field_;
    std::vector<int> inputs_, speakers_;
    std::size_t nodes_;
    std::vector<double> rms_;
};

/// The room term of one draw.
class RoomDraw {
  public:
    RoomDraw(const RoomBlocks& room, const DrawNumbers& numbers, std::uint64_t first,
             const std::vector<double>& phases);
    /// Adds the room term of a pair at the points of a block to H.
    void add(std::size_t pair, const Block& block, Lanes& h) const;
    /// The largest it may be between a node and the next.
    double largest(std::size_t pair, std::size_t node) const;

  private:
    const RoomBlocks* room_;
    DrawNumbers numbers_;
    std::uint64_t first_;
    std::vector<Complex> turns_;  // drawn phase by speaker
};

}  // namespace howlmap
