// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

namespace howlmap {

/// factors . x + constant
struct LinearRow {
    std::vector<double> factors;
    double constant = 0.0;
    double at(const std::vector<double>& x) const;
};

/// Least squares of linear rows within bounds and linear inequalities (sequential quadratic programming, D. Kraft,
/// 1988, by NLopt).
struct BoundedSquares {
    std::vector<LinearRow> rows;          ///< the sum of their squares becomes smallest
    std::vector<LinearRow> at_most_zero;  ///< each must stay <= 0
    std::vector<double> lowest, highest;  ///< bounds of x, same length

    /// The best x from a start within the bounds.
    std::vector<double> solve(std::vector<double> start) const;
};

}  // namespace howlmap
