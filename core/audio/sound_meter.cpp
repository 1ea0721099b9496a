// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/sound_meter.h"

#include <algorithm>
#include <cmath>

namespace howlmap {
namespace {

constexpr double kQuietest = 1e-12;  // power, -120 dB
constexpr double kSpread = 1.5;      // bins' worth of power that the Hann window makes of a sine
constexpr double kAudible = 1e-8;    // power of a line below which nothing is named

double decibels(double power) { return 10.0 * std::log10(std::max(kQuietest, power)); }

// Vertex of the parabola through three values in dB: J. O. Smith, X. Serra, "PARSHL", ICMC 1987.
double refined(const std::vector<float>& power, std::size_t k) {
    const double a = decibels(power[k - 1]), b = decibels(power[k]), c = decibels(power[k + 1]);
    const double bend = a - 2.0 * b + c;
    return static_cast<double>(k) + (bend < 0.0 ? 0.5 * (a - c) / bend : 0.0);
}

}  // namespace

SoundMeter::SoundMeter(double rate_hz) : spectrum_(rate_hz), detector_(rate_hz) { reading_.bands_dbfs.fill(-120.0); }

void SoundMeter::push(std::span<const float> samples) {
    detector_.push(samples);
    float peak = 0.0f;
    for (const float x : samples) peak = std::max(peak, std::abs(x));
    reading_.peak_dbfs = decibels(static_cast<double>(peak) * peak);
    while (!samples.empty()) {
        samples = samples.subspan(spectrum_.take(samples));
        if (spectrum_.ready()) read(spectrum_.frame());
    }
}

void SoundMeter::read(const SpectrumFrame& frame) {
    std::array<double, kThirdOctaves> bands{};
    std::size_t strongest = 0;
    for (std::size_t k = 1; k + 1 < frame.power.size(); ++k) {
        const double hz = static_cast<double>(k) * frame.bin_hz;
        if (hz < 17.8 || hz > 22400.0) continue;
        bands[static_cast<std::size_t>(third_octave_of(hz))] += static_cast<double>(frame.power[k]) / kSpread;
        if (strongest == 0 || frame.power[k] > frame.power[strongest]) strongest = k;
    }
    for (std::size_t b = 0; b < bands.size(); ++b) reading_.bands_dbfs[b] = decibels(bands[b]);
    reading_.level_dbfs = decibels(frame.total_power);
    const bool audible = strongest > 0 && frame.power[strongest] > kAudible;
    reading_.strongest_hz = audible ? refined(frame.power, strongest) * frame.bin_hz : 0.0;
    reading_.howls = detector_.sounding();
}

}  // namespace howlmap
