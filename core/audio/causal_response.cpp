// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/causal_response.h"

#include <algorithm>
#include <cmath>
#include <kissfft/kissfft.hh>
#include <numbers>

#include "core/audio/turn.h"

namespace howlmap {
namespace {
constexpr double kExact = 1e-4;  // relative
constexpr double kDecay = 80.0;  // 1/s of the weight: corrections reach about 30 Hz to either side
}  // namespace

std::vector<double> impulse_response(std::vector<std::complex<double>> values, double rate_hz) {
    const std::size_t half = values.size() - 1, n = 2 * half;
    const double bin_hz = rate_hz / static_cast<double>(n);
    const double from = std::min(20000.0, 0.415 * rate_hz), to = std::min(23500.0, 0.49 * rate_hz);
    std::vector<std::complex<double>> spectrum(n), time(n);
    for (std::size_t k = 0; k <= half; ++k) {
        const double along = std::clamp((static_cast<double>(k) * bin_hz - from) / (to - from), 0.0, 1.0);
        spectrum[k] = values[k] * (0.5 + 0.5 * std::cos(std::numbers::pi * along));
        if (k > 0 && k < half) spectrum[n - k] = std::conj(spectrum[k]);
    }
    spectrum[0] = spectrum[0].real();
    spectrum[half] = 0.0;
    kissfft<double>(n, true).transform(spectrum.data(), time.data());
    std::vector<double> out(n);
    for (std::size_t i = 0; i < n; ++i) out[i] = time[i].real() / static_cast<double>(n);
    return out;
}

Correction::Correction(const std::vector<double>& hz, std::size_t first, double rate_hz)
    : hz_(hz),
      first_(first),
      length_(static_cast<std::size_t>(4.0 / kDecay * rate_hz)),
      rate_hz_(rate_hz),
      decay_(kDecay) {
    const auto size = static_cast<Eigen::Index>(4 * hz.size());
    Eigen::MatrixXd rows(size, static_cast<Eigen::Index>(length_));
    for (std::size_t n = 0; n < length_; ++n) {
        const double weight = std::exp(-0.5 * decay_ * static_cast<double>(n) / rate_hz_);
        for (Eigen::Index j = 0; j < size; ++j)
            rows(j, static_cast<Eigen::Index>(n)) = weight * functional(static_cast<std::size_t>(j), n);
    }
    Eigen::MatrixXd gram = rows * rows.transpose();
    gram.diagonal() *= 1.0 + 1e-9;  // frequencies that lie close together share what is missing
    gram_.compute(gram);
}

// Real and imaginary part of the spectrum and of its slope (scaled by the decay, so that all are of one size) as
// functions of the taps.
double Correction::functional(std::size_t constraint, std::size_t n) const {
    const double t = static_cast<double>(n + first_) / rate_hz_, turn = kTurn * hz_[constraint / 4] * t;
    switch (constraint % 4) {
        case 0:
            return std::cos(turn);
        case 1:
            return -std::sin(turn);
        case 2:
            return -decay_ * t * std::sin(turn);
        default:
            return -decay_ * t * std::cos(turn);
    }
}

void Correction::apply(std::vector<double>& taps, const std::vector<Wanted>& wanted) const {
    if (wanted.empty()) return;
    Eigen::VectorXd missing(static_cast<Eigen::Index>(4 * wanted.size()));
    bool exact = true;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        std::complex<double> value = 0.0, slope = 0.0;
        const std::complex<double> step = std::polar(1.0, -kTurn * wanted[i].hz / rate_hz_);
        std::complex<double> turn = 1.0;
        for (std::size_t n = 0; n < taps.size(); ++n, turn *= step) {
            if (n % 4096 == 0)
                turn = std::polar(1.0, -kTurn * std::fmod(wanted[i].hz * static_cast<double>(n) / rate_hz_, 1.0));
            value += taps[n] * turn;
            slope += std::complex<double>(0.0, -static_cast<double>(n) / rate_hz_) * taps[n] * turn;
        }
        const std::complex<double> dv = wanted[i].value - value, ds = decay_ * (wanted[i].slope - slope);
        const auto j = static_cast<Eigen::Index>(4 * i);
        missing(j) = dv.real(), missing(j + 1) = dv.imag(), missing(j + 2) = ds.real(), missing(j + 3) = ds.imag();
        exact &= std::abs(dv) <= kExact * std::abs(wanted[i].value) &&
                 std::abs(ds) <= kExact * decay_ * std::abs(wanted[i].slope);
    }
    if (exact) return;  // a correction that nobody needs would only ring beside its frequencies
    const Eigen::VectorXd weights = gram_.solve(missing);
    for (std::size_t n = 0; n < length_; ++n) {
        double sum = 0.0;
        for (Eigen::Index j = 0; j < weights.size(); ++j)
            sum += weights(j) * functional(static_cast<std::size_t>(j), n);
        taps[first_ + n] += std::exp(-decay_ * static_cast<double>(n) / rate_hz_) * sum;
    }
}

}  // namespace howlmap
