// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/loop_simulator.h"

#include <array>
#include <cmath>
#include <complex>
#include <numbers>

#include "core/show/find.h"

namespace howlmap::test {
namespace {
constexpr double kRate = 192000.0;
constexpr double kTurn = 2.0 * std::numbers::pi;

/// A digital filter of second order from an analogue one (coefficients of s^2, s, 1; s = j f / centre), bilinear, exact
/// at the centre.
class Biquad {
  public:
    Biquad(double hz, std::array<double, 3> b, std::array<double, 3> a) {
        const double k = 1.0 / std::tan(std::numbers::pi * hz / kRate);
        const double scale = a[0] * k * k + a[1] * k + a[2];
        const auto digital = [&](const std::array<double, 3>& c) {
            return std::array<double, 3>{(c[0] * k * k + c[1] * k + c[2]) / scale, 2.0 * (c[2] - c[0] * k * k) / scale,
                                         (c[0] * k * k - c[1] * k + c[2]) / scale};
        };
        b_ = digital(b);
        a_ = digital(a);
    }
    double operator()(double x) {
        const double y = b_[0] * x + s1_;
        s1_ = b_[1] * x - a_[1] * y + s2_;
        s2_ = b_[2] * x - a_[2] * y;
        return y;
    }

  private:
    std::array<double, 3> b_, a_;
    double s1_ = 0.0, s2_ = 0.0;
};

struct Chain {
    double gain = 1.0;
    std::vector<Biquad> filters;
    double operator()(double x) {
        x *= gain;
        for (Biquad& filter : filters) x = filter(x);
        return x;
    }
};

void add_butterworth(Chain& chain, double hz, int order, bool high) {
    for (int i = 0; i < order / 2; ++i) {
        // Poles at equal angles on the left half of the unit circle, measured from the negative real axis.
        const double damping = 2.0 * std::cos(std::numbers::pi * (2.0 * i + 1.0 + (order % 2)) / (2.0 * order));
        chain.filters.push_back(high ? Biquad(hz, {1, 0, 0}, {1, damping, 1}) : Biquad(hz, {0, 0, 1}, {1, damping, 1}));
    }
    if (order % 2) chain.filters.push_back(high ? Biquad(hz, {0, 1, 0}, {0, 1, 1}) : Biquad(hz, {0, 0, 1}, {0, 1, 1}));
}

void add_peak(Chain& chain, double hz, double q, double db) {
    const double a = std::pow(10.0, db / 40.0);
    chain.filters.push_back(Biquad(hz, {1, a / q, 1}, {1, 1 / (a * q), 1}));
}

double sign(Polarity polarity) { return polarity == Polarity::inverted ? -1.0 : 1.0; }
double ratio(double db) { return std::pow(10.0, db / 20.0); }

/// What a microphone or a body makes of the sound pressure.
struct Ear {
    Chain chain;
    double through = 1.0;  // straight through
    std::vector<Biquad> modes;
    std::vector<double> gains;
    double operator()(double x) {
        double y = through * x;
        for (std::size_t i = 0; i < modes.size(); ++i) y += gains[i] * modes[i](x);
        return chain(y);
    }
};

Ear ear_of(const Input& input) {
    Ear ear;
    if (const Pickup* pickup = pickup_of(input)) {
        const double level = ratio(-pickup->isolation_db);
        ear.through = level * ratio(pickup->baseline_db);
        for (const BodyMode& mode : pickup->modes) {
            const bool covered = mode.air && pickup->holes_covered;
            const double q = covered ? mode.q / 2.0 : mode.q;
            ear.modes.push_back(Biquad(mode.hz, {0, 1 / q, 0}, {1, 1 / q, 1}));
            ear.gains.push_back(level * ratio(mode.gain_db - (covered ? pickup->cover_db : 0.0)));
        }
    }
    ear.chain.gain = sign(input.polarity);
    if (input.high_pass) add_butterworth(ear.chain, input.high_pass->hz, input.high_pass->order, true);
    for (const PeakFilter& peak : input.equaliser) add_peak(ear.chain, peak.hz, peak.q, peak.gain_db);
    return ear;
}

double pattern_gain(const Input& input, std::array<double, 3> from) {
    const Microphone* microphone = microphone_of(input);
    if (!microphone) return 1.0;
    double a = 1.0;
    if (const auto* name = std::get_if<PatternName>(&microphone->pattern)) a = first_order_a(*name);
    if (const auto* number = std::get_if<double>(&microphone->pattern)) a = *number;
    const double yaw = input.aim.yaw_deg * kTurn / 360.0, pitch = input.aim.pitch_deg * kTurn / 360.0;
    const double along = from[0] * std::sin(yaw) * std::cos(pitch) - from[1] * std::cos(yaw) * std::cos(pitch) +
                         from[2] * std::sin(pitch);
    return a + (1.0 - a) * along / std::hypot(from[0], from[1], from[2]);
}

/// A line that remembers, read between samples by a polynomial through six of them.
class DelayLine {
  public:
    DelayLine() : samples_(1 << 16) {}
    void push(double x) { samples_[++now_ & mask()] = x; }
    double at(double delay) const {
        const auto whole = static_cast<std::size_t>(delay);
        const double t =
            delay - static_cast<double>(whole) + 2.0;  // place among six samples, between the third and the fourth
        double sum = 0.0;
        for (int i = 0; i < 6; ++i) {
            double weight = 1.0;
            for (int j = 0; j < 6; ++j)
                if (j != i) weight *= (t - j) / (i - j);
            sum += weight * samples_[(now_ + 2 - whole - static_cast<std::size_t>(i)) & mask()];
        }
        return sum;
    }

  private:
    std::size_t mask() const { return samples_.size() - 1; }
    std::vector<double> samples_;
    std::size_t now_ = 0;
};

struct Tap {
    std::size_t bus_speaker;
    double delay, gain;
};

/// One mix into one of its loudspeakers.
struct Feed {
    std::size_t mix, speaker;
    Chain chain;  // of the loudspeaker
    double delay_s;
    DelayLine line;
};

class Simulator {
  public:
    Simulator(const Show& show, double raise_db) : show_(show), raise_(ratio(raise_db)) {
        speed_ = 343.2 * std::sqrt((show.air.temperature_c + 273.15) / 293.15);
        for (const Input& input : show.inputs) ears_.push_back(ear_of(input));
        for (const Mix& mix : show.mixes) add_mix(mix);
        for (const Input& input : show.inputs) add_taps(input);
    }

    /// One sample; returns what the first input hears.
    double step(double click) {
        std::vector<double> heard(show_.inputs.size(), click);
        for (std::size_t c = 0; c < heard.size(); ++c) {
            for (const Tap& tap : taps_[c]) heard[c] += tap.gain * feeds_[tap.bus_speaker].line.at(tap.delay);
            heard[c] = ears_[c](heard[c]);
        }
        for (std::size_t m = 0; m < show_.mixes.size(); ++m) {
            double sum = 0.0;
            for (const Send& send : show_.mixes[m].sends) {
                const auto c = static_cast<std::size_t>(index_by_id(show_.inputs, send.input));
                sum += raise_ * ratio(send.level_db - show_.inputs[c].source_spl_db) * heard[c];
            }
            sum = mixes_[m](sum);
            for (Feed& feed : feeds_)
                if (feed.mix == m) feed.line.push(feed.chain(sum));
        }
        return heard[0];
    }

  private:
    void add_mix(const Mix& mix) {
        Chain chain;
        chain.gain = sign(mix.polarity);
        if (mix.high_pass) add_butterworth(chain, mix.high_pass->hz, mix.high_pass->order, true);
        for (const auto& [band, db] : mix.graphic_eq)
            add_peak(chain, 1000.0 * std::pow(10.0, (band - 17) / 10.0), 4.318, db);
        for (const PeakFilter& notch : mix.notches) add_peak(chain, notch.hz, notch.q, notch.gain_db);
        mixes_.push_back(chain);
        for (const std::string& id : mix.loudspeakers) {
            const auto l = static_cast<std::size_t>(index_by_id(show_.loudspeakers, id));
            const Loudspeaker& unit = show_.loudspeakers[l];
            Chain response;
            response.gain = sign(unit.polarity) * ratio(unit.trim_db);
            if (unit.response.low_hz) add_butterworth(response, *unit.response.low_hz, unit.response.low_order, true);
            if (unit.response.high_hz)
                add_butterworth(response, *unit.response.high_hz, unit.response.high_order, false);
            const double delay = (show_.system.latency_ms + mix.delay_ms + unit.delay_ms) / 1000.0;
            feeds_.push_back({mixes_.size() - 1, l, response, delay, {}});
        }
    }

    void add_taps(const Input& input) {
        auto& taps = taps_.emplace_back();
        for (std::size_t f = 0; f < feeds_.size(); ++f) {
            const Vec3 at = show_.loudspeakers[feeds_[f].speaker].position, ear = input.position;
            const auto tap = [&](std::array<double, 3> source, double reflection) {
                const std::array<double, 3> from = {source[0] - ear.x, source[1] - ear.y, source[2] - ear.z};
                const double r = std::hypot(from[0], from[1], from[2]);
                // A line is read before it is written: one sample less.
                taps.push_back(
                    {f, kRate * (feeds_[f].delay_s + r / speed_) - 1.0, reflection * pattern_gain(input, from) / r});
            };
            tap({at.x, at.y, at.z}, 1.0);
            tap({at.x, at.y, -at.z}, std::sqrt(1.0 - std::get<double>(show_.stage.surfaces.floor.absorption)));
            if (const auto& back = show_.stage.surfaces.back)
                tap({at.x, 2.0 * back->at - at.y, at.z}, std::sqrt(1.0 - std::get<double>(back->absorption)));
        }
    }

    const Show& show_;
    double raise_, speed_ = 0.0;
    std::vector<Ear> ears_;
    std::vector<Chain> mixes_;
    std::vector<Feed> feeds_;
    std::vector<std::vector<Tap>> taps_;
};

/// Frequency of a nearly pure tone from the slope of its phase against a tone close by.
double frequency_of(const std::vector<double>& x) {
    double hz = 0.0;
    int crossings = 0;
    double first = 0.0, last = 0.0;
    for (std::size_t i = 1; i < x.size(); ++i)
        if (x[i - 1] < 0.0 && x[i] >= 0.0) {
            last = static_cast<double>(i) - x[i] / (x[i] - x[i - 1]);
            if (crossings++ == 0) first = last;
        }
    if (crossings > 1) hz = (crossings - 1) * kRate / (last - first);
    return hz;
}

double energy(const std::vector<double>& x, std::size_t from, std::size_t to) {
    double sum = 0.0;
    for (std::size_t i = from; i < to; ++i) sum += x[i] * x[i];
    return sum;
}
}  // namespace

Simulated simulate(const Show& show, double raise_db, double seconds) {
    Simulator simulator(show, raise_db);
    const auto count = static_cast<std::size_t>(seconds * kRate);
    std::vector<double> heard;
    heard.reserve(count);
    for (std::size_t i = 0; i < count; ++i) heard.push_back(simulator.step(i == 0 ? 1.0 : 0.0));
    const double early = energy(heard, count / 2, 3 * count / 4), late = energy(heard, 3 * count / 4, count);
    const std::vector<double> tail(heard.begin() + static_cast<std::ptrdiff_t>(3 * count / 4), heard.end());
    return {10.0 * std::log10(late / early) / (seconds / 4.0), frequency_of(tail)};
}

}  // namespace howlmap::test
