// SPDX-License-Identifier: GPL-3.0-or-later
// Note names in equal temperament, A4 = 440 Hz (ISO 16:1975).
#pragma once
#include <string>

namespace howlmap {

struct Note {
    std::string name;    ///< "A4", "C#5": sharps only, scientific octave numbers
    double cents = 0.0;  ///< how far the frequency lies above the note, -50 .. 50
};

/// Nearest note of a frequency. Valid for hz > 0.
Note note_of(double hz);
/// Frequency in Hz of a MIDI-style semitone number (69 = A4).
double semitone_hz(int semitone);

}  // namespace howlmap
