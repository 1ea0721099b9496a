// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/voices.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <utility>

#include "core/audio/turn.h"
#include "core/units/level.h"

namespace howlmap {
namespace {

// The library's distributions differ between makers; this one does not.
double uniform(std::mt19937_64& generator) { return static_cast<double>(generator() >> 11) * 0x1p-53; }

// One period of noise, as the string's first shape: smoothed by the brightness, combed by the place of the pluck.
std::vector<double> first_shape(const Pluck& pluck, std::size_t period) {
    std::mt19937_64 generator(pluck.seed);
    std::vector<double> noise(period), out(period);
    double last = 0.0;
    for (double& x : noise) x = last += (0.3 + 0.7 * pluck.brightness) * (2.0 * uniform(generator) - 1.0 - last);
    const auto away = static_cast<std::size_t>(pluck.place * static_cast<double>(period));
    double mean = 0.0;
    for (std::size_t i = 0; i < period; ++i) mean += out[i] = noise[i] - noise[(i + period - away) % period];
    for (double& x : out) x -= mean / static_cast<double>(period);
    return out;
}

void scale_to_peak(std::vector<float>& sound, float peak) {
    float most = 1e-12f;
    for (const float x : sound) most = std::max(most, std::abs(x));
    for (float& x : sound) x *= peak / most;
}

double envelope(const Bow& bow, double t) {
    const auto ramp = [](double x) { return 0.5 - 0.5 * std::cos(std::numbers::pi * std::clamp(x, 0.0, 1.0)); };
    const double swell = db_to_ratio(bow.swell_db * (t / bow.seconds - 1.0));
    return swell * ramp(t / bow.attack_s) * ramp((bow.seconds - t) / bow.release_s);
}

// A broad body: 6 dB an octave up to 300 Hz, even to 3 kHz, then 12 dB an octave down.
double body_colour(double hz) {
    const double low = hz / std::hypot(hz, 300.0);
    const double high = 1.0 / (1.0 + (hz / 3000.0) * (hz / 3000.0));
    return low * high;
}

}  // namespace

std::vector<float> plucked_note(const Pluck& pluck, double rate_hz) {
    // Loop delay: the line, half a sample of the two-point loss filter, and the allpass's fraction between 0.1 and 1.1.
    const double whole = rate_hz / pluck.hz - 0.5;
    const auto period = static_cast<std::size_t>(std::max(2.0, std::floor(whole - 0.1)));
    const double fraction = whole - static_cast<double>(period);
    const double allpass = (1.0 - fraction) / (1.0 + fraction);
    const double loss = std::pow(10.0, -3.0 / (pluck.hz * pluck.decay_s));
    std::vector<double> line = first_shape(pluck, period);
    std::vector<float> out(static_cast<std::size_t>(pluck.seconds * rate_hz));
    double before = 0.0, in_before = 0.0, out_before = 0.0;
    std::size_t place = 0;
    for (float& sample : out) {
        const double now = line[place];
        const double lossy = loss * 0.5 * (now + before);
        const double tuned = allpass * (lossy - out_before) + in_before;
        before = now, in_before = lossy, out_before = tuned;
        line[place] = tuned;
        place = (place + 1) % period;
        sample = static_cast<float>(now);
    }
    scale_to_peak(out, 0.5f);
    return out;
}

std::vector<float> bowed_note(const Bow& bow, double rate_hz) {
    std::mt19937_64 generator(bow.seed);
    const int partials = static_cast<int>(std::min(40.0, 0.45 * rate_hz / bow.hz));
    std::vector<double> weights;
    for (int n = 1; n <= partials; ++n) weights.push_back(body_colour(n * bow.hz) / n);
    std::vector<float> out(static_cast<std::size_t>(bow.seconds * rate_hz));
    double phase = kTurn * uniform(generator), noise = 0.0;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double t = static_cast<double>(i) / rate_hz;
        const double cents = bow.vibrato_cents * std::sin(kTurn * bow.vibrato_hz * t) * std::min(1.0, t / 0.4);
        phase = std::fmod(phase + kTurn * bow.hz * std::exp2(cents / 1200.0) / rate_hz, kTurn);
        // sin n x by the recurrence sin(n + 1)x = 2 cos x sin nx - sin(n - 1)x
        const double twice = 2.0 * std::cos(phase);
        double sum = 0.0, older = 0.0, newer = std::sin(phase);
        for (const double weight : weights) {
            sum += weight * newer;
            older = std::exchange(newer, twice * newer - older);
        }
        noise += 0.2 * (2.0 * uniform(generator) - 1.0 - noise);
        out[i] = static_cast<float>(envelope(bow, t) * (sum + 0.02 * noise));
    }
    scale_to_peak(out, 0.5f);
    return out;
}

void mix_in(std::vector<float>& into, const std::vector<float>& sound, double at_s, double gain, double rate_hz) {
    const auto from = static_cast<std::size_t>(std::max(0.0, at_s) * rate_hz);
    for (std::size_t i = 0; i < sound.size() && from + i < into.size(); ++i)
        into[from + i] += static_cast<float>(gain) * sound[i];
}

}  // namespace howlmap
