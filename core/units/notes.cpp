// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/notes.h"

#include <array>
#include <cmath>

namespace howlmap {

Note note_of(double hz) {
    static constexpr std::array<const char*, 12> names = {"C",  "C#", "D",  "D#", "E",  "F",
                                                          "F#", "G",  "G#", "A",  "A#", "B"};
    const double semitones = 69.0 + 12.0 * std::log2(hz / 440.0);
    const double nearest = std::floor(semitones + 0.5);
    const int number = static_cast<int>(nearest);
    const int octave = static_cast<int>(std::floor(number / 12.0)) - 1;
    const auto step = static_cast<std::size_t>(((number % 12) + 12) % 12);
    return {names[step] + std::to_string(octave), 100.0 * (semitones - nearest)};
}

double semitone_hz(int semitone) { return 440.0 * std::exp2((semitone - 69) / 12.0); }

}  // namespace howlmap
