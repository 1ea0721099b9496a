// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/spectral_top.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <kissfft/kissfft.hh>
#include <numbers>

namespace howlmap {

double dominant_hz(const std::vector<float>& sound, double growth_db_per_sample, double rate_hz) {
    std::size_t n = 1;
    while (2 * n <= sound.size() / 2) n *= 2;
    std::vector<std::complex<double>> time(n), spectrum(n);
    for (std::size_t i = 0; i < n; ++i) {
        const double window =
            0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(n));
        const double level = std::pow(10.0, growth_db_per_sample * static_cast<double>(n - i) / 20.0);
        time[i] = window * level * static_cast<double>(sound[sound.size() - n + i]);
    }
    kissfft<double>(n, false).transform(time.data(), spectrum.data());
    std::size_t best = 1;
    for (std::size_t k = 1; k + 1 < n / 2; ++k)
        if (std::norm(spectrum[k]) > std::norm(spectrum[best])) best = k;
    const auto db = [&](std::size_t k) { return std::log(std::max(std::norm(spectrum[k]), 1e-300)); };
    const double below = db(best - 1), here = db(best), above = db(best + 1);
    const double bend = below - 2.0 * here + above;
    const double offset = bend < 0.0 ? 0.5 * (below - above) / bend : 0.0;
    return (static_cast<double>(best) + offset) * rate_hz / static_cast<double>(n);
}

}  // namespace howlmap
