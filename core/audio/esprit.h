// SPDX-License-Identifier: GPL-3.0-or-later
// Sums of decaying sinusoids fitted to several recordings of the same system at once.
#pragma once
#include <complex>
#include <vector>

namespace howlmap {

/// x[n] = sum of a z^n (with its conjugate): one pole and how strong it is in each recording.
struct DecayingSinusoid {
    std::complex<double> pole;                     ///< z per sample, upper half plane, |z| < 1
    std::vector<std::complex<double>> amplitudes;  ///< at n = 0, one a recording: the real signal is 2 Re(a z^n)
};

/// Poles shared by all recordings, by ESPRIT on the summed covariance of their Hankel matrices: R. Roy, T. Kailath,
/// "ESPRIT - estimation of signal parameters via rotational invariance techniques", IEEE Trans. ASSP 37(7), 1989;
/// amplitudes by least squares. The order is not guessed once: poles are kept that stay in place while the order runs
/// over a range (stabilisation diagram; e.g. P. van Overschee, B. De Moor, Subspace Identification, 1996). segments:
/// equal length, 64 to 2000 samples. noise: mean square of the noise in them (0: none known).
std::vector<DecayingSinusoid> fit_decays(const std::vector<std::vector<double>>& segments, double noise);

}  // namespace howlmap
