// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/loop_probe.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <kissfft/kissfft.hh>
#include <numbers>
#include <utility>

#include "core/audio/loop_engine.h"

namespace howlmap {
namespace {

constexpr double kSeconds = 4.0, kWindow_s = 0.05;
constexpr double kMostEnergy = 1e24, kLeastEnergy = 1e-24;  // single precision is far from its ends there

struct Watched {
    std::vector<double> energy_db;  // by window: long enough to hold any loop's round many times or its echo whole
    std::vector<float> sound;       // sum of the inputs
};

std::size_t blocks_per_window(const LoopKernels& kernels) {
    return static_cast<std::size_t>(std::ceil(kWindow_s * kernels.rate_hz / static_cast<double>(kernels.block)));
}

Watched watch(const LoopKernels& kernels, const Eigen::MatrixXd& sends, const Job& job) {
    LoopEngine engine(kernels, sends, {}, -1);
    const std::size_t n = engine.block();
    const auto blocks = static_cast<std::size_t>(kSeconds * kernels.rate_hz / static_cast<double>(n));
    std::vector<float> click(n, 0.0f), nothing(n, 0.0f), heard(n);
    click[0] = 1.0f;
    Watched out;
    double window = 0.0;
    for (std::size_t k = 0; k < blocks && !job.cancelled(); ++k) {
        engine.step(nothing, k == 0 ? click : nothing, heard);
        const double energy = engine.energy();
        if (energy > kMostEnergy) break;
        out.sound.insert(out.sound.end(), engine.inputs_sum().begin(), engine.inputs_sum().end());
        window += energy;
        if ((k + 1) % blocks_per_window(kernels) != 0) continue;
        if (window < kLeastEnergy) break;
        out.energy_db.push_back(10.0 * std::log10(std::exchange(window, 0.0)));
    }
    return out;
}

// Slope over the last half, when the strongest ring has outlived the others.
double slope_per_window(const std::vector<double>& y) {
    double n = 0, t = 0, s = 0, tt = 0, ts = 0;
    for (std::size_t i = y.size() / 2; i < y.size(); ++i) {
        const auto x = static_cast<double>(i);
        n += 1, t += x, s += y[i], tt += x * x, ts += x * y[i];
    }
    return (n * ts - t * s) / (n * tt - t * t);
}

// Highest peak of the spectrum of the last half with its growth taken out, by a parabola through the decibels of three
// bins.
double dominant_hz(const std::vector<float>& sound, double growth_db_per_sample, double rate_hz) {
    std::size_t n = 1;
    while (2 * n <= sound.size() / 2) n *= 2;
    std::vector<std::complex<double>> time(n), spectrum(n);
    for (std::size_t i = 0; i < n; ++i) {
        const double window =
            0.5 - 0.5 * std::cos(2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(n));
        const double level = std::pow(10.0, growth_db_per_sample * static_cast<double>(n - i) / 20.0);
        time[i] = window * level * static_cast<double>(sound[sound.size() - n + i]);
    }
    kissfft<double>(n, false).transform(time.data(), spectrum.data());
    std::size_t best = 1;
    for (std::size_t k = 1; k + 1 < n / 2; ++k)
        if (std::norm(spectrum[k]) > std::norm(spectrum[best])) best = k;
    const auto db = [&](std::size_t k) { return std::log(std::max(std::norm(spectrum[k]), 1e-300)); };
    const double below = db(best - 1), here = db(best), above = db(best + 1);
    const double bend = below - 2.0 * here + above;
    const double offset = bend < 0.0 ? 0.5 * (below - above) / bend : 0.0;
    return (static_cast<double>(best) + offset) * rate_hz / static_cast<double>(n);
}

}  // namespace

std::optional<LoopProbe> probe_loops(const LoopKernels& kernels, const Eigen::MatrixXd& sends, const Job& job) {
    const Watched seen = watch(kernels, sends, job);
    if (job.cancelled() || seen.energy_db.size() < 6) return std::nullopt;
    const double per_sample = slope_per_window(seen.energy_db) / static_cast<double>(kernels.block * blocks_per_window(kernels));
    return LoopProbe{dominant_hz(seen.sound, per_sample, kernels.rate_hz), per_sample * kernels.rate_hz};
}

}  // namespace howlmap
