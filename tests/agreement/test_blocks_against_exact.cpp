// SPDX-License-Identifier: GPL-3.0-or-later
// The vector kernels and their short cuts against the plain way: every frequency computed exactly, one by one.
#include <Eigen/Eigenvalues>
#include <cmath>

#include "core/loop/blocks/block_scan.h"
#include "core/loop/blocks/block_spectrum.h"
#include "core/loop/eigenvalues.h"
#include "core/loop/stability.h"
#include "core/loop/swift_margin.h"
#include "tests/support/plain_stage.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// Two wedges, two singers, a guitar with a narrow body mode: a fast locus among slow ones.
Show small_band() {
    Show show = plain_stage(3, 2);
    show.stage.surfaces.floor.absorption = std::map<int, double>{{1, 0.15}, {3, 0.1}, {5, 0.06}};
    show.stage.surfaces.back = Surface{3.0, 0.2, {}};
    show.stage.surfaces.left = Surface{4.0, 0.4, {}};
    for (Loudspeaker& unit : show.loudspeakers) {
        unit.aim = {180.0, 40.0, 10.0};
        unit.directivity = Coverage{70.0, 50.0, 0.5, 0.35, 24.0, {}};
        unit.response.low_hz = 70.0;
        unit.response.low_order = 4;
        unit.response.high_hz = 16000.0;
    }
    std::get<Microphone>(show.inputs[0].transducer).pattern = PatternName::cardioid;
    std::get<Microphone>(show.inputs[1].transducer).pattern = PatternName::supercardioid;
    show.inputs[0].aim = show.inputs[1].aim = {180.0, -10.0, 0.0};
    Pickup pickup;
    pickup.modes = {{104.0, 60.0, 6.0, true, "", {}}, {196.0, 25.0, 0.0, false, "", {}}};
    show.inputs[2].transducer = pickup;
    for (int m = 0; m < 2; ++m)
        for (int i = 0; i < 3; ++i) send(show, i, m, 98.0 + i - 2 * m);
    show.mixes[1].polarity = Polarity::inverted;
    show.mixes[0].graphic_eq = {{18, -6.0}};
    show.system.latency_ms = 2.5;
    return show;
}

QString text(const std::optional<double>& value) { return value ? QString::number(*value) : "none"; }

/// Compares `draws` draws by both ways.
void compare_draws(const Show& show, std::uint64_t draws) {
    const BlockModel blocks(show, Purpose::draws);
    if (blocks.model().empty()) return;
    BlockScan scan(blocks);
    for (std::uint64_t d = 0; d < draws; ++d) {
        const auto fast = scan.margin(d), slow = drawn_margin(show, d);
        QCOMPARE(fast.has_value(), slow.has_value());
        if (!fast) continue;
        QVERIFY2(std::abs(fast->margin_db - slow->margin_db) < 0.05,
                 qPrintable(QString("draw %1: %2 dB at %3 Hz, exactly %4 dB at %5 Hz")
                                .arg(d)
                                .arg(fast->margin_db)
                                .arg(fast->hz)
                                .arg(slow->margin_db)
                                .arg(slow->hz)));
    }
}

void compare_as_drawn(const Show& show) {
    const Stability fast = stability_of(show, true), slow = exact_stability_of(LoopModel(show), true);
    QCOMPARE(fast.margin_db.has_value(), slow.margin_db.has_value());
    if (fast.margin_db)
        QVERIFY2(std::abs(*fast.margin_db - *slow.margin_db) < 0.001,
                 qPrintable(text(fast.margin_db) + " " + text(slow.margin_db)));
    const auto swift = swift_margin(show);
    QCOMPARE(swift.has_value(), slow.margin_db.has_value());
    if (swift)
        QVERIFY2(std::abs(swift->margin_db - *slow.margin_db) < 0.05,
                 qPrintable(QString::number(swift->margin_db) + " " + text(slow.margin_db)));
    QCOMPARE(fast.worst_phase_margin_db.has_value(), slow.worst_phase_margin_db.has_value());
    if (fast.worst_phase_margin_db)
        QVERIFY2(std::abs(*fast.worst_phase_margin_db - *slow.worst_phase_margin_db) < 0.005,
                 qPrintable(text(fast.worst_phase_margin_db) + " " + text(slow.worst_phase_margin_db)));
    QCOMPARE(fast.pairs.size(), slow.pairs.size());
    for (const PairFigure& a : fast.pairs)
        for (const PairFigure& b : slow.pairs)
            if (a.input == b.input && a.loudspeaker == b.loudspeaker && a.mix == b.mix)
                QVERIFY2(std::abs(a.loop_gain_db - b.loop_gain_db) < 0.01,
                         qPrintable(QString::number(a.loop_gain_db - b.loop_gain_db)));
    QCOMPARE(fast.rings.size(), slow.rings.size());
    for (std::size_t i = 0; i < fast.rings.size(); ++i)
        QVERIFY(std::abs(fast.rings[i].margin_db - slow.rings[i].margin_db) < 0.005);
}
}  // namespace

class BlocksAgainstExact : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void eigenvalues_of_many_matrices_at_once() {
        std::srand(3);
        for (const int n : {1, 2, 3, 6, 8, 12, 16, 24, 30}) {
            BlockSpectrum spectrum(static_cast<std::size_t>(n));
            std::vector<Eigen::MatrixXcd> matrices;
            for (std::size_t p = 0; p < kBlockPoints; ++p) {
                matrices.push_back(Eigen::MatrixXcd::Random(n, n) * std::pow(10.0, static_cast<double>(p) - 8.0));
                for (int i = 0; i < n; ++i)
                    for (int j = 0; j < n; ++j) spectrum.matrix()[i * n + j].set(p, matrices[p](i, j));
            }
            spectrum.find_bounds();
            spectrum.find_eigenvalues();
            for (std::size_t p = 0; p < kBlockPoints; ++p) {
                double radius = 0.0;
                for (const Complex value : eigenvalues_of(matrices[p])) radius = std::max(radius, std::abs(value));
                QVERIFY(spectrum.bound(p) >= radius * (1.0 - 1e-9));
                for (const Complex value : eigenvalues_of(matrices[p])) {
                    if (std::abs(value) < 0.4 * radius) continue;
                    double nearest = 1e9;
                    for (std::size_t i = 0; i < spectrum.size(); ++i)
                        nearest = std::min(nearest, std::abs(spectrum.eigenvalue(i, p) - value));
                    QVERIFY2(nearest < 1e-6 * radius, qPrintable(QString("%1 x %1: %2").arg(n).arg(nearest / radius)));
                }
            }
        }
    }
    void transfer_of_a_block() {
        const Show show = small_band();
        const BlockModel blocks(show, Purpose::as_drawn);
        Placement placement(blocks.model(), blocks.tables());
        placement.set(blocks.plan().as_drawn());
        double worst = 0.0;
        for (const Block& block : blocks.grid().blocks)
            for (int c = 0; c < 3; ++c)
                for (int l = 0; l < 2; ++l) {
                    Lanes h;
                    placement.transfer(static_cast<std::size_t>(2 * c + l), block, h);
                    for (std::size_t i = 0; i < kBlockPoints; i += 5) {
                        const Complex exact = blocks.model().transfer(c, l, block.hz(i));
                        double legs = 0.0;  // relative to the paths, which may cancel
                        for (const Leg& leg : blocks.model().legs(c, l)) legs += 0.02 / leg.held_m;
                        worst = std::max(worst, std::abs(h.at(i) - exact) / std::max(std::abs(exact), legs));
                    }
                }
        QVERIFY2(worst < 0.006, qPrintable(QString::number(worst)));
    }
    void knots_of_the_room() {
        Show show = small_band();
        show.stage.room = Room{400.0, 0.7, {}};
        const BlockModel blocks(show, Purpose::draws);
        RoomDraw room(*blocks.room());
        const DrawNumbers numbers(5, 7);
        const std::vector<double> phases = {0.1, -0.05};
        room.set(numbers, blocks.plan().layout().room, phases);
        for (const std::size_t b : {std::size_t{0}, std::size_t{9}, std::size_t{40}, blocks.grid().blocks.size() - 1}) {
            const Block& block = blocks.grid().blocks[b];
            room.enter(block);
            Lanes h{};
            room.add(3, block, h);  // input 1, loudspeaker 1
            for (std::size_t i = 0; i < kBlockPoints; ++i) {
                const Complex exact =
                    blocks.room()->field().value(numbers, blocks.plan().layout().room, 1, 1, block.hz(i)) *
                    std::polar(1.0, 2.0 * kPi * phases[1]);
                QVERIFY(std::abs(h.at(i) - exact) < 0.01 * blocks.room()->field().rms(1, 1, block.hz(i)));
            }
        }
    }
    void draws_of_a_small_band() { compare_draws(small_band(), 12); }
    void draws_in_a_room() {
        Show show = small_band();
        show.stage.room = Room{400.0, 0.35, {}};
        compare_draws(show, 4);
    }
    void draws_that_a_forecast_shortens() {
        Show show = small_band();
        show.stage.room = Room{400.0, 0.35, {}};
        constexpr int kDraws = 300;  // the forecast learns from the first 32
        const auto together = drawn_margins(show, kDraws);
        const BlockModel blocks(show, Purpose::draws);
        BlockScan scan(blocks);
        for (int d = 0; d < kDraws; ++d) {
            const auto alone = scan.margin(static_cast<std::uint64_t>(d));
            const auto& forecast = together[static_cast<std::size_t>(d)];
            QCOMPARE(forecast.has_value(), alone.has_value());
            QVERIFY2(std::abs(forecast->margin_db - alone->margin_db) < 0.01, qPrintable(QString("draw %1").arg(d)));
        }
    }
    void weak_loops_are_no_different() {
        Show show = small_band();
        show.stage.room = Room{400.0, 0.35, {}};
        constexpr int kDraws = 60;
        const auto before = drawn_margins(show, kDraws);
        for (Mix& mix : show.mixes)
            for (Send& send : mix.sends) send.level_db -= 50.0;
        const auto after = drawn_margins(show, kDraws);
        for (std::size_t d = 0; d < kDraws; ++d)
            QVERIFY2(before[d] && after[d] && std::abs(after[d]->margin_db - before[d]->margin_db - 50.0) < 0.02,
                     qPrintable(QString("draw %1").arg(d)));
    }
    void draws_of_other_directivities() {
        Show show = small_band();
        show.loudspeakers[0].directivity = CapOnSphere{0.2, 0.12, {}};
        show.loudspeakers[1].directivity =
            DirectivityTable{{0.0, 60.0, 180.0},
                             {100.0, 900.0, 8000.0},
                             {{0.0, -1.0, -3.0}, {0.0, -6.0, -12.0}, {0.0, -12.0, -30.0}},
                             {}};
        std::get<Microphone>(show.inputs[0].transducer).pattern =
            DirectivityTable{{0.0, 90.0, 180.0}, {200.0, 5000.0}, {{0.0, -5.0, -14.0}, {0.0, -8.0, -20.0}}, {}};
        std::get<Microphone>(show.inputs[1].transducer).cupped = true;
        compare_draws(show, 8);
        compare_as_drawn(show);
    }
    void draws_through_planes() {
        Show show = small_band();
        show.stage.surfaces.back->at = 2.03;     // the microphones stand 3 cm in front of it
        show.loudspeakers[0].position.z = 0.02;  // and this lies almost on the floor
        show.tolerance.position_m = 0.1;
        compare_draws(show, 8);
    }
    void a_long_delay_and_inverted_everything() {
        Show show = small_band();
        show.system.latency_ms = 180.0;
        show.mixes[0].delay_ms = 35.0;
        show.inputs[0].polarity = show.loudspeakers[0].polarity = Polarity::inverted;
        compare_draws(show, 3);
        compare_as_drawn(show);
    }
    void as_drawn() { compare_as_drawn(small_band()); }
    void stages_at_random() {
        RandomShowOptions options = stage_like();
        options.room = false;
        for (std::uint64_t seed = 1; seed <= 10; ++seed) {
            const Show show = random_show(seed, options);
            compare_as_drawn(show);
            compare_draws(show, 2);
            if (QTest::currentTestFailed()) qInfo("seed %d", static_cast<int>(seed));
        }
    }
};
HOWLMAP_TEST(BlocksAgainstExact)
#include "test_blocks_against_exact.moc"
