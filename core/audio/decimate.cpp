// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/decimate.h"

#include <boost/math/special_functions/bessel.hpp>
#include <cmath>
#include <numbers>

namespace howlmap {

Decimator::Decimator(std::size_t factor) : factor_(factor) {
    if (factor == 1) {
        taps_ = {1.0};
        return;
    }
    constexpr double stop_db = 70.0, transition = 0.2;  // of the new rate
    const auto step = static_cast<double>(factor);
    const double beta = 0.1102 * (stop_db - 8.7);
    const double length = (stop_db - 8.0) / (2.285 * 2.0 * std::numbers::pi * transition / step);
    const auto half = static_cast<std::size_t>(std::ceil(length / 2.0));
    double sum = 0.0;
    for (std::size_t i = 0; i <= 2 * half; ++i) {
        const double n = static_cast<double>(i) - static_cast<double>(half);
        const double x = n / static_cast<double>(half), turn = std::numbers::pi * n / step;
        const double sinc = n == 0.0 ? 1.0 : std::sin(turn) / turn;
        const double window = boost::math::cyl_bessel_i(0, beta * std::sqrt(std::max(0.0, 1.0 - x * x)));
        taps_.push_back(sinc * window);
        sum += taps_.back();
    }
    for (double& tap : taps_) tap /= sum;
}

std::vector<double> Decimator::run(std::span<const float> samples, std::size_t from, std::size_t count) const {
    std::vector<double> out(count, 0.0);
    for (std::size_t k = 0; k < count; ++k) {
        const float* at = samples.data() + from + k * factor_ - reach();
        for (std::size_t i = 0; i < taps_.size(); ++i) out[k] += taps_[i] * static_cast<double>(at[i]);
    }
    return out;
}

std::complex<double> Decimator::gain(std::complex<double> z) const {
    std::complex<double> sum = taps_[reach()];
    for (std::size_t n = 1; n <= reach(); ++n) {
        const std::complex<double> power = std::pow(z, static_cast<double>(n));
        sum += taps_[reach() + n] * (power + 1.0 / power);
    }
    return sum;
}

}  // namespace howlmap
