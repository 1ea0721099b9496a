// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <Eigen/Core>
#include <vector>

#include "core/units/complex.h"

namespace howlmap {

/// Eigenvalues of a square complex matrix, in no order. Size 1 or more. Throws std::runtime_error where they cannot be
/// found, as with elements that are no numbers.
std::vector<Complex> eigenvalues_of(const Eigen::MatrixXcd& matrix);

/// Upper bound of the largest modulus among the eigenvalues, tight to about a decibel: the Frobenius norm of the 16th
/// power, its 16th root. Source: spectral radius <= ||A^k||^(1/k), Gelfand 1941.
double spectral_bound(const Eigen::MatrixXcd& matrix);

/// Perron root: largest eigenvalue of a square matrix without negative elements; 0 for a nilpotent one.
/// Bounds of Collatz 1942 and Wielandt 1950 tell when the iteration has come to `relative` accuracy.
/// Where it is below `least`, an upper bound below that may be returned in its place.
double perron_root(const Eigen::MatrixXd& matrix, double relative = 1e-9, double least = 0.0);

/// Right and left eigenvector (row vector, not conjugated) for a given eigenvalue of a matrix.
struct EigenPair {
    Complex value;
    Eigen::VectorXcd right, left;
};
/// The eigenvalue nearest to the given one, with its vectors, so that left . right = 1 where it is simple.
EigenPair eigen_pair(const Eigen::MatrixXcd& matrix, Complex near);

}  // namespace howlmap
