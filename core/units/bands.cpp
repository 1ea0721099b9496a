// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/bands.h"

#include <algorithm>
#include <cmath>

namespace howlmap {

const std::array<double, kThirdOctaves> kNominalThirdOctaves = {
    20,  25,   31.5, 40,   50,   63,   80,   100,  125,  160,  200,  250,   315,   400,   500,  630,
    800, 1000, 1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000, 10000, 12500, 16000, 20000};
const std::array<double, kOctaves> kNominalOctaves = {63, 125, 250, 500, 1000, 2000, 4000, 8000};

double third_octave_centre(int band) { return 1000.0 * std::pow(10.0, (band - 17) / 10.0); }

double octave_centre(int band) { return 1000.0 * std::pow(10.0, 3.0 * (band - 4) / 10.0); }

int third_octave_of(double hz) {
    const double exact = 10.0 * std::log10(hz / 1000.0) + 17.0;
    return static_cast<int>(std::clamp(std::floor(exact + 0.5), 0.0, kThirdOctaves - 1.0));
}

namespace {
template <std::size_t N>
std::optional<int> index_of(const std::array<double, N>& values, double value) {
    const auto found = std::find(values.begin(), values.end(), value);
    if (found == values.end()) return std::nullopt;
    return static_cast<int>(found - values.begin());
}
}  // namespace

std::optional<int> third_octave_of_nominal(double nominal_hz) { return index_of(kNominalThirdOctaves, nominal_hz); }

std::optional<int> octave_of_nominal(double nominal_hz) { return index_of(kNominalOctaves, nominal_hz); }

}  // namespace howlmap
