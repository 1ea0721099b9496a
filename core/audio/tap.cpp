// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/tap.h"

#include <algorithm>
#include <cmath>

#include "core/audio/decimate.h"
#include "core/audio/esprit.h"
#include "core/audio/tap_onsets.h"
#include "core/audio/turn.h"
#include "core/units/level.h"

namespace howlmap {
namespace {

struct Range {
    double low_hz, high_hz;  // modes kept
    double rate_hz;          // wanted after decimation
    double seconds;          // used of each tap, at most
};
constexpr Range kRanges[] = {{20, 200, 600, 0.6}, {160, 1000, 2700, 0.18}, {800, 4000, 10800, 0.045}};
constexpr double kPush = 0.003;  // s that the finger may still push
constexpr double kLeastQ = 3.0, kMostQ = 400.0, kQuietest_db = -40.0;

struct Mode {
    double hz, q, amplitude;  // at the tap, per tap's strength, rms over the taps
};

// A tap and how hard it was: rms of its first 40 ms after the push.
struct Tap {
    std::size_t at;
    double strength;
};

struct Segments {
    std::vector<std::vector<double>> parts;
    std::vector<double> strengths;  // of their taps
    double skipped_s = 0.0;         // from the tap to the first sample
    double noise = 0.0;             // mean square, before the first tap
    std::vector<double> scales;     // by which the parts were made equally loud
};

std::vector<Tap> taps_in(std::span<const float> samples, double rate) {
    std::vector<Tap> taps;
    for (const std::size_t at : find_taps(samples, rate)) {
        const std::size_t from = std::min(samples.size(), at + static_cast<std::size_t>(kPush * rate));
        const std::size_t to = std::min(samples.size(), from + static_cast<std::size_t>(0.04 * rate));
        double sum = 0.0;
        for (std::size_t i = from; i < to; ++i) sum += static_cast<double>(samples[i]) * samples[i];
        if (sum > 0.0) taps.push_back({at, std::sqrt(sum / static_cast<double>(to - from))});
    }
    return taps;
}

// How many samples of the new rate are free of the push, of the next tap and of the filter's reach.
std::vector<std::size_t> usable_lengths(std::size_t end, double rate, const std::vector<Tap>& taps, std::size_t used,
                                        std::size_t step) {
    std::vector<std::size_t> lengths;
    for (std::size_t t = 0; t < taps.size(); ++t) {
        const std::size_t next = t + 1 < taps.size() ? taps[t + 1].at - static_cast<std::size_t>(0.002 * rate) : end;
        lengths.push_back(next > taps[t].at + used ? (next - taps[t].at - used) / step : 0);
    }
    return lengths;
}

Segments cut(std::span<const float> samples, double rate, const std::vector<Tap>& taps, const Decimator& decimator,
             double seconds) {
    const std::size_t step = decimator.factor(), reach = decimator.reach();
    const std::size_t skip = std::max(reach + 1, static_cast<std::size_t>(kPush * rate));
    const std::vector<std::size_t> lengths = usable_lengths(samples.size(), rate, taps, skip + reach + 1, step);
    // One length for all: as long as half of the taps allow; shorter taps are left out.
    std::vector<std::size_t> sorted = lengths;
    const std::size_t middle = (sorted.size() - 1) / 2;
    std::nth_element(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(middle), sorted.end());
    const std::size_t length =
        std::min(static_cast<std::size_t>(seconds * rate / static_cast<double>(step)), sorted[middle]);
    Segments out;
    out.skipped_s = static_cast<double>(skip) / rate;
    for (std::size_t t = 0; t < taps.size() && length >= 64; ++t) {
        if (lengths[t] < length) continue;
        out.parts.push_back(decimator.run(samples, taps[t].at + skip, length));
        out.strengths.push_back(taps[t].strength);
    }
    const std::size_t before = taps.front().at;
    const std::size_t quiet = before > 2 * reach + step ? (before - 2 * reach - 1) / step : 0;
    if (quiet > 16) {
        for (const double x : decimator.run(samples, reach, quiet)) out.noise += x * x;
        out.noise /= static_cast<double>(quiet);
    }
    return out;
}

// Taps of different force count alike. Gives the noise that is then in them.
double even_out(Segments& segments) {
    double noise = 0.0;
    for (auto& part : segments.parts) {
        double sum = 0.0;
        for (const double x : part) sum += x * x;
        const double scale = sum > 0.0 ? std::sqrt(static_cast<double>(part.size()) / sum) : 1.0;
        for (double& x : part) x *= scale;
        segments.scales.push_back(scale);
        noise += segments.noise * scale * scale / static_cast<double>(segments.parts.size());
    }
    return noise;
}

std::vector<Mode> modes_in(const Range& range, std::span<const float> samples, double rate,
                           const std::vector<Tap>& taps) {
    const auto factor = static_cast<std::size_t>(std::max(1.0, std::floor(rate / range.rate_hz)));
    const Decimator decimator(factor);
    Segments segments = cut(samples, rate, taps, decimator, range.seconds);
    const double noise = even_out(segments);
    const double new_rate = rate / static_cast<double>(factor);
    std::vector<Mode> out;
    for (const DecayingSinusoid& decay : fit_decays(segments.parts, noise)) {
        const std::complex<double> s = std::log(decay.pole) * new_rate;  // per second
        // An exponential exp(s t) decays with Q = |s| / (2 |Re s|) and its mode's own frequency is |s|.
        const double hz = std::abs(s) / kTurn, q = -std::abs(s) / (2.0 * s.real());
        if (hz < range.low_hz || hz >= range.high_hz || hz > 0.4 * new_rate || q < kLeastQ || q > kMostQ) continue;
        double energy = 0.0;
        for (std::size_t t = 0; t < decay.amplitudes.size(); ++t)
            energy += std::norm(2.0 * decay.amplitudes[t] / segments.scales[t] / segments.strengths[t]);
        const double back = std::exp(-s.real() * segments.skipped_s) / std::abs(decimator.gain(std::exp(s / rate)));
        out.push_back({hz, q, back * std::sqrt(energy / static_cast<double>(decay.amplitudes.size()))});
    }
    return out;
}

// Neighbouring ranges overlap: of a mode found twice the stronger reading stays.
void join(std::vector<Mode>& all, const std::vector<Mode>& more) {
    for (const Mode& mode : more) {
        const auto twin =
            std::find_if(all.begin(), all.end(), [&](const Mode& m) { return std::abs(m.hz - mode.hz) < 0.02 * m.hz; });
        if (twin == all.end())
            all.push_back(mode);
        else if (mode.amplitude > twin->amplitude)
            *twin = mode;
    }
}

std::vector<TapMode> relative(const std::vector<Mode>& modes) {
    double strongest = 0.0, highest = 0.0;
    for (const Mode& m : modes) {
        strongest = std::max(strongest, m.amplitude);
        highest = std::max(highest, m.amplitude * m.q / m.hz);
    }
    std::vector<TapMode> out;
    for (const Mode& m : modes) {
        const TapMode mode{m.hz, m.q, ratio_to_db(m.amplitude / strongest),
                           ratio_to_db(m.amplitude * m.q / m.hz / highest)};
        if (mode.level_db >= kQuietest_db) out.push_back(mode);
    }
    std::sort(out.begin(), out.end(), [](const TapMode& a, const TapMode& b) { return a.level_db > b.level_db; });
    return out;
}

}  // namespace

tl::expected<TapFindings, std::string> tap_modes(std::span<const float> samples, double rate_hz, const Job& job) {
    const std::vector<Tap> taps = taps_in(samples, rate_hz);
    if (taps.empty())
        return tl::unexpected(
            std::string("no tap was found in the recording: expected at least one knock with quiet around it"));
    TapFindings out{static_cast<int>(taps.size()), {}};
    std::vector<Mode> all;
    double done = 0.0;
    for (const Range& range : kRanges) {
        if (job.cancelled()) return tl::unexpected(std::string("cancelled"));
        join(all, modes_in(range, samples, rate_hz, taps));
        job.report(done += 1.0 / 3.0);
    }
    if (all.empty())
        return tl::unexpected(
            std::string("no mode rings after the taps: expected 50 ms or more of their sound, clear of noise"));
    out.modes = relative(all);
    return out;
}

std::vector<BodyMode> body_modes(const TapFindings& findings, const std::vector<BodyMode>& known) {
    std::vector<TapMode> modes = findings.modes;
    std::sort(modes.begin(), modes.end(), [](const TapMode& a, const TapMode& b) { return a.gain_db > b.gain_db; });
    if (modes.size() > 12) modes.resize(12);
    std::sort(modes.begin(), modes.end(), [](const TapMode& a, const TapMode& b) { return a.hz < b.hz; });
    std::vector<BodyMode> out;
    for (const TapMode& mode : modes) {
        const auto nearest = std::min_element(known.begin(), known.end(), [&](const BodyMode& a, const BodyMode& b) {
            return std::abs(a.hz - mode.hz) < std::abs(b.hz - mode.hz);
        });
        BodyMode body;
        if (nearest != known.end() && std::abs(nearest->hz / mode.hz - 1.0) < 0.1) body = *nearest;
        body.hz = mode.hz, body.q = mode.q, body.gain_db = mode.gain_db;
        out.push_back(body);
    }
    return out;
}

}  // namespace howlmap
