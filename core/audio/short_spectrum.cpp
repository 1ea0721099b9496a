// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/short_spectrum.h"

#include <algorithm>
#include <cmath>
#include <kissfft/kissfft.hh>
#include <numbers>

namespace howlmap {

struct ShortSpectrum::Fft {
    kissfft<float> half;
};

std::size_t window_length(double rate_hz) {
    return static_cast<std::size_t>(1) << static_cast<int>(std::lround(std::log2(0.17 * rate_hz)));
}

ShortSpectrum::ShortSpectrum(double rate_hz) {
    const std::size_t n = window_length(rate_hz);
    fft_ = std::make_unique<Fft>(Fft{kissfft<float>(n / 2, false)});
    window_.resize(n);
    buffer_.assign(n, 0.0f);
    windowed_.resize(n);
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
    for (std::size_t i = 0; i < window_.size(); ++i) windowed_[i] = window_[i] * buffer_[i];
    std::swap(frame_.now, frame_.before);
    fft_->half.transform_real(windowed_.data(), frame_.now.data());
    frame_.now[0] = 0.0f;  // holds the two real ends, which no howl uses
    float total = 0.0f;
    for (std::size_t k = 0; k < frame_.now.size(); ++k) {
        const float re = frame_.now[k].real(), im = frame_.now[k].imag();
        frame_.power[k] = re * re + im * im;
        total += frame_.power[k];
    }
    frame_.total_power = total / 1.5;  // the Hann window spreads a sine over 1.5 bins' worth of power
    ready_ = true;
}

}  // namespace howlmap
