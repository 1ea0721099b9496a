// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/air.h"

#include <cmath>

namespace howlmap {

double speed_of_sound(double temperature_c) { return 343.2 * std::sqrt((temperature_c + 273.15) / 293.15); }

AirAbsorption::AirAbsorption(const Air& air) {
    constexpr double triple_point = 273.16, reference_k = 293.15, reference_kpa = 101.325;
    const double kelvin = air.temperature_c + 273.15;
    const double pressure = air.pressure_kpa / reference_kpa, warmth = kelvin / reference_k;
    const double saturation = std::pow(10.0, -6.8346 * std::pow(triple_point / kelvin, 1.261) + 4.6151);
    const double h = air.humidity_pct * saturation / pressure;  // molar concentration of water vapour, per cent
    oxygen_hz_ = pressure * (24.0 + 4.04e4 * h * (0.02 + h) / (0.391 + h));
    nitrogen_hz_ =
        pressure / std::sqrt(warmth) * (9.0 + 280.0 * h * std::exp(-4.170 * (std::pow(warmth, -1.0 / 3.0) - 1.0)));
    const double vibration = std::pow(warmth, -2.5);
    classical_ = 8.686 * 1.84e-11 / pressure * std::sqrt(warmth);
    oxygen_part_ = 8.686 * vibration * 0.01275 * std::exp(-2239.1 / kelvin);
    nitrogen_part_ = 8.686 * vibration * 0.1068 * std::exp(-3352.0 / kelvin);
}

double AirAbsorption::db_per_m(double hz) const {
    const double square = hz * hz;
    return square * (classical_ + oxygen_part_ / (oxygen_hz_ + square / oxygen_hz_) +
                     nitrogen_part_ / (nitrogen_hz_ + square / nitrogen_hz_));
}

}  // namespace howlmap
