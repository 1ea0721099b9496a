// SPDX-License-Identifier: GPL-3.0-or-later
// Butterworth: magnitude 1 / sqrt(1 + u^2n) (S. Butterworth 1930). Peaking: R. Bristow-Johnson, Audio EQ Cookbook.
#include <cmath>

#include "core/loop/blocks/filter_kernel.h"
#include "core/loop/chain.h"
#include "core/units/bands.h"
#include "core/units/level.h"
#include "tests/support/registry.h"

using namespace howlmap;

class Filters : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void butterworth_magnitudes_of_every_order() {
        for (int order = 1; order <= 8; ++order) {
            Filter high, low;
            high.append(butterworth_high_pass(200.0, order));
            low.append(butterworth_low_pass(200.0, order));
            for (const double hz : {20.0, 100.0, 200.0, 333.0, 4000.0}) {
                const double u = std::pow(hz / 200.0, order);
                QVERIFY(std::abs(low.magnitude(hz) * std::sqrt(1.0 + u * u) - 1.0) < 1e-12);
                QVERIFY(std::abs(high.magnitude(hz) * std::sqrt(1.0 + 1.0 / (u * u)) - 1.0) < 1e-9);
            }
            // Section by section the phase at the corner is n / 8 turns, ahead or behind, however large n.
            QVERIFY(std::abs(high.section_turns(200.0) - order / 8.0) < 1e-12);
            QVERIFY(std::abs(low.section_turns(200.0) + order / 8.0) < 1e-12);
            QVERIFY(std::abs(std::remainder(std::arg(high.at(90.0)) / (2.0 * kPi) - high.section_turns(90.0), 1.0)) <
                    1e-12);
        }
    }
    void peaking_gain_and_bandwidth() {
        for (const double db : {-12.0, -3.0, 6.0}) {
            const Section peak = peaking(500.0, 2.0, db);
            QVERIFY(std::abs(ratio_to_db(std::abs(peak.at(500.0))) - db) < 1e-9);
            QVERIFY(std::abs(std::arg(peak.at(500.0))) < 1e-12);
            // Bandwidth between the points of half the gain: f2 - f1 = f0 / Q with f1 f2 = f0^2.
            const double half = 500.0 / 4.0, edge = half + std::sqrt(half * half + 500.0 * 500.0);
            QVERIFY(std::abs(ratio_to_db(std::abs(peak.at(edge))) - db / 2.0) < 1e-9);
            // A cut is the inverse of the same boost.
            QVERIFY(std::abs(peak.at(700.0) * peaking(500.0, 2.0, -db).at(700.0) - 1.0) < 1e-12);
        }
        QVERIFY(std::abs(kGraphicBandQ - std::sqrt(std::cbrt(2.0)) / (std::cbrt(2.0) - 1.0)) < 5e-4);
    }
    void the_widest_bands_that_a_file_may_hold() {
        // As Q goes to 0, s A/Q and s/(A Q) are all that is left: the whole range is raised by A^2.
        for (const double q : {1e-3, 1e-160, 5e-324}) {
            const Complex raised = peaking(1000.0, q, 6.0).at(1000.0 + 1e-3);
            QVERIFY(std::abs(ratio_to_db(std::abs(raised)) - 6.0) < 1e-5);
            Pickup pickup;
            pickup.isolation_db = 0.0, pickup.baseline_db = -60.0;
            pickup.modes.emplace_back();
            pickup.modes.back().hz = 300.0, pickup.modes.back().q = q, pickup.modes.back().gain_db = 0.0;
            pickup.modes.back().air = pickup.holes_covered = true;
            pickup.cover_db = 6.0;
            QVERIFY(std::abs(body_bank(pickup).at(300.0) - Complex(db_to_ratio(-6.0) + 1e-3)) < 1e-9);
        }
    }
    void side_by_side_they_are_the_same() {
        Mix mix;
        mix.high_pass = HighPass{80.0, 3, {}};
        for (int band = 0; band < 31; band += 3) mix.graphic_eq[band] = band - 15.0;
        mix.notches = {{1200.0, 100.0, -40.0, {}}, {317.0, 1e-160, 3.0, {}}};
        mix.polarity = Polarity::inverted;
        mix.delay_ms = 120.0;
        Loudspeaker unit;
        unit.response.low_hz = 60.0, unit.response.low_order = 7;
        unit.response.high_hz = 15000.0, unit.response.high_order = 4;
        unit.response.table = {{100.0, 2.0, {}}, {1000.0, -3.0, {}}, {9000.0, 5.0, {}}};
        Input body;
        body.transducer = Pickup{};
        std::get<Pickup>(body.transducer).modes = {{280.0, 15.0, 0.0, true, {}, {}},
                                                   {1100.0, 40.0, -6.0, false, {}, {}}};
        const auto same = [](const auto& response, const auto& exact) {
            for (const double low : {20.0, 90.0, 279.0, 985.0, 1195.0, 19000.0}) {
                const Lanes block = response_in_block(response, low, 1.3);
                for (std::size_t i = 0; i < kBlockPoints; ++i)
                    if (std::abs(block.at(i) - exact(low + 1.3 * static_cast<double>(i))) > 1e-7) return false;
            }
            return true;
        };
        const Filter chain = mix_chain(mix), speaker = loudspeaker_response(unit);
        const InputResponse bridge(body);
        QVERIFY(same(chain, [&](double hz) { return chain.at(hz); }));
        QVERIFY(same(speaker, [&](double hz) { return speaker.at(hz); }));
        QVERIFY(same(bridge, [&](double hz) { return bridge.at(hz); }));
    }
    void a_mix_is_the_product_of_its_parts() {
        Mix mix;
        mix.high_pass = HighPass{80.0, 3, {}};
        mix.graphic_eq = {{17, -6.0}, {20, 0.0}};
        mix.notches = {{1200.0, 10.0, -9.0, {}}};
        mix.polarity = Polarity::inverted;
        mix.delay_ms = 2.0;
        const double hz = 937.0;
        Complex expected =
            -std::polar(1.0, -2.0 * kPi * hz * 0.002) * graphic_band(17, -6.0).at(hz) * peaking(1200, 10, -9).at(hz);
        for (const Section& section : butterworth_high_pass(80.0, 3)) expected *= section.at(hz);
        QVERIFY(std::abs(mix_chain(mix).at(hz) - expected) < 1e-12);
        QVERIFY(mix_chain(mix).inverted());
    }
    void loudspeaker_trim_table_polarity_delay() {
        Loudspeaker unit;
        unit.trim_db = -3.0;
        unit.delay_ms = 1.5;
        unit.polarity = Polarity::inverted;
        unit.response.table = {{100.0, 0.0, {}}, {1000.0, -10.0, {}}};
        const double hz = std::sqrt(1e5);
        const Complex expected = -std::polar(db_to_ratio(-8.0), -2.0 * kPi * hz * 0.0015);
        QVERIFY(std::abs(loudspeaker_response(unit).at(hz) - expected) < 1e-12);
        QVERIFY(std::abs(loudspeaker_response(unit).magnitude(50.0) - db_to_ratio(-3.0)) < 1e-12);
        QVERIFY(std::abs(loudspeaker_response(unit).magnitude(5000.0) - db_to_ratio(-13.0)) < 1e-12);
    }
    void a_body_is_a_bank_of_resonances() {
        Pickup pickup;
        pickup.isolation_db = 20.0;
        pickup.baseline_db = -12.0;
        pickup.modes = {{100.0, 20.0, 6.0, true, "", {}}};
        // At its centre a mode is 1 in phase: 10^(gain/20) over the baseline.
        const double open = db_to_ratio(-20.0) * (db_to_ratio(-12.0) + db_to_ratio(6.0));
        QVERIFY(std::abs(body_bank(pickup).at(100.0) - open) < 1e-12);
        pickup.holes_covered = true;
        const double covered = db_to_ratio(-20.0) * (db_to_ratio(-12.0) + db_to_ratio(-4.0));
        QVERIFY(std::abs(body_bank(pickup).at(100.0) - covered) < 1e-12);
        QCOMPARE(body_bank(pickup).modes[0].q, 10.0);
        pickup.modes[0].air = false;
        QVERIFY(std::abs(body_bank(pickup).at(100.0) - open) < 1e-12);
        // Half the bandwidth off: (j u/Q) / (1 - u^2 + j u/Q) has half the power.
        pickup.baseline_db = -400.0;
        const double u = (0.05 + std::sqrt(0.0025 + 4.0)) / 2.0;
        QVERIFY(std::abs(std::abs(body_bank(pickup).at(100.0 * u)) - db_to_ratio(-14.0) / std::sqrt(2.0)) < 1e-9);
    }
    void a_cupped_microphone_has_a_peak() {
        Input input;
        std::get<Microphone>(input.transducer).cupped = true;
        QVERIFY(std::abs(ratio_to_db(std::abs(InputResponse(input).at(1600.0))) - 5.0) < 1e-9);
        QCOMPARE(send_gain(100.0, 94.0), db_to_ratio(6.0));
    }
};
HOWLMAP_TEST(Filters)
#include "test_filters.moc"
