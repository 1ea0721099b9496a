// SPDX-License-Identifier: GPL-3.0-or-later
// Note names in equal temperament, A4 = 440 Hz (ISO 16:1975).
#pragma once
#include <string>

namespace howlmap {

struct Note {
    std::string name;    ///< "A4", "C#5" in the user's language ("B1" is "H1" in German): sharps only
    double cents = 0.0;  ///< how far the frequency lies above the note, -50 .. 50
};

/// Nearest note of a frequency, with scientific octave numbers. Valid for hz > 0.
Note note_of(double hz);
/// Its name for machines, "A#4": the same in every language. Valid for hz > 0.
std::string international_note(double hz);
/// Frequency in Hz of a MIDI-style semitone number (69 = A4).
double semitone_hz(int semitone);

}  // namespace howlmap
