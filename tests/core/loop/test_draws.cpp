// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <limits>

#include "core/loop/drawn_show.h"
#include "core/loop/room_field.h"
#include "core/loop/tolerance.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

class Draws : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void first_numbers_of_seed_1() {
        const DrawNumbers numbers(1, 0);
        QVERIFY(std::abs(numbers.unit(1) - 0.36818951565) < 1e-11);
        QVERIFY(std::abs(numbers.unit(2) - 0.94356423086) < 1e-11);
        QVERIFY(std::abs(numbers.unit(3) - 0.04525699774) < 1e-11);
    }
    void numbers_go_to_their_places() {
        Show show = plain_stage(2, 2);
        Input line;
        line.id = "keys";
        line.transducer = Line{};
        show.inputs.insert(show.inputs.begin() + 1, line);
        send(show, 0, 0, 90.0);
        send(show, 1, 0, 80.0);  // the line: makes no loop, but has its number
        send(show, 2, 1, 85.0);
        const DrawLayout layout(show);
        QCOMPARE(layout.loudspeakers, std::uint64_t{11});
        QCOMPARE(layout.sends, std::uint64_t{21});
        QCOMPARE(layout.temperature, std::uint64_t{24});
        QCOMPARE(layout.phases, std::uint64_t{25});
        QCOMPARE(layout.room, std::uint64_t{27});
        const DrawNumbers n(9, 3);
        const DrawnShow drawn = draw_show(show, layout, n);
        const auto moved = [&](double before, double after, double half_width, std::uint64_t i) {
            return std::abs(after - before - half_width * (2.0 * n.unit(i) - 1.0)) < 1e-12;
        };
        QVERIFY(moved(show.inputs[0].position.x, drawn.show.inputs[0].position.x, 0.05, 1));
        QVERIFY(moved(show.inputs[0].aim.pitch_deg, drawn.show.inputs[0].aim.pitch_deg, 5.0, 5));
        QVERIFY(moved(show.inputs[2].position.z, drawn.show.inputs[2].position.z, 0.05, 8));
        QVERIFY(drawn.show.inputs[1] == line);
        QVERIFY(moved(show.loudspeakers[1].aim.yaw_deg, drawn.show.loudspeakers[1].aim.yaw_deg, 5.0, 19));
        QVERIFY(moved(80.0, drawn.show.mixes[0].sends[1].level_db, 1.0, 22));
        QVERIFY(moved(85.0, drawn.show.mixes[1].sends[0].level_db, 1.0, 23));
        QVERIFY(moved(20.0, drawn.show.air.temperature_c, 3.0, 24));
        QVERIFY(moved(0.0, drawn.phases[1], kPi / 3.0, 26));
    }
    void quantiles_are_linear_between_order_statistics() {
        QCOMPARE(quantile({1.0, 2.0, 4.0}, 0.5), 2.0);
        QCOMPARE(quantile({1.0, 2.0, 4.0}, 0.75), 3.0);
        QCOMPARE(quantile({5.0}, 0.05), 5.0);
        const double none = std::numeric_limits<double>::infinity();
        QCOMPARE(quantile({1.0, 2.0, none}, 0.5), 2.0);
        QVERIFY(std::isinf(quantile({1.0, 2.0, none}, 0.75)));
        QVERIFY(std::isinf(quantile({none, none}, 0.05)));
    }
    void a_draw_without_a_margin_counts_as_infinite() {
        const ToleranceFigures figures =
            figures_of({DrawnMargin{3.0, 1000.0}, std::nullopt, DrawnMargin{1.0, 1010.0}, DrawnMargin{2.0, 100.0}}, 5);
        QCOMPARE(figures.draws, 4);
        QVERIFY(figures.margin_p05_db && figures.margin_p50_db && !figures.margin_p95_db);
        QCOMPARE(*figures.margin_p50_db, 2.5);
        QCOMPARE(figures.first_ring[0].band_hz, 1000.0);
        QCOMPARE(figures.first_ring[0].probability, 0.5);
    }
    void no_loop_no_margin() {
        Show show = plain_stage(2, 1);
        const auto figures = tolerance_figures(show);
        QVERIFY(figures && !figures->margin_p05_db && figures->first_ring.empty());
        QCOMPARE(figures->draws, 100);
    }
    void cancelled_draws_give_nothing() {
        Show show = plain_stage(2, 1);
        send(show, 0, 0, 95.0);
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!tolerance_figures(show, {stop.get_token(), {}}));
    }
    void the_room_term_has_the_variance_of_the_diffuse_field() {
        Show show = plain_stage(1, 1);
        show.stage.room = Room{500.0, 0.8, {}};
        std::get<Microphone>(show.inputs[0].transducer).pattern = PatternName::cardioid;
        const RoomField field(show);
        const double rms = std::sqrt(16.0 * kPi / (0.161 * 500.0 / 0.8) / 3.0);
        QVERIFY(std::abs(field.rms(0, 0, 1234.0) / rms - 1.0) < 1e-9);
        QCOMPARE(field.knots(), std::uint64_t{7273 + 2});
        double power = 0.0;
        Complex mean = 0.0;
        const DrawNumbers numbers(1, 0);
        const int n = 20000;
        for (int i = 0; i < n; ++i) {
            const Complex z = field.value(numbers, 12, 0, 0, 30.0 + 0.91 * i);
            power += std::norm(z) / n;
            mean += z / static_cast<double>(n);
        }
        QVERIFY(std::abs(power / (rms * rms) - 1.0) < 0.05);
        QVERIFY(std::abs(mean) < 0.05 * rms);
    }
};
HOWLMAP_TEST(Draws)
#include "test_draws.moc"
