// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/sounds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/audio/voices.h"
#include "core/units/level.h"
#include "core/units/notes.h"

namespace howlmap::test {
namespace {
constexpr double kSoundTurn = 2.0 * std::numbers::pi;

std::size_t count(double seconds, double rate) { return static_cast<std::size_t>(seconds * rate); }

// Two-pole resonator with unit gain at its peak (about): J. O. Smith's constant-peak-gain form, zeros at +-1.
struct Resonator {
    double r, c, x1 = 0, x2 = 0, y1 = 0, y2 = 0;
    Resonator(double hz, double bandwidth, double rate)
        : r(std::exp(-std::numbers::pi * bandwidth / rate)), c(2.0 * r * std::cos(kSoundTurn * hz / rate)) {}
    double operator()(double x) {
        const double y = 0.5 * (1.0 - r * r) * (x - x2) + c * y1 - r * r * y2;
        x2 = x1, x1 = x, y2 = y1, y1 = y;
        return y;
    }
};

double rise(double t, double over) { return 0.5 - 0.5 * std::cos(std::numbers::pi * std::clamp(t / over, 0.0, 1.0)); }
}  // namespace

double Dice::uniform(double from, double to) {
    return from + (to - from) * static_cast<double>(generator_() >> 11) * 0x1p-53;
}
double Dice::log_uniform(double from, double to) { return from * std::pow(to / from, uniform(0.0, 1.0)); }
int Dice::whole(int from, int to) { return std::min(to, from + static_cast<int>(uniform(0.0, to - from + 1.0))); }
double Dice::normal() {
    return std::sqrt(-2.0 * std::log(1.0 - uniform(0.0, 1.0))) * std::cos(kSoundTurn * uniform(0.0, 1.0));
}

double rms(const Sound& sound) {
    double sum = 0.0;
    for (const float x : sound) sum += static_cast<double>(x) * x;
    return std::sqrt(sum / std::max<double>(1.0, static_cast<double>(sound.size())));
}

void scale_to_rms(Sound& sound, double to) {
    const double factor = to / std::max(1e-12, rms(sound));
    for (float& x : sound) x = static_cast<float>(x * factor);
}

Sound silence(double seconds, double rate) { return Sound(count(seconds, rate), 0.0f); }

Sound white_noise(Dice& dice, double seconds, double rate) {
    Sound out = silence(seconds, rate);
    for (float& x : out) x = static_cast<float>(std::sqrt(3.0) * dice.uniform(-1.0, 1.0));
    return out;
}

// Paul Kellet's filter of three first-order sections, within 0.5 dB of 3 dB an octave above 40 Hz at 44.1 kHz.
Sound pink_noise(Dice& dice, double seconds, double rate) {
    Sound out = white_noise(dice, seconds, rate);
    double a = 0, b = 0, c = 0;
    for (float& x : out) {
        a = 0.99765 * a + 0.0990460 * x;
        b = 0.96300 * b + 0.2965164 * x;
        c = 0.57000 * c + 1.0526913 * x;
        x = static_cast<float>(a + b + c + 0.1848 * x);
    }
    scale_to_rms(out, 1.0);
    return out;
}

Sound sung_vowel(Dice& dice, double hz, double seconds, double rate) {
    // Formants of ah, oh, oo, ee: G. E. Peterson, H. L. Barney, J. Acoust. Soc. Am. 24, 1952 (from memory), and a
    // singer's third.
    constexpr std::array<std::array<double, 3>, 4> vowels{
        {{730, 1090, 2440}, {570, 840, 2410}, {300, 870, 2240}, {270, 2290, 3010}}};
    const auto& formants = vowels[static_cast<std::size_t>(dice.whole(0, 3))];
    std::vector<Resonator> tract;
    for (std::size_t i = 0; i < 3; ++i)
        if (formants[i] < 0.45 * rate) tract.emplace_back(formants[i], 60.0 + 40.0 * static_cast<double>(i), rate);
    const double vibrato = dice.uniform(4.8, 6.5), cents = dice.uniform(15.0, 70.0), swell = dice.uniform(0.0, 15.0);
    Sound out = silence(seconds, rate);
    double phase = 0.0, glottis = 0.0;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double t = static_cast<double>(i) / rate;
        const double drift = cents * std::sin(kSoundTurn * vibrato * t) + 3.0 * std::sin(1.3 * t);
        phase += hz * std::exp2(drift / 1200.0) / rate;
        const double pulse = phase >= 1.0 ? (phase -= 1.0, 1.0) : 0.0;
        glottis += 0.15 * (pulse - glottis);
        double sum = 0.0, weight = 1.0;
        for (Resonator& r : tract) sum += weight * r(glottis + 0.002 * dice.uniform(-1.0, 1.0)), weight *= 0.6;
        out[i] = static_cast<float>(sum * rise(t, 0.15) * rise(seconds - t, 0.15) *
                                    db_to_ratio(swell * (t / seconds - 1.0)));
    }
    scale_to_rms(out, 0.2);
    return out;
}

Sound flute_note(Dice& dice, double hz, double seconds, double rate) {
    const double second = dice.uniform(-24.0, -8.0), third = second - dice.uniform(4.0, 14.0);
    const double vibrato = dice.uniform(4.5, 6.0), cents = dice.uniform(3.0, 15.0), tremolo = dice.uniform(0.05, 0.2);
    const double swell = dice.uniform(0.0, 20.0);
    const std::array<double, 4> partials{1.0, db_to_ratio(second), db_to_ratio(third), db_to_ratio(third - 10.0)};
    Resonator breath(hz, 0.3 * hz, rate);
    Sound out = silence(seconds, rate);
    double phase = 0.0;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double t = static_cast<double>(i) / rate;
        const double turn = std::sin(kSoundTurn * vibrato * t);
        phase += kSoundTurn * hz * std::exp2(cents * turn / 1200.0) / rate;
        double sum = 0.05 * breath(dice.uniform(-1.0, 1.0));
        for (std::size_t n = 0; n < partials.size(); ++n) {
            const auto times = static_cast<double>(n + 1);
            if (times * hz < 0.45 * rate) sum += partials[n] * (1.0 + tremolo * times * turn) * std::sin(times * phase);
        }
        out[i] =
            static_cast<float>(sum * rise(t, 0.08) * rise(seconds - t, 0.1) * db_to_ratio(swell * (t / seconds - 1.0)));
    }
    scale_to_rms(out, 0.2);
    return out;
}

Sound bass_note(Dice& dice, double hz, double seconds, double rate) {
    Pluck pluck;
    pluck.hz = hz, pluck.seconds = seconds, pluck.decay_s = dice.uniform(3.0, 10.0),
    pluck.brightness = dice.uniform(0.05, 0.5);
    pluck.place = dice.uniform(0.1, 0.4), pluck.seed = dice.seed();
    return plucked_note(pluck, rate);
}

Sound pad_chord(Dice& dice, double seconds, double rate) {
    const int root = dice.whole(45, 62);
    const double attack = dice.uniform(0.3, 2.0), cutoff = dice.log_uniform(400.0, 3000.0);
    Sound out = silence(seconds, rate);
    for (const int step : {0, dice.whole(3, 4), 7, 12}) {
        for (const double detune : {-6.0, 5.0}) {
            const double hz = semitone_hz(root + step) * std::exp2(detune / 1200.0);
            double phase = dice.uniform(0.0, 1.0), low = 0.0;
            const double keep = 1.0 - std::exp(-kSoundTurn * cutoff / rate);
            for (std::size_t i = 0; i < out.size(); ++i) {
                const double t = static_cast<double>(i) / rate;
                phase += hz / rate;
                if (phase >= 1.0) phase -= 1.0;
                low += keep * (2.0 * phase - 1.0 - low);
                out[i] += static_cast<float>(0.05 * low * rise(t, attack) * rise(seconds - t, 0.4));
            }
        }
    }
    scale_to_rms(out, 0.2);
    return out;
}

Sound swelled_bow(Dice& dice, double seconds, double rate) {
    Bow bow;
    bow.hz = dice.log_uniform(65.0, 1800.0), bow.seconds = seconds, bow.swell_db = dice.uniform(6.0, 40.0);
    bow.attack_s = dice.uniform(0.05, 0.5), bow.vibrato_cents = dice.whole(0, 2) == 0 ? 0.0 : dice.uniform(5.0, 35.0);
    bow.vibrato_hz = dice.uniform(4.5, 6.5), bow.seed = dice.seed();
    return bowed_note(bow, rate);
}

Sound drums(Dice& dice, double seconds, double rate) {
    Sound out = silence(seconds, rate);
    const double beat = dice.uniform(0.4, 0.65);
    for (int k = 0; k * beat * 0.5 < seconds; ++k) {
        const double length = 0.25;
        Sound hit = silence(length, rate);
        const int kind = k % 4 == 0 ? 0 : (k % 4 == 2 ? 1 : 2);
        double phase = 0.0;
        for (std::size_t i = 0; i < hit.size(); ++i) {
            const double t = static_cast<double>(i) / rate, noise = dice.uniform(-1.0, 1.0);
            phase += kSoundTurn * (50.0 + 100.0 * std::exp(-t / 0.03)) / rate;
            const double kick = std::sin(phase) * std::exp(-t / 0.08);
            const double snare = (0.6 * noise + 0.4 * std::sin(kSoundTurn * 190.0 * t)) * std::exp(-t / 0.05);
            hit[i] = static_cast<float>(kind == 0 ? kick : kind == 1 ? snare : 0.4 * noise * std::exp(-t / 0.02));
        }
        mix_in(out, hit, k * beat * 0.5, 0.6, rate);
    }
    return out;
}

Sound band_music(Dice& dice, double seconds, double rate) {
    Sound out = drums(dice, seconds, rate);
    const int key = dice.whole(28, 39);
    constexpr std::array<int, 7> scale{0, 2, 4, 5, 7, 9, 11};
    const auto degree = [&] { return scale[static_cast<std::size_t>(dice.whole(0, 6))]; };
    const double beat = dice.uniform(0.3, 0.6);
    for (double t = 0.0; t < seconds; t += beat) {
        mix_in(out, bass_note(dice, semitone_hz(key + degree()), 1.5 * beat, rate), t, 0.5, rate);
        Pluck pluck;
        pluck.hz = semitone_hz(key + 24 + degree()), pluck.seconds = 2.0 * beat, pluck.seed = dice.seed();
        mix_in(out, plucked_note(pluck, rate), t + 0.5 * beat, 0.3, rate);
    }
    for (double t = 0.0; t < seconds; t += 2.0 * beat) {
        const double hz = semitone_hz(key + 36 + degree());
        const int voice = dice.whole(0, 2);
        if (voice == 0) mix_in(out, sung_vowel(dice, 0.5 * hz, 1.9 * beat, rate), t, 0.6, rate);
        if (voice == 1) mix_in(out, flute_note(dice, hz, 1.9 * beat, rate), t, 0.4, rate);
        if (voice == 2) {
            Bow bow;
            bow.hz = hz, bow.seconds = 1.9 * beat, bow.seed = dice.seed();
            mix_in(out, bowed_note(bow, rate), t, 0.4, rate);
        }
    }
    if (dice.whole(0, 1)) mix_in(out, pad_chord(dice, seconds, rate), 0.0, 0.5, rate);
    Sound hiss = pink_noise(dice, seconds, rate);
    mix_in(out, hiss, 0.0, 0.003, rate);
    scale_to_rms(out, 0.1);
    return out;
}

Sound one_instrument(Dice& dice, double seconds, double rate) {
    Sound out = silence(seconds, rate);
    const int kind = dice.whole(0, 4);
    for (double t = dice.uniform(0.0, 1.0); t < seconds - 0.5;) {
        const double length = std::min(dice.uniform(0.8, 5.0), seconds - t);
        if (kind == 0) mix_in(out, swelled_bow(dice, length, rate), t, 1.0, rate);
        if (kind == 1) mix_in(out, sung_vowel(dice, dice.log_uniform(100.0, 900.0), length, rate), t, 1.0, rate);
        if (kind == 2) mix_in(out, flute_note(dice, dice.log_uniform(262.0, 2093.0), length, rate), t, 1.0, rate);
        if (kind == 3) mix_in(out, bass_note(dice, dice.log_uniform(41.0, 196.0), length, rate), t, 1.0, rate);
        if (kind == 4) mix_in(out, pad_chord(dice, length, rate), t, 1.0, rate);
        t += length * dice.uniform(0.7, 1.1);
    }
    mix_in(out, pink_noise(dice, seconds, rate), 0.0, dice.log_uniform(1e-5, 1e-3), rate);
    scale_to_rms(out, 0.1);
    return out;
}

}  // namespace howlmap::test
