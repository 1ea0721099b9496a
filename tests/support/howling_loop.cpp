// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <complex>
#include <numbers>

#include "core/units/level.h"
#include "tests/support/sounds.h"

namespace howlmap::test {
namespace {

using Complex = std::complex<double>;
constexpr double kHowlTurn = 2.0 * std::numbers::pi;

// Band-pass of the audio EQ cookbook, 0 dB at its peak.
void set_bandpass(HowlingLoop& loop, double hz, double q, double rate) {
    const double w = kHowlTurn * hz / rate, alpha = std::sin(w) / (2.0 * q);
    loop.b0 = alpha / (1.0 + alpha), loop.b2 = -loop.b0;
    loop.a1 = -2.0 * std::cos(w) / (1.0 + alpha), loop.a2 = (1.0 - alpha) / (1.0 + alpha);
}

Complex open_loop(const HowlingLoop& loop, Complex z) {
    const Complex u = 1.0 / z;
    return (loop.b0 + loop.b2 * u * u) / (1.0 + loop.a1 * u + loop.a2 * u * u) * std::pow(u, loop.delay);
}

}  // namespace

HowlingLoop make_loop(const LoopSpec& spec, double rate) {
    HowlingLoop loop;
    // Whole periods in the delay put the wanted pole on the band-pass's peak, ahead of the loop's other poles.
    const double periods = std::max(1.0, std::round(spec.delay_s * spec.hz));
    loop.delay = std::max(1, static_cast<int>(std::lround(periods * rate / spec.hz)));
    set_bandpass(loop, spec.hz, spec.q, rate);
    const double grow = spec.growth_db_per_s * std::log(10.0) / 20.0;
    const auto at = [&](double hz) { return open_loop(loop, std::exp(Complex(grow, kHowlTurn * hz) / rate)); };
    // Gain is real: the pole lies where the open loop's phase is zero. Newton on the phase, whose slope is the loop's
    // delay.
    double hz = spec.hz;
    for (int i = 0; i < 100; ++i) {
        const double step = 1e-4 * hz;
        const double slope = std::arg(at(hz + step) / at(hz - step)) / (2.0 * step);
        hz -= std::arg(at(hz)) / slope;
    }
    loop.hz = hz;
    loop.growth_db_per_s = spec.growth_db_per_s;
    loop.gain = 1.0 / std::abs(at(hz));
    return loop;
}

Sound run_loop(const HowlingLoop& loop, const Sound& source, double from_s, double to_s, double ceiling, double rate) {
    Sound out(source.size());
    const auto delay = static_cast<std::size_t>(loop.delay);
    std::vector<double> line(delay, 0.0);
    double x1 = 0, x2 = 0, y1 = 0, y2 = 0;
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double t = static_cast<double>(i) / rate;
        const double gain = t < from_s ? 0.0 : t < to_s ? loop.gain : 0.5 * loop.gain;
        const double x = line[i % delay];
        const double y = loop.b0 * x + loop.b2 * x2 - loop.a1 * y1 - loop.a2 * y2;
        x2 = x1, x1 = x, y2 = y1, y1 = y;
        const double heard = source[i] + gain * y;
        line[i % delay] = ceiling * std::tanh(heard / ceiling);
        out[i] = static_cast<float>(heard);
    }
    return out;
}

}  // namespace howlmap::test
