// SPDX-License-Identifier: GPL-3.0-or-later
// Eigenloci of a loop matrix over frequency, and where they cross the positive real axis: what the generalised Nyquist
// criterion looks at. Source: MacFarlane and Postlethwaite, Int. J. Control 25, 81-127, 1977.
#pragma once
#include <functional>
#include <vector>

#include "core/loop/eigenvalues.h"

namespace howlmap {

/// A square matrix at any frequency in Hz.
using MatrixOf = std::function<Eigen::MatrixXcd(double hz)>;

/// Eigenvalues at one frequency with the common delay taken out: lambda = mu exp(-jw common).
struct LociPoint {
    double hz = 0.0;
    std::vector<Complex> mu;
};

/// A stretch of one eigenlocus on which its angle passes a multiple of a full turn once.
struct Bracket {
    LociPoint low, high;
    Complex mu_low, mu_high;  ///< this locus at both ends
    double turns = 0.0;  ///< whole turns (negative with delay) that the angle of lambda, followed from mu_low, passes
    double hz = 0.0;     ///< where it does so, by interpolation
    double size = 0.0;   ///< |lambda| there, by interpolation
};

/// A locus follower: matrices and the delay that all of them share.
struct Loci {
    MatrixOf matrix;
    double common_s = 0.0;

    LociPoint at(double hz) const;
    /// All brackets between two points, closer points being put in until every locus of a modulus of at least `least`
    /// turns by less than 45 deg a step and can be told from its neighbours.
    std::vector<Bracket> follow(const LociPoint& low, const LociPoint& high, double least) const;
};

struct Crossing {
    double hz = 0.0;
    Complex lambda;  ///< real and positive but for rounding
};

/// The crossing of a bracket to 1e-9 of its frequency.
Crossing refine(const Loci& loci, const Bracket& bracket);

}  // namespace howlmap
