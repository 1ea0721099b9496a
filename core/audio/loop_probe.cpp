// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/loop_probe.h"

#include <algorithm>
#include <cmath>

#include "core/audio/loop_engine.h"
#include "core/audio/spectral_top.h"
#include "core/units/level.h"

namespace howlmap {
namespace {

constexpr double kSeconds = 4.0, kWindow_s = 0.05;
constexpr double kRounds = 48.0;  // of the longest loop, at least: rings that lie close together need time to part
// Below its height nobody hears it. The tails of kernels, cut where they are silent, stand a little lower: what fades
// fast must not be watched until it has sunk into them.
constexpr double kSilence_db = 80.0;
constexpr std::size_t kFewestWindows = 12;
constexpr double kMostEnergy = 1e24;                 // of a block: single precision is far from its ends there
constexpr float kStep = 1e-12f, kFaintest = 1e-30f;  // so that a fast ring is watched as long as a slow one

struct Watched {
    std::vector<double> energy_db;  // by block
    std::vector<float> sound;       // sum of the inputs
};

// Turns the loops and what was heard of them down by one step. What has become too faint to matter is silence.
void turn_down(LoopEngine& engine, std::vector<float>& sound) {
    engine.scale(kStep);
    for (float& x : sound) x = std::abs(x) * kStep < kFaintest ? 0.0f : x * kStep;
}

// The longest way round, in samples, as the place of the strongest tap. Sound comes by once a round: what is shorter
// than that shows the beat of a long loop, not its growth.
std::size_t longest_round(const LoopKernels& kernels) {
    std::size_t longest = 0;
    for (const auto& input : kernels.loop)
        for (const std::vector<float>& taps : input) {
            const auto strongest = std::ranges::max_element(taps, {}, [](float x) { return std::abs(x); });
            if (strongest != taps.end()) longest = std::max(longest, std::size_t(strongest - taps.begin()));
        }
    return longest;
}

Watched watch(const LoopKernels& kernels, const Eigen::MatrixXd& sends, const Job& job) {
    LoopEngine engine(kernels, sends, {}, -1);
    const std::size_t n = engine.block();
    const double samples = std::max(kSeconds * kernels.rate_hz, kRounds * static_cast<double>(longest_round(kernels)));
    const auto blocks = static_cast<std::size_t>(samples / static_cast<double>(n));
    std::vector<float> click(n, 0.0f), nothing(n, 0.0f), heard(n);
    click[0] = 1.0f;
    Watched out;
    double turned_db = 0.0;
    for (std::size_t k = 0; k < blocks && !job.cancelled(); ++k) {
        engine.step(nothing, k == 0 ? click : nothing, heard);
        out.sound.insert(out.sound.end(), engine.inputs_sum().begin(), engine.inputs_sum().end());
        out.energy_db.push_back(energy_to_db(engine.energy() + 1e-60) + turned_db);
        if (engine.energy() < kMostEnergy) continue;
        turn_down(engine, out.sound);
        turned_db -= ratio_to_db(static_cast<double>(kStep));
    }
    return out;
}

// Blocks before what comes back, which begins after the click itself, has sunk into silence for good.
std::size_t blocks_heard(const std::vector<double>& energy_db) {
    if (energy_db.size() < 2) return 0;
    const double top = *std::max_element(energy_db.begin() + 1, energy_db.end());
    std::size_t last = energy_db.size();
    while (last > 1 && energy_db[last - 1] < top - kSilence_db) --last;
    return last;
}

// Energies over longer windows, each long enough to hold a loop's round many times where the sound lasts for it.
std::vector<double> in_windows(const std::vector<double>& energy_db, std::size_t blocks) {
    std::vector<double> out;
    for (std::size_t at = 0; at + blocks <= energy_db.size(); at += blocks) {
        const double top = *std::max_element(energy_db.begin() + static_cast<std::ptrdiff_t>(at),
                                             energy_db.begin() + static_cast<std::ptrdiff_t>(at + blocks));
        double sum = 0.0;
        for (std::size_t k = at; k < at + blocks; ++k) sum += db_to_energy(energy_db[k] - top);
        out.push_back(top + energy_to_db(sum));
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
    Watched seen = watch(kernels, sends, job);
    const std::size_t heard = blocks_heard(seen.energy_db);
    if (job.cancelled() || heard < kFewestWindows) return std::nullopt;
    seen.energy_db.resize(heard);
    seen.sound.resize(heard * kernels.block);
    const auto blocks =
        static_cast<std::size_t>(std::ceil(kWindow_s * kernels.rate_hz / static_cast<double>(kernels.block)));
    const std::size_t round = std::min(longest_round(kernels) / kernels.block + 1, heard / 4);
    const std::size_t window = std::max(std::clamp<std::size_t>(heard / kFewestWindows, 1, blocks), round);
    const double per_sample =
        slope_per_window(in_windows(seen.energy_db, window)) / static_cast<double>(kernels.block * window);
    return LoopProbe{dominant_hz(seen.sound, per_sample, kernels.rate_hz), per_sample * kernels.rate_hz};
}

}  // namespace howlmap
