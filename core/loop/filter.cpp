// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/filter.h"

#include <algorithm>
#include <cmath>

#include "core/directivity/table.h"
#include "core/geometry/pose.h"
#include "core/loop/divided.h"
#include "core/units/bands.h"
#include "core/units/level.h"

namespace howlmap {

Complex Section::at(double f) const {
    const double u = f / hz, square = u * u;
    return divided({b0 - b2 * square, b1 * u}, {a0 - a2 * square, a1 * u});
}

double Section::sharpness() const {
    const auto quality = [](double c0, double c1, double c2) { return c1 > 0.0 ? std::sqrt(c0 * c2) / c1 : 0.0; };
    return std::max(quality(b0, b1, b2), quality(a0, a1, a2));
}

namespace {
/// Damping terms of the sections of a Butterworth polynomial: s^2 + d s + 1; a last s + 1 if the order is odd.
std::vector<double> butterworth_dampings(int order) {
    std::vector<double> dampings;
    for (int k = 1; k <= order / 2; ++k) dampings.push_back(2.0 * std::sin((2.0 * k - 1.0) * kPi / (2.0 * order)));
    return dampings;
}
}  // namespace

std::vector<Section> butterworth_high_pass(double hz, int order) {
    std::vector<Section> sections;
    for (const double damping : butterworth_dampings(order))
        sections.push_back({.hz = hz, .b0 = 0.0, .b2 = 1.0, .a1 = damping, .a2 = 1.0});
    if (order % 2 == 1) sections.push_back({.hz = hz, .b0 = 0.0, .b1 = 1.0, .a1 = 1.0});
    return sections;
}

std::vector<Section> butterworth_low_pass(double hz, int order) {
    std::vector<Section> sections;
    for (const double damping : butterworth_dampings(order)) sections.push_back({.hz = hz, .a1 = damping, .a2 = 1.0});
    if (order % 2 == 1) sections.push_back({.hz = hz, .a1 = 1.0});
    return sections;
}

Section peaking(double hz, double q, double gain_db) {
    const double a = std::pow(10.0, gain_db / 40.0);
    // Both sides times q: the widest of bands, q next to 0, divide by nothing.
    return {.hz = hz, .b0 = q, .b1 = a, .b2 = q, .a0 = q, .a1 = 1.0 / a, .a2 = q};
}

Section graphic_band(int band, double gain_db) { return peaking(third_octave_centre(band), kGraphicBandQ, gain_db); }

double Filter::size_without_sections(double hz) const {
    if (table_hz.empty()) return gain;
    const Between place = between_log(table_hz, hz);
    return gain * db_to_ratio(table_db[place.low] * (1.0 - place.t) + table_db[place.high] * place.t);
}

Complex Filter::at(double hz) const {
    const double size = size_without_sections(hz);
    Complex value = delay_s == 0.0 ? Complex(size, 0.0) : std::polar(1.0, -2.0 * kPi * hz * delay_s) * size;
    for (const Section& section : sections) value = times(value, section.at(hz));
    return value;
}

double Filter::section_turns(double hz) const {
    double sum = 0.0;
    for (const Section& section : sections) sum += std::arg(section.at(hz));
    return sum / (2.0 * kPi);
}

void Filter::append(const std::vector<Section>& more) { sections.insert(sections.end(), more.begin(), more.end()); }

}  // namespace howlmap
