// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <array>
#include <vector>

#include "core/loop/blocks/block_kernel.h"

namespace howlmap {

/// Eigenvalues of the matrices of a block, one frequency a lane. Kept and filled again.
class BlockSpectrum {
  public:
    explicit BlockSpectrum(std::size_t n);
    std::size_t size() const { return n_; }
    Lanes* matrix() { return powers_[0].data(); }

    /// Upper bounds of the largest modulus from the first powers of the matrix; returns the largest of them.
    double find_bounds();
    double bound(std::size_t point) const { return bounds_.v[point]; }
    /// After find_bounds: all eigenvalues. Those small against the bound may be inaccurate.
    void find_eigenvalues();
    Complex eigenvalue(std::size_t i, std::size_t point) const { return roots_[i].at(point); }

  private:
    void solve_by_power_sums();
    /// Where the roots found have the right sum and sum of squares, given for eigenvalues in units of the bound, and
    /// none is beyond it. Where several all but coincide the iteration may not have come to an end.
    std::array<bool, kBlockPoints> sound_points(const Lanes& sum, const Lanes& square_sum) const;
    void solve_point(std::size_t p);

    std::size_t n_;
    std::vector<std::vector<Lanes>> powers_;  // M, M^2, ..
    RealLanes bounds_{};
    std::vector<Lanes> roots_;
};

}  // namespace howlmap
