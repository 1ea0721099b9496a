// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/bounded_squares.h"

#include <algorithm>
#include <exception>
#include <nlopt.hpp>

namespace howlmap {
namespace {
constexpr int kMostEvaluations = 2000;

double sum_of_squares(const std::vector<double>& x, std::vector<double>& gradient, void* data) {
    const auto& rows = static_cast<const BoundedSquares*>(data)->rows;
    std::fill(gradient.begin(), gradient.end(), 0.0);
    double total = 0.0;
    for (const LinearRow& row : rows) {
        const double value = row.at(x);
        total += value * value;
        for (std::size_t i = 0; i < gradient.size(); ++i) gradient[i] += 2.0 * value * row.factors[i];
    }
    return total;
}

double inequality(const std::vector<double>& x, std::vector<double>& gradient, void* data) {
    const auto& row = *static_cast<const LinearRow*>(data);
    if (!gradient.empty()) gradient = row.factors;
    return row.at(x);
}
}  // namespace

double LinearRow::at(const std::vector<double>& x) const {
    double value = constant;
    for (std::size_t i = 0; i < factors.size(); ++i) value += factors[i] * x[i];
    return value;
}

std::vector<double> BoundedSquares::solve(std::vector<double> start) const {
    if (start.empty()) return start;
    nlopt::opt search(nlopt::LD_SLSQP, static_cast<unsigned>(start.size()));
    search.set_min_objective(sum_of_squares, const_cast<BoundedSquares*>(this));
    for (const LinearRow& row : at_most_zero)
        search.add_inequality_constraint(inequality, const_cast<LinearRow*>(&row), 1e-9);
    search.set_lower_bounds(lowest);
    search.set_upper_bounds(highest);
    search.set_xtol_rel(1e-12);
    search.set_ftol_abs(1e-24);
    search.set_maxeval(kMostEvaluations);
    double least = 0.0;
    try {
        search.optimize(start, least);
    } catch (const nlopt::roundoff_limited&) {
        // The last point is as good as double precision allows.
    } catch (const std::runtime_error&) {
        // Not improvable further; the best point so far stands.
    }
    return start;
}

}  // namespace howlmap
