// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/loop_sound.h"
#include "core/audio/voices.h"
#include "core/units/notes.h"

namespace howlmap {
namespace {

// Steps of a pentatonic scale up and down: every string player's warm-up, nobody's tune.
constexpr int kPhraseSteps[] = {0, 3, 5, 7, 10, 12, 10, 7};

}  // namespace

std::vector<float> built_in_phrase(const Spectrum& spectrum, double seconds, double rate_hz) {
    const auto* name = std::get_if<SpectrumName>(&spectrum);
    const SpectrumName kind = name ? *name : SpectrumName::pink;
    const bool bass = kind == SpectrumName::bass;
    const bool bowed = kind == SpectrumName::strings || kind == SpectrumName::voice;
    const int lowest = bass ? 28 : bowed ? 57 : 45;  // E1, A3, A2
    std::vector<float> out(static_cast<std::size_t>(seconds * rate_hz), 0.0f);
    const double length = bowed ? 0.9 : 0.6;
    int k = 0;
    // Played for two thirds of the time; then the loops are left to themselves.
    for (double t = 0.2; t + length < 0.67 * seconds; t += length, ++k) {
        const double hz = semitone_hz(lowest + kPhraseSteps[k % 8]);
        const auto seed = static_cast<std::uint64_t>(k + 1);
        if (bowed)
            mix_in(out, bowed_note({.hz = hz, .seconds = length, .seed = seed}, rate_hz), t, 0.6, rate_hz);
        else
            mix_in(out,
                   plucked_note({.hz = hz, .seconds = 2.0 * length, .brightness = bass ? 0.3 : 0.7, .seed = seed},
                                rate_hz),
                   t, 0.6, rate_hz);
    }
    return out;
}

}  // namespace howlmap
