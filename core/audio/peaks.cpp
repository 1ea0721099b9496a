// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/peaks.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/units/bands.h"
#include "core/units/level.h"

namespace howlmap {
namespace {

constexpr std::size_t kReach = 8;        // bins looked at on either side
constexpr float kNarrow = 31.6f;         // 15 dB
constexpr float kAudiblePower = 1e-11f;  // -110 dB re full scale
constexpr std::size_t kMostPeaks = 24;

float mean_beside(const std::vector<float>& power, std::size_t bin, std::size_t from, std::size_t to) {
    float sum = 0.0f;
    for (std::size_t m = from; m <= to; ++m) sum += power[bin - m] + power[bin + m];
    return sum / static_cast<float>(2 * (to - from + 1));
}

// Bins between this one and the true peak, from three amplitudes: van Waterschoot & Moonen 2011, eq. 54.
double offset_by_amplitude(const std::vector<float>& power, std::size_t bin) {
    const double below = std::sqrt(power[bin - 1]), here = std::sqrt(power[bin]), above = std::sqrt(power[bin + 1]);
    return (above - below) / (below + here + above);
}

// The same from the advance of phase over one hop, a quarter window: 4 / (2 pi) bins a radian beyond what the bin's
// centre would turn.
double offset_in_bins(const SpectrumFrame& frame, std::size_t bin) {
    const double rough = offset_by_amplitude(frame.power, bin);
    const std::complex<float> turned = frame.now[bin] * std::conj(frame.before[bin]);
    if (std::norm(turned) == 0.0f) return rough;
    const double quarter = std::numbers::pi / 2.0;
    const double beyond =
        std::remainder(std::arg(turned) - quarter * static_cast<double>(bin % 4), 2.0 * std::numbers::pi);
    const double fine = beyond / quarter;
    return std::abs(fine - rough) < 0.5 ? fine : rough;
}

SpectralPeak describe(const SpectrumFrame& frame, std::size_t bin) {
    float lobe = 0.0f;
    for (std::size_t k = bin - 2; k <= bin + 2; ++k) lobe += frame.power[k];
    const double power = lobe / 1.5;
    const double noise = mean_beside(frame.power, bin, 4, kReach);
    SpectralPeak peak;
    peak.hz = (static_cast<double>(bin) + offset_in_bins(frame, bin)) * frame.bin_hz;
    peak.level_db = energy_to_db(power);
    peak.over_noise_db = energy_to_db(power / std::max(noise, 1e-16));
    return peak;
}

}  // namespace

std::vector<SpectralPeak> find_peaks(const SpectrumFrame& frame) {
    const std::vector<float>& power = frame.power;
    const auto lowest = std::max(kReach, static_cast<std::size_t>(std::ceil(kLowestHz / frame.bin_hz)));
    const auto highest = std::min(power.size() - kReach - 1, static_cast<std::size_t>(kHighestHz / frame.bin_hz));
    std::vector<std::size_t> bins;
    for (std::size_t k = lowest; k <= highest; ++k) {
        const float here = power[k];
        // The test that fails most often comes first.
        if (here < kNarrow * power[k + 4] || here < kNarrow * power[k - 4] || here < kAudiblePower) continue;
        if (here < power[k - 1] || here <= power[k + 1]) continue;
        if (here >= kNarrow * mean_beside(power, k, 2, 7)) bins.push_back(k);
    }
    const auto stronger = [&](std::size_t a, std::size_t b) { return power[a] > power[b]; };
    const std::size_t kept = std::min(bins.size(), kMostPeaks);
    std::partial_sort(bins.begin(), bins.begin() + static_cast<std::ptrdiff_t>(kept), bins.end(), stronger);
    std::vector<SpectralPeak> peaks;
    for (std::size_t i = 0; i < kept; ++i) peaks.push_back(describe(frame, bins[i]));
    return peaks;
}

PartialLevels partial_levels(const SpectrumFrame& frame, double hz) {
    const std::vector<float>& power = frame.power;
    PartialLevels out;
    for (std::size_t i = 0; i < kPartialRatios.size(); ++i) {
        const double at = kPartialRatios[i] * hz / frame.bin_hz;
        const bool clear = std::abs(at - hz / frame.bin_hz) > 5.0;
        // The bin may move by one, and four beyond it are looked at.
        if (!clear || at < 4.5 || at > static_cast<double>(power.size()) - 6.0) continue;
        auto bin = static_cast<std::size_t>(std::lround(at));
        if (power[bin + 1] > power[bin])
            ++bin;
        else if (power[bin - 1] > power[bin])
            --bin;
        out.seen |= 1u << i;
        out.level_db[i] = static_cast<float>(energy_to_db(std::max(power[bin], 1e-16f)));
        const bool top = power[bin] >= power[bin - 1] && power[bin] >= power[bin + 1];
        const float beside = 0.25f * (power[bin - 3] + power[bin + 3] + power[bin - 4] + power[bin + 4]);
        if (top && power[bin] > 6.3f * beside) out.peaks |= 1u << i;  // 8 dB
    }
    return out;
}

}  // namespace howlmap
