// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/block_spectrum.h"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>

#include "core/loop/eigenvalues.h"

namespace howlmap {
namespace {
/// Powers that are kept: traces of products of two of them give all power sums up to n.
std::size_t powers_for(std::size_t n) { return n > kMostRoots ? 3 : std::max<std::size_t>(1, (n + 1) / 2); }
}  // namespace

BlockSpectrum::BlockSpectrum(std::size_t n) : n_(n), powers_(powers_for(n), std::vector<Lanes>(n * n)), roots_(n) {}

double BlockSpectrum::find_bounds() {
    RealLanes squares[(kMostRoots + 1) / 2];
    for (std::size_t k = 0; k < powers_.size(); ++k) {
        if (k > 0) multiply_matrices(powers_[0].data(), powers_[k - 1].data(), n_, powers_[k].data());
        squares[k] = frobenius_square(powers_[k].data(), n_);
    }
    bounds_ = bounds_from_squares(squares, powers_.size());
    return *std::max_element(bounds_.v, bounds_.v + kBlockPoints);
}

void BlockSpectrum::find_eigenvalues() {
    if (n_ == 1) {
        roots_[0] = powers_[0][0];
    } else if (n_ <= kMostRoots) {
        solve_by_power_sums();
    } else {
        for (std::size_t p = 0; p < kBlockPoints; ++p) solve_point(p);
    }
}

void BlockSpectrum::solve_by_power_sums() {
    Lanes sums[kMostRoots];
    for (std::size_t k = 1; k <= n_; ++k) {
        const std::size_t a = std::min(k, powers_.size());
        if (k == 1) {
            sums[0] = powers_[0][0];
            for (std::size_t i = 1; i < n_; ++i)
                for (std::size_t p = 0; p < kBlockPoints; ++p) {
                    sums[0].re[p] += powers_[0][i * n_ + i].re[p];
                    sums[0].im[p] += powers_[0][i * n_ + i].im[p];
                }
        } else {
            const std::size_t high = std::min(a, k - 1);
            trace_of_product(powers_[high - 1].data(), powers_[k - high - 1].data(), n_, sums[k - 1]);
        }
    }
    for (std::size_t p = 0; p < kBlockPoints; ++p) {  // roots of modulus 1 at most
        const double down = bounds_.v[p] > 0.0 ? 1.0 / bounds_.v[p] : 0.0;
        double scale = 1.0;
        for (std::size_t k = 0; k < n_; ++k) {
            scale *= down;
            sums[k].re[p] *= scale;
            sums[k].im[p] *= scale;
        }
    }
    const RealLanes moved = roots_from_power_sums(sums, n_, roots_.data());
    const std::array<bool, kBlockPoints> sound = sound_points(moved, sums[1]);
    for (Lanes& root : roots_)
        for (std::size_t p = 0; p < kBlockPoints; ++p) {
            root.re[p] *= bounds_.v[p];
            root.im[p] *= bounds_.v[p];
        }
    for (std::size_t p = 0; p < kBlockPoints; ++p)
        if (!sound[p]) solve_point(p);
}

std::array<bool, kBlockPoints> BlockSpectrum::sound_points(const RealLanes& moved, const Lanes& square_sum) const {
    Lanes missing = square_sum;
    RealLanes largest{};
    for (const Lanes& root : roots_)
        for (std::size_t p = 0; p < kBlockPoints; ++p) {
            const double re = root.re[p], im = root.im[p];
            missing.re[p] -= re * re - im * im;
            missing.im[p] -= 2.0 * re * im;
            largest.v[p] = std::max(largest.v[p], re * re + im * im);
        }
    std::array<bool, kBlockPoints> sound{};
    for (std::size_t p = 0; p < kBlockPoints; ++p)
        sound[p] = moved.v[p] < 1e-12 && largest.v[p] < 1.0001 && std::norm(missing.at(p)) < 0.04;
    return sound;
}

void BlockSpectrum::solve_point(std::size_t p) {
    const auto n = static_cast<Eigen::Index>(n_);
    Eigen::MatrixXcd matrix(n, n);
    for (Eigen::Index i = 0; i < n; ++i)
        for (Eigen::Index j = 0; j < n; ++j) matrix(i, j) = powers_[0][static_cast<std::size_t>(i * n + j)].at(p);
    const std::vector<Complex> values = eigenvalues_of(matrix);
    for (std::size_t i = 0; i < n_; ++i) roots_[i].set(p, values[i]);
}

}  // namespace howlmap
