// SPDX-License-Identifier: GPL-3.0-or-later
// The predicted margin, frequency and build-up against a closed loop that runs in time.
#include <cmath>

#include "core/loop/stability.h"
#include "tests/support/loop_simulator.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// Dry air at a pressure that hardly absorbs anything below a few kilohertz: the simulation's air absorbs nothing.
Show stage(int microphones, int loudspeakers) {
    Show show = plain_stage(microphones, loudspeakers);
    show.air.humidity_pct = 100.0;
    show.air.temperature_c = 25.0;
    for (Loudspeaker& unit : show.loudspeakers) {
        unit.response.low_hz = 80.0;
        unit.response.low_order = 3;
        unit.response.high_hz = 1500.0;
        unit.response.high_order = 4;
    }
    show.stage.surfaces.floor.absorption = 0.2;
    return show;
}

void agree(const Show& show, double seconds) {
    const Stability stability = stability_of(show, true);
    const double margin = *stability.margin_db, hz = stability.rings.front().hz;
    const Simulated below = simulate(show, margin - 0.1, seconds), above = simulate(show, margin + 0.1, seconds);
    QVERIFY2(below.growth_db_per_s < 0.0 && above.growth_db_per_s > 0.0,
             qPrintable(QString("margin %1 dB at %2 Hz: %3 and %4 dB/s")
                            .arg(margin)
                            .arg(hz)
                            .arg(below.growth_db_per_s)
                            .arg(above.growth_db_per_s)));
    QVERIFY2(std::abs(above.hz / hz - 1.0) < 1e-3, qPrintable(QString("%1 Hz, heard %2 Hz").arg(hz).arg(above.hz)));
    // 0.1 dB beyond the margin it builds up at the rate that the slope of the locus gives.
    const double slope = stability.rings.front().build_up_db_per_s / -margin;  // dB/s a dB
    QVERIFY2(std::abs(above.growth_db_per_s - 0.1 * slope) < 0.1 * std::abs(0.1 * slope) + 0.2,
             qPrintable(QString("%1 dB/s, heard %2").arg(0.1 * slope).arg(above.growth_db_per_s)));
}
}  // namespace

class TimeDomain : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void one_microphone_one_loudspeaker() {
        Show show = stage(1, 1);
        std::get<Microphone>(show.inputs[0].transducer).pattern = PatternName::cardioid;
        show.inputs[0].aim = {120.0, -20.0, 0.0};
        send(show, 0, 0, 95.0);
        agree(show, 2.0);
    }
    void inverted_with_equalisers_and_delays() {
        Show show = stage(1, 1);
        show.mixes[0].polarity = Polarity::inverted;
        show.mixes[0].graphic_eq = {{12, -9.0}, {14, 4.0}};
        show.mixes[0].notches = {{620.0, 8.0, -6.0, {}}};
        show.mixes[0].high_pass = HighPass{110.0, 4, {}};
        show.mixes[0].delay_ms = 1.7;
        show.inputs[0].high_pass = HighPass{90.0, 2, {}};
        show.inputs[0].equaliser = {{300.0, 2.0, 3.0, {}}};
        show.system.latency_ms = 2.9;
        show.loudspeakers[0].delay_ms = 0.6;
        send(show, 0, 0, 95.0);
        agree(show, 2.0);
    }
    void a_guitar_with_a_narrow_air_mode() {
        Show show = stage(1, 1);
        Pickup pickup;
        pickup.isolation_db = 10.0;
        pickup.modes = {
            {104.0, 18.0, 6.0, true, "", {}}, {196.0, 25.0, 0.0, false, "", {}}, {392.0, 28.0, -5.0, false, "", {}}};
        show.inputs[0].transducer = pickup;
        send(show, 0, 0, 95.0);
        agree(show, 3.0);
        std::get<Pickup>(show.inputs[0].transducer).holes_covered = true;
        agree(show, 3.0);
    }
    void three_inputs_two_mixes_all_together() {
        Show show = stage(3, 3);
        show.stage.surfaces.back = Surface{3.5, 0.5, {}};
        std::get<Microphone>(show.inputs[0].transducer).pattern = PatternName::supercardioid;
        show.inputs[0].aim = {180.0, -10.0, 0.0};
        std::get<Microphone>(show.inputs[1].transducer).pattern =
            PatternName::figure_8;  // a negative lobe towards a wedge
        show.inputs[1].aim = {200.0, 20.0, 0.0};
        Pickup pickup;
        pickup.isolation_db = 12.0;
        pickup.modes = {{275.0, 15.0, 4.0, true, "", {}}, {460.0, 25.0, 2.0, false, "", {}}};
        show.inputs[2].transducer = pickup;
        show.mixes[1].loudspeakers = {"l1", "l2"};  // two loudspeakers a mix
        show.mixes.pop_back();
        for (int i = 0; i < 3; ++i) {
            send(show, i, 0, 95.0 - i);
            send(show, i, 1, 93.0 + i);
        }
        show.mixes[1].polarity = Polarity::inverted;
        show.inputs[1].polarity = Polarity::inverted;
        show.mixes[1].delay_ms = 0.9;
        agree(show, 2.5);
    }
    void a_cross_coupled_loop() {
        // Each microphone is sent to the other's wedge only: neither loop alone closes.
        Show show = stage(2, 2);
        show.inputs[1].position = {3.0, 2.0, 1.5};
        show.loudspeakers[1].position = {3.2, 0.9, 0.3};
        send(show, 0, 1, 96.0);
        send(show, 1, 0, 95.0);
        agree(show, 2.5);
    }
};
HOWLMAP_TEST(TimeDomain)
#include "test_time_domain.moc"
