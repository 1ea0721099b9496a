// SPDX-License-Identifier: GPL-3.0-or-later
// Eigenvalues where a general solver has a hard time.
#include <cmath>
#include <limits>
#include <random>

#include "core/loop/eigenvalues.h"
#include "tests/support/registry.h"

using namespace howlmap;

class Eigenvalues : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    /// Every element z: n z once and 0 otherwise, as the trace and the rank say.
    void equal_microphones_side_by_side() {
        std::mt19937 random(1);
        std::uniform_real_distribution<double> any(-1.0, 1.0);
        for (Eigen::Index n = 3; n <= 16; ++n)
            for (int i = 0; i < 200; ++i) {
                const Complex z(any(random), any(random));
                const double size = std::abs(z) * static_cast<double>(n);
                int large = 0;
                for (const Complex value : eigenvalues_of(Eigen::MatrixXcd::Constant(n, n, z))) {
                    const bool is_large = std::abs(value) > 0.5 * size;
                    large += is_large;
                    const Complex expected = is_large ? z * static_cast<double>(n) : 0.0;
                    QVERIFY2(std::abs(value - expected) < 1e-12 * size, qPrintable(QString("%1 x %1").arg(n)));
                }
                QCOMPARE(large, 1);
            }
    }
    void what_has_no_eigenvalues_is_refused() {
        Eigen::MatrixXcd matrix = Eigen::MatrixXcd::Random(4, 4);
        matrix(1, 2) = std::numeric_limits<double>::quiet_NaN();
        QVERIFY_EXCEPTION_THROWN(eigenvalues_of(matrix), std::runtime_error);
    }
};

HOWLMAP_TEST(Eigenvalues)
#include "test_eigenvalues.moc"
