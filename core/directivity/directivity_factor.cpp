// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <vector>

#include "core/directivity/loudspeaker_directivity.h"

namespace howlmap {
namespace {
/// Panel limits in rad, 0..pi, close together near the axis where a beam may be narrow; kinks of a table are limits
/// too.
std::vector<double> panels(const Directivity& directivity, double hz, double speed) {
    std::vector<double> limits;
    for (double angle = kPi; angle > 1e-3; angle *= 0.75) limits.push_back(angle);
    limits.push_back(0.0);
    if (const auto* table = std::get_if<DirectivityTable>(&directivity))
        for (const double angle : table->angles_deg) limits.push_back(radians(angle));
    if (const auto* cap = std::get_if<CapOnSphere>(&directivity)) {
        const double lobes = std::min(2000.0, 2.0 * hz / speed * cap->sphere_radius_m + 8.0);  // about ka / pi of them
        for (double i = 1.0; i < lobes; ++i) limits.push_back(kPi * i / lobes);
    }
    std::sort(limits.begin(), limits.end());
    limits.erase(std::unique(limits.begin(), limits.end()), limits.end());
    return limits;
}

/// Mean over the turn about the axis of the squared gain; all models are the same in every quadrant.
double mean_square(const LoudspeakerSlice& slice, double off_axis, int turns) {
    double sum = 0.0;
    for (int i = 0; i < turns; ++i) {
        const double gain = slice.gain({off_axis, kPi / 2.0 * (i + 0.5) / turns});
        sum += gain * gain;
    }
    return sum / turns;
}
}  // namespace

double directivity_factor(const Directivity& directivity, double hz, double speed) {
    if (std::holds_alternative<Omni>(directivity)) return 1.0;
    const LoudspeakerSlice slice(directivity, hz, speed);
    const int turns = std::holds_alternative<Coverage>(directivity) ? 48 : 1;
    const auto square = [&](double angle) { return mean_square(slice, angle, turns) * std::sin(angle); };
    const std::vector<double> limits = panels(directivity, hz, speed);
    double sum = 0.0;
    for (std::size_t i = 0; i + 1 < limits.size(); ++i)
        sum += boost::math::quadrature::gauss<double, 10>::integrate(square, limits[i], limits[i + 1]);
    return 2.0 / sum;
}

}  // namespace howlmap
