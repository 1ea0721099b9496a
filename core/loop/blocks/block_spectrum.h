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
    /// Where the iteration has come to an end, no root is beyond the bound and none of the larger is missing from the
    /// sum of squares; small ones need not be right. Given: roots in units of the bound.
    std::array<bool, kBlockPoints> sound_points(const RealLanes& moved, const Lanes& square_sum) const;
    void solve_point(std::size_t p);

    std::size_t n_;
    std::vector<std::vector<Lanes>> powers_;  // M, M^2, ..
    RealLanes bounds_{};
    std::vector<Lanes> roots_;
};

}  // namespace howlmap
