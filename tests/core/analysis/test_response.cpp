// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/analysis/response.h"
#include "tests/support/registry.h"

namespace howlmap {
namespace {

/// One omni microphone and two omni loudspeakers in free air, 2 m and 3 m away, on two mixes.
Show two_loops() {
    Show show;
    show.stage.surfaces.floor.absorption = 1.0;
    show.tolerance.draws = 20;
    Input voice;
    voice.id = "voice";
    voice.transducer = Microphone{PatternName::omni, false, {}, {}};
    voice.position = {0.0, 2.0, 1.5};
    voice.source_spl_db = 94.0;
    show.inputs = {voice};
    Loudspeaker near, far;
    near.id = "near";
    near.position = {2.0, 2.0, 1.5};
    far.id = "far";
    far.position = {-3.0, 2.0, 1.5};
    show.loudspeakers = {near, far};
    Mix one, two;
    one.id = "one";
    one.loudspeakers = {"near"};
    one.sends = {{"voice", 94.0, {}}};
    two.id = "two";
    two.number = 2;
    two.loudspeakers = {"far"};
    two.sends = {{"voice", 88.0, {}}};
    show.mixes = {one, two};
    return show;
}

double at(const std::vector<double>& hz, const std::vector<double>& values, double f) {
    return values[static_cast<std::size_t>(std::lower_bound(hz.begin(), hz.end(), f) - hz.begin())];
}

}  // namespace

class TestResponse : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void onePathFollowsTheInverseDistanceLaw() {
        // Level falls by 20 lg r from 1 m (any textbook; e.g. Kuttruff, Room Acoustics, 1.3); at 100 Hz air takes
        // nothing.
        const auto near = loop_response(two_loops(), {{}, "near", "one"});
        const auto far = loop_response(two_loops(), {"voice", {}, "two"});
        QVERIFY(std::abs(at(near->hz, near->gain_db, 100.0) + 20.0 * std::log10(2.0)) < 0.01);
        QVERIFY(std::abs(at(far->hz, far->gain_db, 100.0) + 6.0 + 20.0 * std::log10(3.0)) < 0.01);
    }
    void aloneThereIsNoPhaseToFallBadly() {
        const auto near = loop_response(two_loops(), {{}, "near", {}});
        for (std::size_t i = 0; i < near->hz.size(); ++i)
            QVERIFY(std::abs(near->gain_db[i] - near->worst_phase_db[i]) < 1e-3);
    }
    void touchesZeroWhereARingIsRaisedByItsMargin() {
        const Show show = two_loops();
        AnalysisOptions options;
        options.tolerance = false;
        const auto result = analyse(show, options);
        QVERIFY(!result->rings.empty());
        std::vector<double> rings;
        for (const Ring& ring : result->rings) rings.push_back(ring.hz);
        const auto all = loop_response(show, {}, rings);
        for (const Ring& ring : result->rings) {
            const double gain = at(all->hz, all->gain_db, ring.hz);
            QVERIFY2(std::abs(gain + ring.margin_db) < 0.01, qPrintable(QString::number(gain + ring.margin_db)));
        }
        const double worst = *std::max_element(all->worst_phase_db.begin(), all->worst_phase_db.end());
        QVERIFY(std::abs(worst + *result->worst_phase_margin_db) < 0.05);
    }
    void bandClosesWithoutTolerance() {
        Show show = two_loops();
        show.tolerance.position_m = show.tolerance.aim_deg = show.tolerance.send_db = show.tolerance.temperature_c =
            show.tolerance.phase_deg = 0.0;
        const auto band = response_band(show, {}, 8, 12);
        const auto drawn = loop_response(show, {}, band->hz);
        for (std::size_t i = 0; i < band->hz.size(); ++i) {
            const double gain = at(drawn->hz, drawn->gain_db, band->hz[i]);
            QVERIFY(std::abs(band->p05_db[i] - gain) < 1e-9);
            QVERIFY(std::abs(band->p95_db[i] - gain) < 1e-9);
        }
    }
    void betweenThePointsAskedForItIsTheSameCurve() {
        const auto curve = loop_response(two_loops());
        const auto exact = loop_response(two_loops(), {}, curve->hz);
        QCOMPARE(curve->hz, exact->hz);
        for (std::size_t i = 0; i < curve->hz.size(); ++i) {
            QVERIFY(std::abs(curve->gain_db[i] - exact->gain_db[i]) < 0.05);
            QVERIFY(std::abs(curve->worst_phase_db[i] - exact->worst_phase_db[i]) < 0.05);
            QVERIFY(i == 0 || curve->hz[i] < curve->hz[i - 1] * std::exp2(1.0 / 85.0) * (1.0 + 1e-9));
        }
    }
    void bandHoldsTheSendTolerance() {
        Show show = two_loops();
        show.tolerance.position_m = show.tolerance.aim_deg = show.tolerance.temperature_c = show.tolerance.phase_deg =
            0.0;
        show.tolerance.send_db = 1.0;
        show.tolerance.draws = 400;
        const auto band = response_band(show, {{}, "near", {}}, 400, 6);
        // Uniform in +-1 dB: 5th and 95th percentile lie at -0.9 and +0.9 dB.
        const double drawn = -20.0 * std::log10(2.0);
        QVERIFY(std::abs(at(band->hz, band->p05_db, 100.0) - (drawn - 0.9)) < 0.1);
        QVERIFY(std::abs(at(band->hz, band->p95_db, 100.0) - (drawn + 0.9)) < 0.1);
    }
    void nothingOpenGivesNothing() {
        Show show = two_loops();
        QVERIFY(loop_response(show, {"nobody", {}, {}})->hz.empty());
        QVERIFY(response_band(show, {{}, {}, "nobody"})->hz.empty());
    }
    void cancelledGivesNone() {
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!loop_response(two_loops(), {}, {}, {stop.get_token(), {}}));
        QVERIFY(!response_band(two_loops(), {}, 4, 6, {stop.get_token(), {}}));
    }
    void frequenciesRiseAndHoldWhatWasAsked() {
        const auto hz = response_frequencies(12);
        QVERIFY(std::is_sorted(hz.begin(), hz.end()));
        const auto curve = loop_response(two_loops(), {}, {440.0, 10.0, 440.0, 30000.0});
        QVERIFY(std::is_sorted(curve->hz.begin(), curve->hz.end()));
        QCOMPARE(std::count(curve->hz.begin(), curve->hz.end(), 440.0), 1);
        QCOMPARE(curve->hz.front(), 20.0);
        QCOMPARE(curve->hz.back(), 20000.0);
        QCOMPARE(hz.front(), 20.0);
        QCOMPARE(hz.back(), 20000.0);
    }
};

HOWLMAP_TEST(TestResponse)

}  // namespace howlmap

#include "test_response.moc"
