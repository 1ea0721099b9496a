// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/eigenvalues.h"

#include <Eigen/Eigenvalues>
#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace howlmap {

std::vector<Complex> eigenvalues_of(const Eigen::MatrixXcd& matrix) {
    if (matrix.rows() == 1) return {matrix(0, 0)};
    if (matrix.rows() == 2) {
        const Complex mean = 0.5 * (matrix(0, 0) + matrix(1, 1)), half = 0.5 * (matrix(0, 0) - matrix(1, 1));
        const Complex root = std::sqrt(half * half + matrix(0, 1) * matrix(1, 0));
        return {mean + root, mean - root};
    }
    Eigen::ComplexEigenSolver<Eigen::MatrixXcd> solver(matrix, false);
    // Where many eigenvalues are all but 0, as with equal microphones side by side, what is left beside the diagonal
    // may never look small against it. Shifted by the norm it does; the shift costs no more than the last digits.
    const double shift = solver.info() == Eigen::Success ? 0.0 : matrix.norm();
    if (shift != 0.0) solver.compute(matrix + shift * Eigen::MatrixXcd::Identity(matrix.rows(), matrix.cols()), false);
    if (solver.info() != Eigen::Success) throw std::runtime_error("eigenvalues of a loop matrix were not found");
    std::vector<Complex> values(solver.eigenvalues().begin(), solver.eigenvalues().end());
    for (Complex& value : values) value -= shift;
    return values;
}

double spectral_bound(const Eigen::MatrixXcd& matrix) {
    double bound = matrix.norm();
    if (bound == 0.0 || matrix.rows() == 1) return bound;
    Eigen::MatrixXcd power = matrix / bound;
    double root = 1.0;  // of the norms taken out so far
    for (int i = 1; i <= 4; ++i) {
        power = power * power;
        const double norm = power.norm();
        if (norm == 0.0) return 0.0;
        root /= 2.0;
        bound *= std::pow(norm, root);
        power /= norm;
    }
    return bound;
}

namespace {
/// The root of the norm of a high power, by squaring again and again: for matrices that are reducible or all but, where
/// the bounds of the iteration do not meet. `matrix` has a largest element above 0.
double root_of_power(Eigen::MatrixXd matrix, double relative) {
    const int squarings = static_cast<int>(std::ceil(std::log2(60.0 / relative)));
    double log_root = 0.0, share = 1.0;  // what was taken out so far, as a logarithm
    for (int i = 0; i <= squarings; ++i) {
        const double norm = matrix.rowwise().sum().maxCoeff();
        if (norm < 1e-150) return 0.0;
        log_root += share * std::log(norm);
        matrix /= norm;
        matrix = matrix.unaryExpr([](double x) { return x < 1e-150 ? 0.0 : x; });  // what no longer counts, nor slows
        matrix = (matrix * matrix).eval();
        share /= 2.0;
    }
    return std::exp(log_root);
}
}  // namespace

double perron_root(const Eigen::MatrixXd& matrix, double relative, double least) {
    const double shift = matrix.trace() / static_cast<double>(matrix.rows()) + 0.1 * matrix.maxCoeff();
    if (shift == 0.0) return 0.0;
    // The shift makes the iteration converge where several eigenvalues have the same modulus.
    Eigen::VectorXd x = Eigen::VectorXd::Ones(matrix.rows()), y(matrix.rows());
    for (int i = 0; i < 40; ++i) {
        y.noalias() = matrix * x;
        y += shift * x;
        const auto ratio = y.array() / x.array();
        const double low = ratio.minCoeff() - shift, high = ratio.maxCoeff() - shift;
        if (high - low <= relative * high) return 0.5 * (low + high);
        if (high < least) return high;
        x = y / y.maxCoeff();
        if (x.minCoeff() < 1e-200) break;
    }
    return root_of_power(matrix, relative);
}

namespace {
/// Null vector of a nearly singular matrix by inverse iteration.
Eigen::VectorXcd null_vector(const Eigen::MatrixXcd& singular) {
    const Eigen::PartialPivLU<Eigen::MatrixXcd> lu(singular);
    Eigen::VectorXcd x(singular.rows());
    for (Eigen::Index i = 0; i < x.size(); ++i) x(i) = Complex(1.0, 0.1 * static_cast<double>(i % 7) - 0.3);
    for (int i = 0; i < 4; ++i) x = lu.solve(x).normalized();
    return x;
}
}  // namespace

EigenPair eigen_pair(const Eigen::MatrixXcd& matrix, Complex near) {
    const std::vector<Complex> all = eigenvalues_of(matrix);
    const auto distance = [&](Complex value) { return std::abs(value - near); };
    const Complex value =
        *std::min_element(all.begin(), all.end(), [&](Complex a, Complex b) { return distance(a) < distance(b); });
    // A shift beside the eigenvalue keeps the factors finite without hurting the direction.
    const Complex beside = value * (1.0 + 1e-11);
    const auto identity = Eigen::MatrixXcd::Identity(matrix.rows(), matrix.cols());
    EigenPair pair{value, null_vector(matrix - beside * identity),
                   null_vector((matrix - beside * identity).transpose())};
    const Complex product = pair.left.transpose() * pair.right;
    if (product != 0.0) pair.left /= product;
    return pair;
}

}  // namespace howlmap
