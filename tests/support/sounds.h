// SPDX-License-Identifier: GPL-3.0-or-later
// Made sounds with known properties: instruments that must not be taken for a howl, music, and loops that howl.
#pragma once
#include <cstdint>
#include <random>
#include <vector>

namespace howlmap::test {

using Sound = std::vector<float>;

/// Seeded numbers that are the same with every standard library.
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : generator_(seed) {}
    double uniform(double from, double to);
    double log_uniform(double from, double to);
    int whole(int from, int to);  ///< both ends included
    double normal();
    std::uint64_t seed() { return generator_(); }

  private:
    std::mt19937_64 generator_;
};

Sound silence(double seconds, double rate);
Sound white_noise(Dice& dice, double seconds, double rate);            ///< rms 1
Sound pink_noise(Dice& dice, double seconds, double rate);             ///< rms 1
Sound sung_vowel(Dice& dice, double hz, double seconds, double rate);  ///< glottal pulses through formants, vibrato
Sound flute_note(Dice& dice, double hz, double seconds, double rate);  ///< few partials, breath, light vibrato, swell
Sound bass_note(Dice& dice, double hz, double seconds, double rate);
Sound pad_chord(Dice& dice, double seconds, double rate);  ///< filtered detuned saws, slow attack
Sound swelled_bow(Dice& dice, double seconds, double rate);
Sound drums(Dice& dice, double seconds, double rate);
Sound band_music(Dice& dice, double seconds, double rate);      ///< drums, bass, chords, a tune
Sound one_instrument(Dice& dice, double seconds, double rate);  ///< one of those that a detector may fall for

double rms(const Sound& sound);
void scale_to_rms(Sound& sound, double to);

/// A loop of one band-pass (second order) and a delay, closed through a soft amplifier: microphone = source + gain *
/// bandpass(delay(tanh)).
struct LoopSpec {
    double hz = 500.0;            ///< wanted; the loop's phase moves it a little
    double growth_db_per_s = 30;  ///< wanted, below the amplifier's bend
    double delay_s = 0.01;
    double q = 20.0;
};

struct HowlingLoop {
    double hz = 0.0, growth_db_per_s = 0.0;  ///< exact, from the closed loop's pole
    double gain = 0.0;
    int delay = 0;                          ///< samples
    double b0 = 0, b2 = 0, a1 = 0, a2 = 0;  ///< band-pass with b1 = 0
};

/// The loop whose pole lies nearest to the wanted frequency and grows exactly at the wanted rate.
HowlingLoop make_loop(const LoopSpec& spec, double rate);

/// What the microphone hears. The loop is open until from_s and pulled down by 6 dB from to_s on. ceiling: amplitude at
/// which the amplifier bends.
Sound run_loop(const HowlingLoop& loop, const Sound& source, double from_s, double to_s, double ceiling, double rate);

}  // namespace howlmap::test
