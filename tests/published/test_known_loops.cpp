// SPDX-License-Identifier: GPL-3.0-or-later
// Loops whose eigenvalues are known, and single delays: T. van Waterschoot and M. Moonen, Fifty years of acoustic
// feedback control, Proc. IEEE 99(2), 288-327, 2011, equations 10 to 17; A. G. J. MacFarlane and I. Postlethwaite, Int.
// J. Control 25, 81-127, 1977. Matrices and margins follow from elementary algebra.
#include <cmath>

#include "core/loop/crossings.h"
#include "core/loop/frequency_grid.h"
#include "core/loop/stability.h"
#include "core/units/level.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// Crossings of a constant matrix behind a delay, strongest first.
std::vector<Crossing> crossings_of(const Eigen::MatrixXcd& matrix, double delay_s, double common_s) {
    const Loci loci{[&](double hz) { return Eigen::MatrixXcd(matrix * std::polar(1.0, -2.0 * kPi * hz * delay_s)); },
                    common_s};
    const std::vector<double> grid = frequency_grid({common_s, std::abs(delay_s - common_s) + 1e-5, {}}, 16.0);
    const std::vector<double> bounds(grid.size(), spectral_bound(matrix));
    const std::vector<LociPoint> none;
    return find_crossings(loci, {grid, bounds, none}, 4.0, 1000);
}

Eigen::MatrixXcd square(double a, double b, double c, double d) {
    Eigen::MatrixXcd m(2, 2);
    m << a, b, c, d;
    return m;
}

double margin_of(const std::vector<Crossing>& crossings) { return -ratio_to_db(crossings.front().lambda.real()); }
}  // namespace

class KnownLoops : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void margins_of_two_by_two_loops() {
        // {0.8, 0.2}, {0.5 +- 0.3 j}, {+-0.9}, {+-0.632}
        QVERIFY(std::abs(margin_of(crossings_of(square(0.5, 0.3, 0.3, 0.5), 0.01, 0.01)) - 1.938) < 1e-3);
        QVERIFY(std::abs(margin_of(crossings_of(square(0.5, 0.3, -0.3, 0.5), 0.01, 0.01)) - 4.685) < 1e-3);
        QVERIFY(std::abs(margin_of(crossings_of(square(0, 0.9, 0.9, 0), 0.01, 0.01)) - 0.915) < 1e-3);
        QVERIFY(std::abs(margin_of(crossings_of(square(0, 2, 0.2, 0), 0.01, 0.01)) - 3.979) < 1e-3);
    }
    void crossings_of_a_pure_delay_lie_at_whole_turns() {
        // f = n / tau; the two loci of +-0.9 alternate at every half turn.
        const double tau = 0.0137;
        for (const double common : {0.0, tau, 0.009}) {
            const auto one = crossings_of(Eigen::MatrixXcd::Constant(1, 1, 0.5), tau, common);
            const auto n = static_cast<std::size_t>(20000.0 * tau) - static_cast<std::size_t>(20.0 * tau);
            QVERIFY(one.size() == std::min(n, kMostCrossings));
            for (const Crossing& crossing : one)
                QVERIFY(std::abs(crossing.hz * tau - std::round(crossing.hz * tau)) < 1e-6 * crossing.hz * tau);
        }
        const auto both = crossings_of(square(0, 0.9, 0.9, 0), 0.002, 0.002);
        for (const Crossing& crossing : both)
            QVERIFY(std::abs(2.0 * crossing.hz * 0.002 - std::round(2.0 * crossing.hz * 0.002)) < 1e-5);
        QCOMPARE(both.size(), std::size_t{80});
    }
    void turned_polarity_moves_every_candidate_by_half_the_spacing() {
        const double tau = 0.004;
        for (const Crossing& crossing : crossings_of(Eigen::MatrixXcd::Constant(1, 1, -0.5), tau, tau)) {
            const double turns = crossing.hz * tau;
            QVERIFY(std::abs(turns - std::floor(turns) - 0.5) < 1e-6);
        }
    }
    void thirty_inches_of_air() {
        // One omni microphone 0.762 m from an omni loudspeaker: rings near n c / r, level falls by 20 log10 |L| a trip.
        Show show = plain_stage(1, 1);
        show.inputs[0].position = {0.0, 2.0, 1.5};
        show.loudspeakers[0].position = {0.0, 2.762, 1.5};
        send(show, 0, 0, 90.0);
        const Stability stability = stability_of(show, true);
        const double trip = 0.762 / 343.2, loop_db = -4.0 - 20.0 * std::log10(0.762);
        QVERIFY(std::abs(*stability.margin_db + loop_db) < 0.01);
        QCOMPARE(stability.rings.size(), std::size_t{20});
        for (const Ring& ring : stability.rings) {
            QVERIFY(std::abs(ring.hz * trip - std::round(ring.hz * trip)) < 1e-5 * ring.hz * trip);
            QVERIFY(std::abs(ring.build_up_db_per_s * trip + ring.margin_db) < 0.01);
            QVERIFY(std::abs(ring.whole_waves - std::round(ring.whole_waves)) < 1e-4);
            QCOMPARE(ring.turns, 0.0);
            QCOMPARE(ring.shares.size(), std::size_t{1});
            QVERIFY(std::abs(ring.shares[0].share - 1.0) < 1e-9);
        }
    }
    void order_of_the_gains() {
        // Perron root of |L| >= spectral radius >= largest positive real eigenvalue, for any matrix.
        std::srand(5);
        for (int i = 0; i < 50; ++i) {
            const Eigen::MatrixXcd m = Eigen::MatrixXcd::Random(4, 4);
            double radius = 0.0;
            for (const Complex value : eigenvalues_of(m)) radius = std::max(radius, std::abs(value));
            QVERIFY(perron_root(m.cwiseAbs()) >= radius - 1e-9);
            QVERIFY(spectral_bound(m) >= radius - 1e-9);
            QVERIFY(spectral_bound(m) <= 1.3 * radius);
        }
    }
};
HOWLMAP_TEST(KnownLoops)
#include "test_known_loops.moc"
