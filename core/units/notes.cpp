// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/notes.h"

#include <array>
#include <cmath>

#include "core/units/translatable.h"
#include "core/units/translate.h"

namespace howlmap {
namespace {

constexpr std::array<const char*, 12> kNames = {
    translatable("notes", "C"),  translatable("notes", "C#"), translatable("notes", "D"),  translatable("notes", "D#"),
    translatable("notes", "E"),  translatable("notes", "F"),  translatable("notes", "F#"), translatable("notes", "G"),
    translatable("notes", "G#"), translatable("notes", "A"),  translatable("notes", "A#"), translatable("notes", "B")};

double semitones_of(double hz) { return 69.0 + 12.0 * std::log2(hz / 440.0); }

int nearest_semitone(double hz) { return static_cast<int>(std::floor(semitones_of(hz) + 0.5)); }

const char* name_of_step(int semitone) { return kNames[static_cast<std::size_t>(((semitone % 12) + 12) % 12)]; }

std::string octave_of(int semitone) { return std::to_string(static_cast<int>(std::floor(semitone / 12.0)) - 1); }

}  // namespace

Note note_of(double hz) {
    const int semitone = nearest_semitone(hz);
    return {translate("notes", name_of_step(semitone)) + octave_of(semitone), 100.0 * (semitones_of(hz) - semitone)};
}

std::string international_note(double hz) {
    const int semitone = nearest_semitone(hz);
    return name_of_step(semitone) + octave_of(semitone);
}

double semitone_hz(int semitone) { return 440.0 * std::exp2((semitone - 69) / 12.0); }

}  // namespace howlmap
