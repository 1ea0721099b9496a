// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/resample.h"

#include <algorithm>
#include <boost/math/special_functions/bessel.hpp>
#include <cmath>
#include <numbers>

namespace howlmap {
namespace {

constexpr double kCrossings = 32.0;       // on either side
constexpr double kBeta = 8.0;             // 80 dB
constexpr std::size_t kTableSteps = 512;  // of the table between two zero crossings

// sinc(x) under its window, x = 0 .. kCrossings.
std::vector<double> kernel_table() {
    std::vector<double> table;
    for (std::size_t i = 0; i <= static_cast<std::size_t>(kCrossings) * kTableSteps + 1; ++i) {
        const double x = static_cast<double>(i) / kTableSteps, turn = std::numbers::pi * x,
                     along = std::min(1.0, x / kCrossings);
        const double window =
            boost::math::cyl_bessel_i(0, kBeta * std::sqrt(1.0 - along * along)) / boost::math::cyl_bessel_i(0, kBeta);
        table.push_back((i == 0 ? 1.0 : std::sin(turn) / turn) * window);
    }
    return table;
}

double kernel(const std::vector<double>& table, double x) {
    const double at = std::abs(x) * kTableSteps;
    const auto i = static_cast<std::size_t>(at);
    if (i + 1 >= table.size()) return 0.0;
    return table[i] + (at - static_cast<double>(i)) * (table[i + 1] - table[i]);
}

}  // namespace

std::vector<float> resampled(std::span<const float> sound, double from_hz, double to_hz) {
    if (from_hz == to_hz) return {sound.begin(), sound.end()};
    const std::vector<double> table = kernel_table();
    const double cut = 0.94 * std::min(1.0, to_hz / from_hz);  // of the old half rate; leaves the window room to fall
    const double reach = kCrossings / cut;
    std::vector<float> out(static_cast<std::size_t>(static_cast<double>(sound.size()) * to_hz / from_hz));
    for (std::size_t n = 0; n < out.size(); ++n) {
        const double centre = static_cast<double>(n) * from_hz / to_hz;
        const auto first = static_cast<std::size_t>(std::max(0.0, std::ceil(centre - reach)));
        const std::size_t last = std::min(sound.size(), static_cast<std::size_t>(centre + reach) + 1);
        double sum = 0.0;
        for (std::size_t k = first; k < last; ++k)
            sum += kernel(table, (static_cast<double>(k) - centre) * cut) * static_cast<double>(sound[k]);
        out[n] = static_cast<float>(cut * sum);
    }
    return out;
}

}  // namespace howlmap
