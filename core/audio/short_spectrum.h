// SPDX-License-Identifier: GPL-3.0-or-later
// Overlapping windowed spectra of a stream, as a howl detector needs them.
#pragma once
#include <complex>
#include <memory>
#include <span>
#include <vector>

namespace howlmap {

/// Window length for a rate: the power of two nearest to 0.17 s (8192 at 48 kHz), so that partials of a low bass note
/// stand apart.
std::size_t window_length(double rate_hz);

/// One Hann-windowed spectrum and the one before it.
struct SpectrumFrame {
    double bin_hz = 0.0;
    double total_power = 0.0;                      ///< sum of a sine's powers: 1 for one full-scale sine
    std::vector<std::complex<float>> now, before;  ///< bins 0 .. N/2 - 1
    std::vector<float> power;  ///< |now|^2, scaled so that a full-scale sine on a bin's centre gives 1
};

/// Cuts a stream into windows of N samples with three quarters overlap and transforms them.
class ShortSpectrum {
  public:
    /// rate in Hz, 8000 to 192000.
    explicit ShortSpectrum(double rate_hz);
    ~ShortSpectrum();
    ShortSpectrum(ShortSpectrum&&) noexcept;
    ShortSpectrum& operator=(ShortSpectrum&&) noexcept;

    std::size_t window() const { return window_.size(); }
    std::size_t hop() const { return window_.size() / 4; }

    /// Takes samples (full scale 1) up to the end of the next window; gives how many were taken. ready() says whether a
    /// frame is there.
    std::size_t take(std::span<const float> samples);
    bool ready() const { return ready_; }
    const SpectrumFrame& frame() const { return frame_; }

  private:
    void transform();
    struct Fft;
    std::unique_ptr<Fft> fft_;
    std::vector<float> window_, buffer_;
    std::size_t filled_ = 0;
    bool ready_ = false;
    SpectrumFrame frame_;
};

}  // namespace howlmap
