// SPDX-License-Identifier: GPL-3.0-or-later
// Built-in notes with which a loop is made to sound when no recording is at hand.
#pragma once
#include <cstdint>
#include <vector>

namespace howlmap {

/// A plucked string. Extended plucked-string algorithm: D. A. Jaffe, J. O. Smith, "Extensions of the Karplus-Strong
/// plucked-string algorithm", Computer Music Journal 7(2), 1983: delay line with a two-point loss filter, an allpass
/// for fine tuning, and a comb for the place of the pluck.
struct Pluck {
    double hz = 220.0;        ///< above 20, below a quarter of the rate
    double seconds = 2.0;     ///< length of the note
    double decay_s = 2.5;     ///< time in which it falls 60 dB
    double place = 0.18;      ///< of the string's length, 0..0.5
    double brightness = 0.7;  ///< 0..1
    std::uint64_t seed = 1;
};

/// A bowed note: partials of an ideal (Helmholtz) bowed string, 1/n, through a broad body colour, with swell, vibrato
/// and a little bow noise.
struct Bow {
    double hz = 440.0;  ///< above 20, below a quarter of the rate
    double seconds = 2.0;
    double attack_s = 0.12;  ///< to full level, raised cosine
    double release_s = 0.15;
    double swell_db = 0.0;  ///< rise from begin to end, straight in dB
    double vibrato_hz = 5.5;
    double vibrato_cents = 15.0;  ///< peak deviation
    std::uint64_t seed = 1;
};

/// Samples at the rate (Hz); rms about 0.1 to 0.2 while loud. The same arguments give the same samples.
std::vector<float> plucked_note(const Pluck& pluck, double rate_hz);
std::vector<float> bowed_note(const Bow& bow, double rate_hz);

/// Adds a sound to another from a time on; what would stick out at the end is cut off.
void mix_in(std::vector<float>& into, const std::vector<float>& sound, double at_s, double gain, double rate_hz);

}  // namespace howlmap
