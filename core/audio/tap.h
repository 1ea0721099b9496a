// SPDX-License-Identifier: GPL-3.0-or-later
// Body modes of a tapped instrument.
#pragma once
#include <span>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/show/input.h"
#include "core/units/job.h"

namespace howlmap {

struct TapMode {
    double hz = 0.0;
    double q = 0.0;
    double level_db = 0.0;  ///< of the decaying sinusoid at the moment of the tap, re the strongest
    double gain_db =
        0.0;  ///< height of its peak in the response to a tap, re the highest: what a pickup's mode is given
};

struct TapFindings {
    int taps = 0;
    std::vector<TapMode> modes;  ///< strongest first
};

/// Modes from a recording of one or more taps (the strings damped), averaged over the taps. rate 8000..192000 Hz; full
/// scale 1. Method: three ranges (20..200, 160..1000, 800..4000 Hz) are decimated and each is fitted with decaying
/// sinusoids by ESPRIT, all taps together. Accuracy at 40 dB over the noise, modes 5 % apart: frequency 0.5 %, Q 10 %.
/// Modes below Q 3 or above Q 400 and those more than 40 dB below the strongest are left out. The first 3 ms after a
/// tap, in which the finger still pushes, are not used. Error: one sentence when there is no tap, or it is cut short;
/// "cancelled" when the job was.
tl::expected<TapFindings, std::string> tap_modes(std::span<const float> samples, double rate_hz, const Job& job = {});

/// The modes as a pickup takes them, the highest at 0 dB; at most 12, in rising frequency. Of modes that the pickup has
/// already, name and air mark are kept where one is found within 10 %.
std::vector<BodyMode> body_modes(const TapFindings& findings, const std::vector<BodyMode>& known = {});

}  // namespace howlmap
