// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propagation/reflection.h"

#include <algorithm>
#include <cmath>

#include "core/units/bands.h"

namespace howlmap {

double absorption_at(const Absorption& absorption, double hz) {
    if (const auto* same = std::get_if<double>(&absorption)) return *same;
    const auto& octaves = std::get<std::map<int, double>>(absorption);
    if (octaves.empty()) return 0.0;
    auto above = octaves.begin();
    while (above != octaves.end() && octave_centre(above->first) <= hz) ++above;
    if (above == octaves.begin()) return above->second;
    const auto below = std::prev(above);
    if (above == octaves.end()) return below->second;
    const double low = octave_centre(below->first), high = octave_centre(above->first);
    const double t = std::log2(hz / low) / std::log2(high / low);
    return below->second + (above->second - below->second) * t;
}

double reflection_factor(const Absorption& absorption, double hz) {
    return std::sqrt(std::max(0.0, 1.0 - absorption_at(absorption, hz)));
}

}  // namespace howlmap
