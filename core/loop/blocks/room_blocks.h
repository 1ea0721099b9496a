// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstdint>
#include <vector>

#include "core/loop/blocks/block_grid.h"
#include "core/loop/room_field.h"

namespace howlmap {

/// The reverberant field of a model at the nodes of its grid.
class RoomBlocks {
  public:
    RoomBlocks(const LoopModel& model, const std::vector<double>& nodes);

    const RoomField& field() const { return field_; }
    std::size_t pairs() const { return inputs_.size() * speakers_.size(); }
    std::size_t speakers() const { return speakers_.size(); }
    int input(std::size_t pair) const { return inputs_[pair / speakers_.size()]; }          ///< index in the show
    int loudspeaker(std::size_t pair) const { return speakers_[pair % speakers_.size()]; }  ///< index in the show
    double rms(std::size_t pair, std::size_t node) const { return rms_[pair * nodes_ + node]; }
    double largest_rms(std::size_t pair, std::size_t first_node, std::size_t last_node) const;

  private:
    RoomField field_;
    std::vector<int> inputs_, speakers_;
    std::size_t nodes_;
    std::vector<double> rms_;
};

/// The knots around a block, and where between them a frequency lies.
struct KnotSpan {
    std::uint64_t first = 0;
    std::size_t count = 0;
    struct Place {
        std::size_t knot;  ///< the lower one, counted from the first
        double low, high;  ///< weights of it and the next, which keep the variance
    };
    Place place(double hz, double spacing) const;
};
KnotSpan knot_span(const Block& block, double spacing);

/// The room term of one draw, block by block. Kept and set again.
class RoomDraw {
  public:
    explicit RoomDraw(const RoomBlocks& room);
    /// Given: place of the draw's first room number, drawn phases by speaker in turns.
    void set(const DrawNumbers& numbers, std::uint64_t first, const std::vector<double>& phases);

    /// Computes the independent values around a block, for all pairs.
    void enter(const Block& block);
    /// Largest of sqrt(sum over pairs of weights |z|^2) within the block entered. Given: weights by pair.
    double largest(const std::vector<double>& weights) const;
    /// Adds the room term of a pair at the points of the block entered to H.
    void add(std::size_t pair, const Block& block, Lanes& h) const;

  private:
    const RoomBlocks* room_;
    std::size_t stride_;                 // pairs, up to a whole vector
    std::vector<std::uint64_t> states_;  // of the generator before the first knot, by pair
    std::vector<Complex> turns_;         // drawn phase by speaker
    std::size_t knots_ = 0;
    std::vector<double> re_, im_;     // by knot, then pair
    std::vector<RealLanes> weights_;  // of each knot at each point
};

}  // namespace howlmap
