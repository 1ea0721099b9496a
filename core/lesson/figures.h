// SPDX-License-Identifier: GPL-3.0-or-later
// What a bench shows: waves, phasors, and the comb of frequencies that fit.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/lesson/bench.h"
#include "core/units/complex.h"

namespace howlmap {

/// A frequency at which the sound comes back in step: the whole way round is a whole number of turns.
struct Fit {
    double hz = 0.0;
    double gain_db = 0.0;  ///< of the loop there; 0 and above rings
    std::string note;
    double cents = 0.0;
};

inline constexpr int kFan = 72;

struct LessonFigures {
    double hz = 0.0;
    double speed = 343.2;            ///< of sound, m/s
    double distance_m = 0.0;         ///< of the direct path
    std::optional<double> bounce_m;  ///< of the path by the floor
    double whole_waves = 0.0;        ///< r f / c of the direct path
    Complex direct, bounce, sum;     ///< loop gain at hz by path: 1 + 0j is on the verge of ringing; 0 without a loop
    std::optional<double> loop_gain_db;  ///< |sum|; absent without a loop
    double misfit = 0.5;                 ///< turns by which sum misses a whole number, 0 .. 0.5
    double pattern_db = 0.0;             ///< how the microphone hears the direct sound, against its axis
    double microphone_angle_deg = 0.0, loudspeaker_angle_deg = 0.0;
    double tone_cost_db = 0.0;        ///< rms over the third-octaves of what the mix's equalisers take
    std::optional<double> margin_db;  ///< as drawn, by the analysis of all loops
    std::optional<double> ring_hz;    ///< the first ring
    /// Amplitude ratios to the axis within the side view, a whole turn in kFan steps: leaving the loudspeaker by the
    /// angle above level towards the microphone, and arriving at the microphone from the angle above level towards the
    /// loudspeaker; the latter keeps its sign.
    std::vector<double> speaker_fan, microphone_fan;
    std::vector<Fit> comb;  ///< rising, 50 Hz .. 8 kHz
};

/// Everything of a bench at its frequency. Frequencies of the comb to 0.01 Hz.
LessonFigures figures_of(const Bench& bench);
/// The same, many times quicker, for a bench that differs from that of `before` in its frequency alone: comb, margin and
/// ring stay.
LessonFigures figures_at_other_frequency(const Bench& bench, const LessonFigures& before);

}  // namespace howlmap
