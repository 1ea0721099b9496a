// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/tap_onsets.h"

#include <algorithm>
#include <cmath>

#include "core/audio/decimate.h"

namespace howlmap {
namespace {

constexpr double kRise = 16.0;                              // 12 dB in energy
constexpr double kQuietestTap = 1e-3;                       // 30 dB below the loudest
constexpr std::size_t kBefore = 20, kGap = 3, kApart = 60;  // ms
constexpr double kBody_hz = 9000.0;                         // rate at which the body is heard but little of the hiss

// Energy millisecond by millisecond of what lies below about 4 kHz.
std::vector<double> energy_by_millisecond(std::span<const float> samples, double rate_hz) {
    const Decimator decimator(static_cast<std::size_t>(std::max(1.0, rate_hz / kBody_hz)));
    const std::size_t reach = decimator.reach(), factor = decimator.factor();
    std::vector<float> padded(samples.size() + 2 * reach, 0.0f);
    std::copy(samples.begin(), samples.end(), padded.begin() + static_cast<std::ptrdiff_t>(reach));
    const std::vector<double> low = decimator.run(padded, reach, samples.size() / factor);
    const double per_ms = rate_hz / static_cast<double>(factor) / 1000.0;
    std::vector<double> out(static_cast<std::size_t>(static_cast<double>(low.size()) / per_ms) + 1, 0.0);
    for (std::size_t i = 0; i < low.size(); ++i)
        out[static_cast<std::size_t>(static_cast<double>(i) / per_ms)] += low[i] * low[i];
    return out;
}

double sum_of(const std::vector<double>& energy, std::size_t from, std::size_t to) {
    double sum = 0.0;
    for (std::size_t k = from; k < std::min(to, energy.size()); ++k) sum += energy[k];
    return sum;
}

// A recording that was cut right at its first tap: it falls by 6 dB within a tenth of a second.
bool begins_with_tap(const std::vector<double>& energy) {
    return energy.size() > 110 && sum_of(energy, 0, 10) > 4.0 * sum_of(energy, 100, 110);
}

// The first sample of the tap: where a tenth of the peak of the next milliseconds is passed.
std::size_t first_sample(std::span<const float> samples, std::size_t from, std::size_t step) {
    const std::size_t to = std::min(samples.size(), from + 4 * step);
    float peak = 0.0f;
    for (std::size_t i = from; i < to; ++i) peak = std::max(peak, std::abs(samples[i]));
    while (from < to && std::abs(samples[from]) < 0.1f * peak) ++from;
    return from;
}

}  // namespace

std::vector<std::size_t> find_taps(std::span<const float> samples, double rate_hz) {
    const auto step = static_cast<std::size_t>(rate_hz / 1000.0);
    const std::vector<double> energy = energy_by_millisecond(samples, rate_hz);
    std::vector<std::size_t> taps;
    const double loudest = *std::max_element(energy.begin(), energy.end());
    if (loudest <= 0.0) return taps;
    std::size_t free_from = kGap + 1;
    if (begins_with_tap(energy)) {
        taps.push_back(first_sample(samples, 0, step));
        free_from = kApart;
    }
    for (std::size_t k = free_from; k < energy.size(); ++k) {
        const auto from = static_cast<std::ptrdiff_t>(k > kBefore ? k - kBefore : 0),
                   to = static_cast<std::ptrdiff_t>(k - kGap);
        const double before = *std::max_element(energy.begin() + from, energy.begin() + to + 1);
        if (energy[k] < kQuietestTap * loudest || energy[k] < kRise * before) continue;
        const auto at = static_cast<std::size_t>(static_cast<double>(k - 1) * rate_hz / 1000.0);
        taps.push_back(first_sample(samples, at, step));
        k += kApart;
    }
    return taps;
}

}  // namespace howlmap
