// SPDX-License-Identifier: GPL-3.0-or-later
// One loudspeaker and one microphone or instrument on a bench, turned by knobs. A bench is a show of one loop, so every
// figure of a lesson comes from the same computation as that of a stage.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/show/show.h"

namespace howlmap {

struct Bench {
    Show show;                ///< one loudspeaker, one input, one mix that sends the one to the other
    double hz = 1000.0;       ///< the frequency that is looked at
    std::string loudspeaker;  ///< id of the loudspeaker, also while the player hears by in-ears
    friend bool operator==(const Bench&, const Bench&) = default;
};

/// Everything that can be turned. Switches are 0 or 1; `pattern` counts omni, subcardioid, cardioid, supercardioid,
/// hypercardioid, figure-8 from 0.
enum class Knob {
    hz,
    distance,        ///< across the floor, m
    height,          ///< of the microphone or instrument, m
    speaker_height,  ///< m
    aim,             ///< of the microphone, deg: 0 level towards the loudspeaker, 90 up, 180 away from it
    tilt,            ///< of the loudspeaker, deg: 0 level towards the microphone, 90 up
    level,           ///< dB SPL at 1 m that loud playing reaches
    source,          ///< dB SPL that the player makes at the microphone: nearer is louder
    latency,         ///< ms
    polarity,
    floor,  ///< whether the floor reflects
    pattern,
    body,        ///< a pickup on a body instead of a microphone
    covered,     ///< the body's sound holes
    cut_hz,      ///< where one third-octave band is pulled
    band_cut,    ///< by how much, dB
    middle_cut,  ///< all bands from 500 Hz to 2 kHz, dB
    in_ears
};
inline constexpr int kKnobs = 18;

struct KnobRange {
    const char* key;  ///< in lesson files
    double least, most, step;
};
const KnobRange& range_of(Knob knob);
std::optional<Knob> knob_named(std::string_view key);
bool is_switch(Knob knob);

/// A wedge on a reflecting floor, a cardioid microphone before it.
Bench plain_bench();
double value_of(const Bench& bench, Knob knob);
/// Held within the knob's range; a value that is not finite leaves the bench as it was.
void turn(Bench& bench, Knob knob, double value);

const Loudspeaker& loudspeaker_of(const Bench& bench);
const Input& input_of(const Bench& bench);

}  // namespace howlmap
