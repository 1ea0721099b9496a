// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <functional>
#include <vector>

namespace howlmap {

struct Peak {
    double hz = 0.0;
    double value = 0.0;
};

/// Largest value of a function of frequency that was sampled on a rising grid, its peaks within 1 dB of the largest
/// sample refined. Given: samples (not negative, one a grid point), the function itself. An empty grid gives {0, 0}.
Peak largest_peak(const std::vector<double>& grid, const std::vector<double>& samples,
                  const std::function<double(double hz)>& function);

}  // namespace howlmap
