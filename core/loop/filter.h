// SPDX-License-Identifier: GPL-3.0-or-later
// Filters of the signal chain as analogue prototypes with their phase.
#pragma once
#include <utility>
#include <vector>

#include "core/show/filter.h"
#include "core/units/complex.h"

namespace howlmap {

/// One section of first or second order: (b2 s^2 + b1 s + b0) / (a2 s^2 + a1 s + a0), s = j f / hz.
struct Section {
    double hz = 1000.0;
    double b0 = 1.0, b1 = 0.0, b2 = 0.0;
    double a0 = 1.0, a1 = 0.0, a2 = 0.0;

    Complex at(double f) const;
    /// Quality of the sharper of pole and zero: how fast the phase may turn near hz. 0 for first order.
    double sharpness() const;
};

/// Butterworth high-pass and low-pass. Given: corner (-3.01 dB) above 0 Hz, order 1..8. Source: Butterworth, On the
/// theory of filter amplifiers, Experimental Wireless 7, 536-541, 1930.
std::vector<Section> butterworth_high_pass(double hz, int order);
std::vector<Section> butterworth_low_pass(double hz, int order);

/// Peaking filter (s^2 + s A/Q + 1) / (s^2 + s/(A Q) + 1), A = 10^(dB/40). Given: hz and q above 0.
/// Source: Bristow-Johnson, Audio EQ Cookbook (W3C note, 2021).
Section peaking(double hz, double q, double gain_db);
inline Section peaking(const PeakFilter& filter) { return peaking(filter.hz, filter.q, filter.gain_db); }

/// Q of the bands of a third-octave graphic equaliser: sqrt(2^(1/3)) / (2^(1/3) - 1).
inline constexpr double kGraphicBandQ = 4.318;
/// A graphic equaliser's band 0..30 at its exact centre.
Section graphic_band(int band, double gain_db);

/// A chain of sections with a gain (negative when its polarity is inverted), a delay and a table of magnitudes.
struct Filter {
    double gain = 1.0;
    double delay_s = 0.0;
    std::vector<Section> sections;
    std::vector<double> table_hz, table_db;  ///< dB over log f, held at the ends; empty: 0 dB

    Complex at(double hz) const;
    /// Gain and table: what is left of `at` without sections and delay.
    double size_without_sections(double hz) const;
    double magnitude(double hz) const { return std::abs(at(hz)); }
    /// Phase of the sections in turns, each section's own, not wrapped; without delay and polarity.
    double section_turns(double hz) const;
    bool inverted() const { return gain < 0.0; }
    void append(const std::vector<Section>& more);
    void append(const Section& one) { sections.push_back(one); }
};

}  // namespace howlmap
