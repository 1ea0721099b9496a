// SPDX-License-Identifier: GPL-3.0-or-later
// From a frequency response to an impulse response that acts late enough.
#pragma once
#include <Eigen/Cholesky>
#include <complex>
#include <functional>
#include <vector>

namespace howlmap {

/// Complex value and slope d/dw (per rad/s) wanted at one frequency.
struct Wanted {
    double hz = 0.0;
    std::complex<double> value, slope;
};

/// Impulse response whose spectrum samples are values[k] at k * rate / (2 (n - 1)), k = 0 .. n - 1, n - 1 a power of
/// two. Tapered to nothing above 20 kHz or 83 % of half the rate. Circular: what precedes time 0 stands at the end.
std::vector<double> impulse_response(std::vector<std::complex<double>> values, double rate_hz);

/// Makes up for what was cut from responses: adds to each the smallest decaying sound (in the sense of least squares,
/// weighted towards early times) that gives the wanted values and slopes. Prepared once for one set of frequencies.
class Correction {
  public:
    /// first: sample at which responses may begin. frequencies in Hz, 8 at most, apart from each other.
    Correction(const std::vector<double>& hz, std::size_t first, double rate_hz);
    /// Adds to `taps`, which must be longer than reach(), unless they meet what is wanted to 1e-4 as they are. wanted:
    /// in the order of the frequencies.
    void apply(std::vector<double>& taps, const std::vector<Wanted>& wanted) const;
    std::size_t reach() const { return first_ + length_; }

  private:
    double functional(std::size_t constraint, std::size_t n) const;
    std::vector<double> hz_;
    std::size_t first_, length_;
    double rate_hz_, decay_;
    Eigen::LDLT<Eigen::MatrixXd> gram_;
};

}  // namespace howlmap
