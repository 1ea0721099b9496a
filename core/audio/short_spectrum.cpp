// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/short_spectrum.h"

#include <algorithm>
#include <cmath>
#include <kissfft/kissfft.hh>
#include <numbers>

namespace howlmap {

// A real transform of n samples by a complex one of n / 2 (even samples as real, odd ones as imaginary parts).
struct ShortSpectrum::Fft {
    kissfft<float> half;
    std::vector<std::complex<float>> packed, mixed, turns;

    explicit Fft(std::size_t n) : half(n / 2, false), packed(n / 2), mixed(n / 2 + 1) {
        for (std::size_t k = 0; k < n / 2; ++k) {
            const double angle = -2.0 * std::numbers::pi * static_cast<double>(k) / static_cast<double>(n);
            turns.emplace_back(static_cast<float>(std::cos(angle)), static_cast<float>(std::sin(angle)));
        }
    }

    // Bins 0 .. n/2 - 1: X[k] = even[k] + exp(-2 pi j k / n) odd[k].
    void run(std::vector<std::complex<float>>& out) {
        const std::size_t count = packed.size();
        half.transform(packed.data(), mixed.data());
        mixed[count] = mixed[0];
        for (std::size_t k = 0; k < count; ++k) {
            const float ar = mixed[k].real(), ai = mixed[k].imag(), br = mixed[count - k].real(),
                        bi = -mixed[count - k].imag();
            const float er = 0.5f * (ar + br), ei = 0.5f * (ai + bi), dr = 0.5f * (ai - bi), di = 0.5f * (br - ar);
            const float tr = turns[k].real(), ti = turns[k].imag();
            out[k] = {er + tr * dr - ti * di, ei + tr * di + ti * dr};
        }
    }
};

std::size_t window_length(double rate_hz) {
    return static_cast<std::size_t>(1) << static_cast<int>(std::lround(std::log2(0.17 * rate_hz)));
}

ShortSpectrum::ShortSpectrum(double rate_hz) {
    const std::size_t n = window_length(rate_hz);
    fft_ = std::make_unique<Fft>(n);
    window_.resize(n);
    buffer_.assign(n, 0.0f);
    // Periodic Hann window; its mean is 1/2, so a sine of amplitude 1 gives |X| = n / 4 on a bin's centre.
    for (std::size_t i = 0; i < n; ++i) {
        const double turn = 2.0 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(n);
        window_[i] = static_cast<float>((0.5 - 0.5 * std::cos(turn)) * 4.0 / static_cast<double>(n));
    }
    frame_.bin_hz = rate_hz / static_cast<double>(n);
    frame_.now.assign(n / 2, {});
    frame_.before.assign(n / 2, {});
    frame_.power.assign(n / 2, 0.0f);
}

ShortSpectrum::~ShortSpectrum() = default;
ShortSpectrum::ShortSpectrum(ShortSpectrum&&) noexcept = default;
ShortSpectrum& ShortSpectrum::operator=(ShortSpectrum&&) noexcept = default;

std::size_t ShortSpectrum::take(std::span<const float> samples) {
    if (ready_) {
        std::copy(buffer_.begin() + static_cast<std::ptrdiff_t>(hop()), buffer_.end(), buffer_.begin());
        filled_ -= hop();
        ready_ = false;
    }
    const std::size_t count = std::min(samples.size(), buffer_.size() - filled_);
    std::copy_n(samples.begin(), count, buffer_.begin() + static_cast<std::ptrdiff_t>(filled_));
    filled_ += count;
    if (filled_ == buffer_.size()) transform();
    return count;
}

void ShortSpectrum::transform() {
    for (std::size_t i = 0; i < fft_->packed.size(); ++i)
        fft_->packed[i] = {window_[2 * i] * buffer_[2 * i], window_[2 * i + 1] * buffer_[2 * i + 1]};
    std::swap(frame_.now, frame_.before);
    fft_->run(frame_.now);
    for (std::size_t k = 0; k < frame_.now.size(); ++k) {
        const float re = frame_.now[k].real(), im = frame_.now[k].imag();
        frame_.power[k] = re * re + im * im;
    }
    frame_.power[0] = 0.0f;  // a standing offset is no sound
    float total = 0.0f;
    for (const float power : frame_.power) total += power;
    frame_.total_power = total / 1.5;  // the Hann window spreads a sine over 1.5 bins' worth of power
    ready_ = true;
}

}  // namespace howlmap
