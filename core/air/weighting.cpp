// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/weighting.h"

#include <cmath>

#include "core/units/level.h"

namespace howlmap {
namespace {
// Exact poles in Hz (IEC 61672-1, Annex E: fr = 1000, fL = 10^1.5, fH = 10^3.9, fA = 10^2.45, D^2 = 1/2).
constexpr double kF1 = 20.5989970576, kF2 = 107.652648643, kF3 = 737.862230736, kF4 = 12194.217148;

double unnormalised_db(double hz) {
    const double f = hz * hz;
    const double above = kF4 * kF4 * f * f;
    const double below = (f + kF1 * kF1) * std::sqrt(f + kF2 * kF2) * std::sqrt(f + kF3 * kF3) * (f + kF4 * kF4);
    return ratio_to_db(above / below);
}
}  // namespace

double a_weighting_db(double hz) {
    static const double at_1_khz = unnormalised_db(1000.0);
    return unnormalised_db(hz) - at_1_khz;
}

const std::array<double, kThirdOctaves>& a_weighting_energies() {
    static const auto energies = [] {
        std::array<double, kThirdOctaves> all{};
        for (int band = 0; band < kThirdOctaves; ++band)
            all[static_cast<std::size_t>(band)] = db_to_energy(a_weighting_db(third_octave_centre(band)));
        return all;
    }();
    return energies;
}

}  // namespace howlmap
