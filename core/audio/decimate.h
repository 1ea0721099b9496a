// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <complex>
#include <cstddef>
#include <span>
#include <vector>

namespace howlmap {

/// Zero-phase low-pass for keeping every factor-th sample: flat to 0.4 of the new rate, 70 dB down from 0.6 on (Kaiser
/// window; J. F. Kaiser's design formulas as in A. V. Oppenheim, R. W. Schafer, Discrete-Time Signal Processing,
/// section 7.5).
class Decimator {
  public:
    explicit Decimator(std::size_t factor);
    std::size_t factor() const { return factor_; }
    /// Half its length, in samples of the old rate.
    std::size_t reach() const { return taps_.size() / 2; }
    /// Output k is the filtered sample at from + k * factor; the whole filter must lie inside samples.
    std::vector<double> run(std::span<const float> samples, std::size_t from, std::size_t count) const;
    /// What it does to the sequence z^n, z per sample of the old rate.
    std::complex<double> gain(std::complex<double> z) const;

  private:
    std::size_t factor_;
    std::vector<double> taps_;  // odd length, symmetric
};

}  // namespace howlmap
