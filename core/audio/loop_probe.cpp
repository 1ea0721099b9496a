// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/loop_probe.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/audio/loop_engine.h"
#include "core/audio/spectral_top.h"

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

}  // namespace

std::optional<LoopProbe> probe_loops(const LoopKernels& kernels, const Eigen::MatrixXd& sends, const Job& job) {
    const Watched seen = watch(kernels, sends, job);
    if (job.cancelled() || seen.energy_db.size() < 6) return std::nullopt;
    const double per_sample =
        slope_per_window(seen.energy_db) / static_cast<double>(kernels.block * blocks_per_window(kernels));
    return LoopProbe{dominant_hz(seen.sound, per_sample, kernels.rate_hz), per_sample * kernels.rate_hz};
}

}  // namespace howlmap
