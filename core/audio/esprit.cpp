// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/esprit.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace howlmap {
namespace {

using Complex = std::complex<double>;
using Eigen::Index;
using Eigen::MatrixXcd;
using Eigen::MatrixXd;

constexpr Index kMostOrder = 60;  // thirty modes
constexpr int kOrders = 7;        // looked at for poles that stay in place
constexpr double kFloor = 1e-11;  // of the largest eigenvalue: what rounding leaves

Index rows_for(std::size_t length) { return static_cast<Index>(std::min<std::size_t>(length / 2, 160)); }

MatrixXd summed_covariance(const std::vector<std::vector<double>>& segments, Index rows) {
    MatrixXd sum = MatrixXd::Zero(rows, rows);
    for (const auto& segment : segments) {
        const Index columns = static_cast<Index>(segment.size()) - rows + 1;
        MatrixXd hankel(rows, columns);
        for (Index c = 0; c < columns; ++c)
            for (Index r = 0; r < rows; ++r) hankel(r, c) = segment[static_cast<std::size_t>(r + c)];
        sum.noalias() += hankel * hankel.transpose();
    }
    return sum;
}

// Poles from the shift invariance of the signal subspace.
std::vector<Complex> poles_of(const MatrixXd& subspace) {
    const Index rows = subspace.rows() - 1;
    const MatrixXd turn = subspace.topRows(rows).colPivHouseholderQr().solve(subspace.bottomRows(rows));
    const Eigen::VectorXcd all = turn.eigenvalues();
    std::vector<Complex> out;
    for (const Complex& z : all)
        if (z.imag() > 1e-6 && std::abs(z) < 1.0 && std::abs(z) > 0.3) out.push_back(z);
    return out;
}

// Nearness of poles: angle to 1.5 %, decay to 20 %.
bool same_pole(Complex a, Complex b) {
    const double angle = std::arg(a), decay = -std::log(std::abs(a));
    return std::abs(angle - std::arg(b)) < 0.015 * angle + 0.002 &&
           std::abs(decay + std::log(std::abs(b))) < 0.2 * decay + 2e-4;
}

struct Cluster {
    std::vector<Complex> members;
    Complex mean() const {
        Complex sum = 0.0;
        for (const Complex& z : members) sum += std::log(z);
        return std::exp(sum / static_cast<double>(members.size()));
    }
};

std::vector<Complex> steady_poles(const MatrixXd& vectors, Index order) {
    std::vector<Cluster> clusters;
    for (int i = 0; i < kOrders; ++i) {
        const Index use = std::min<Index>(vectors.cols() - 1, order + 2 * i);
        for (const Complex& z : poles_of(vectors.leftCols(use))) {
            const auto home = std::find_if(clusters.begin(), clusters.end(),
                                           [&](const Cluster& c) { return same_pole(c.mean(), z); });
            if (home == clusters.end())
                clusters.push_back({{z}});
            else
                home->members.push_back(z);
        }
    }
    std::vector<Complex> out;
    for (const Cluster& c : clusters)
        if (static_cast<int>(c.members.size()) >= kOrders - 1) out.push_back(c.members.front());
    return out;
}

// Amplitudes of all poles in one segment, by least squares on real columns Re z^n and -Im z^n.
std::vector<Complex> amplitudes(const std::vector<Complex>& poles, const std::vector<double>& segment) {
    const auto rows = static_cast<Index>(segment.size()), count = static_cast<Index>(poles.size());
    MatrixXd basis(rows, 2 * count);
    for (Index k = 0; k < count; ++k) {
        Complex power = 1.0;
        for (Index n = 0; n < rows; ++n, power *= poles[static_cast<std::size_t>(k)]) {
            basis(n, 2 * k) = 2.0 * power.real();
            basis(n, 2 * k + 1) = -2.0 * power.imag();
        }
    }
    const Eigen::Map<const Eigen::VectorXd> values(segment.data(), rows);
    const Eigen::VectorXd found = basis.colPivHouseholderQr().solve(values);
    std::vector<Complex> out;
    for (Index k = 0; k < count; ++k) out.emplace_back(found(2 * k), found(2 * k + 1));
    return out;
}

}  // namespace

std::vector<DecayingSinusoid> fit_decays(const std::vector<std::vector<double>>& segments, double noise) {
    if (segments.empty() || segments.front().size() < 64) return {};
    const Index rows = rows_for(segments.front().size());
    const Eigen::SelfAdjointEigenSolver<MatrixXd> solver(summed_covariance(segments, rows));
    const MatrixXd vectors = solver.eigenvectors().rowwise().reverse();
    const Eigen::VectorXd values = solver.eigenvalues().reverse();
    const double columns = static_cast<double>(segments.front().size()) - static_cast<double>(rows) + 1.0;
    const double edge = std::sqrt(static_cast<double>(rows) / columns) + 1.0;  // of the noise's own eigenvalues
    const double floor =
        std::max(kFloor * values(0), 1.3 * noise * columns * static_cast<double>(segments.size()) * edge * edge);
    Index order = 0;
    while (order < std::min(kMostOrder, rows / 2) && values(order) > floor) ++order;
    if (order < 2) return {};
    const std::vector<Complex> poles = steady_poles(vectors, order);
    std::vector<DecayingSinusoid> out;
    for (const Complex& z : poles) out.push_back({z, {}});
    if (out.empty()) return out;
    for (const auto& segment : segments) {
        const std::vector<Complex> a = amplitudes(poles, segment);
        for (std::size_t k = 0; k < out.size(); ++k) out[k].amplitudes.push_back(a[k]);
    }
    return out;
}

}  // namespace howlmap
