// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/blocks/placement.h"
#include "core/loop/blocks/room_blocks.h"

namespace howlmap {

/// How large an eigenvalue can be at most in a stretch of frequencies, whatever the phases: where to look first, and
/// where not at all. Any norm bounds the eigenvalues; the rows and columns are weighted so that the norm comes close to
/// the Perron root.
class IntervalBounds {
  public:
    /// `room` may be null.
    IntervalBounds(const LoopModel& model, const Wiring& wiring, const BlockGrid& grid, const RoomBlocks* room);

    struct Entry {
        double bound;  ///< of the largest modulus
        double rough;  ///< with a room: the spectral radius of the matrix of rms values
        std::size_t interval;
    };
    std::size_t size() const { return intervals_.size(); }
    /// Blocks of each, [first, last); by rising frequency, side by side.
    struct Blocks {
        std::size_t first, last;
    };
    Blocks blocks(std::size_t interval) const { return {intervals_[interval].first, intervals_[interval].last}; }
    /// All intervals for a placement, largest bound first. With a room the bound holds at a frequency but for once in
    /// 10^8 draws, or as a forecast says: at most so many times the rough size, by interval (may be empty).
    void order(const Placement& placement, const Wiring& wiring, const std::vector<double>& most,
               std::vector<Entry>& entries);
    /// After order: weights of rows and columns that bring the norms of an interval's matrices close to their spectral
    /// radius. D^-1 M D has the eigenvalues of M.
    const std::vector<double>& balance(std::size_t interval) const { return balances_[interval]; }

  private:
    struct Interval {
        std::size_t first, last, low_node, high_node;
        std::vector<double> hears, speaks;  // largest |B P| by input, |R E| by slot
        std::vector<double> rms;            // largest by pair
    };
    void fill_matrix(const Interval& interval, const Placement& placement, const Wiring& wiring);
    void fill_squares(const Interval& interval, const Wiring& wiring);
    double find_balance(std::size_t n, std::vector<double>& balance);
    double balanced_norm(std::size_t n) const;
    double room_norm(const Interval& interval, const Wiring& wiring, const std::vector<double>& balance);

    std::vector<Interval> intervals_;
    std::vector<std::vector<double>> balances_;
    // squares_: of the rms values, room included; empty without one
    std::vector<double> heard_, matrix_, squares_, right_, left_, next_, weights_;
};

}  // namespace howlmap
