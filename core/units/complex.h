// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <complex>

namespace howlmap {

/// Phasors with time factor exp(+jwt): a delay t is exp(-jwt).
using Complex = std::complex<double>;

/// Plain product. The operator of std::complex also looks for infinities, which costs several times as much in inner
/// loops.
inline Complex times(Complex a, Complex b) {
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

}  // namespace howlmap
