// SPDX-License-Identifier: GPL-3.0-or-later
#include <atomic>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/analysis/analysis.h"
#include "core/report/analysis_json.h"
#include "tests/support/plain_stage.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
Show two_wedges() {
    Show show = plain_stage(2, 2);
    show.stage.surfaces.floor.absorption = 0.1;
    std::get<Microphone>(show.inputs[0].transducer).pattern = PatternName::cardioid;
    show.inputs[0].aim = {180.0, -10.0, 0.0};
    for (int i = 0; i < 2; ++i)
        for (int m = 0; m < 2; ++m) send(show, i, m, 94.0 + i - m);
    show.tolerance.draws = 60;
    return show;
}
}  // namespace

class Analysis : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void verdicts() {
        QCOMPARE(verdict_of(-0.1, 6.0), Verdict::rings);
        QCOMPARE(verdict_of(0.0, 6.0), Verdict::tight);
        QCOMPARE(verdict_of(5.99, 6.0), Verdict::tight);
        QCOMPARE(verdict_of(6.0, 6.0), Verdict::holds);
        QCOMPARE(verdict_of(std::nullopt, 6.0), Verdict::holds);
    }
    void the_same_show_gives_the_same_bytes() {
        const Show show = two_wedges();
        QCOMPARE(analysis_json(*analyse(show)), analysis_json(*analyse(show)));
    }
    void margins_are_in_order_and_shares_sum_to_one() {
        const auto result = analyse(two_wedges());
        QVERIFY(result && result->margin_db && result->worst_phase_margin_db);
        QVERIFY(*result->worst_phase_margin_db <= *result->margin_db);
        QVERIFY(!result->rings.empty() && result->rings.size() <= 20);
        QVERIFY(std::abs(result->rings.front().margin_db - *result->margin_db) < 1e-6);
        for (std::size_t i = 0; i + 1 < result->rings.size(); ++i)
            QVERIFY(result->rings[i].margin_db <= result->rings[i + 1].margin_db);
        for (const Ring& ring : result->rings) {
            QVERIFY(ring.margin_db <= *result->margin_db + 12.0);
            double sum = 0.0;
            for (const Share& share : ring.shares) sum += share.share;
            QVERIFY(std::abs(sum - 1.0) < 0.02);  // shares below 0.005 are not listed
        }
        QCOMPARE(result->pairs.size(), std::size_t{4});
        const ToleranceFigures& figures = *result->tolerance;
        QVERIFY(*figures.margin_p05_db <= *figures.margin_p50_db && *figures.margin_p50_db <= *figures.margin_p95_db);
        double probability = 0.0;
        for (const BandProbability& band : figures.first_ring) probability += band.probability;
        QVERIFY(std::abs(probability - 1.0) < 1e-9);
    }
    void every_send_up_by_a_decibel_takes_a_decibel_of_margin() {
        Show show = two_wedges();
        const double before = *analyse(show, {false, false, false})->margin_db;
        for (Mix& mix : show.mixes)
            for (Send& one : mix.sends) one.level_db += 1.0;
        QVERIFY(std::abs(*analyse(show, {false, false, false})->margin_db - before + 1.0) < 1e-6);
    }
    void turning_input_and_mix_changes_nothing() {
        Show show = two_wedges();
        const double before = *analyse(show, {false, false, false})->margin_db;
        for (Input& input : show.inputs) input.polarity = Polarity::inverted;
        for (Mix& mix : show.mixes) mix.polarity = Polarity::inverted;
        QVERIFY(std::abs(*analyse(show, {false, false, false})->margin_db - before) < 1e-6);
    }
    void nothing_sent_nothing_rings() {
        const auto result = analyse(plain_stage(3, 2));
        QVERIFY(result && !result->margin_db && !result->worst_phase_margin_db);
        QVERIFY(result->rings.empty() && result->pairs.empty());
        QCOMPARE(result->verdict, Verdict::holds);
        const auto json = nlohmann::json::parse(analysis_json(*result));
        QVERIFY(json["margin_db"].is_null() && json["tolerance"]["margin_p05_db"].is_null());
    }
    void a_whisper_of_a_loop_counts_as_none() {
        Show show = plain_stage(1, 1);
        send(show, 0, 0, 20.0);  // -74 dB and the distance
        const auto result = analyse(show);
        QVERIFY(!result->margin_db && !result->worst_phase_margin_db && result->rings.empty());
        QCOMPARE(result->pairs.size(), std::size_t{1});
    }
    void cancelled_at_any_time() {
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!analyse(two_wedges(), {}, {stop.get_token(), {}}));
        std::stop_source later;
        const Job job{later.get_token(), [&](double fraction) {
                          if (fraction > 0.3) later.request_stop();
                      }};
        QVERIFY(!analyse(two_wedges(), {}, job));
    }
    void progress_rises_to_one() {
        std::atomic<double> most = 0.0;
        const Job job{{}, [&](double fraction) {
                          if (fraction > most) most = fraction;
                      }};
        QVERIFY(analyse(two_wedges(), {}, job));
        QCOMPARE(most.load(), 1.0);
    }
    void rooms_at_the_limits_of_a_file() {
        constexpr double least = 5e-324;
        Show show = two_wedges();
        show.tolerance.draws = 5;
        const double dry = *analyse(show)->tolerance->margin_p05_db;
        for (const double rt60 : {least, 1e-9, 30.0})
            for (const double volume : {least, 100.0, 1e7}) {
                show.stage.room = Room{volume, rt60, {}};
                const auto counted = analyse(show)->tolerance;
                QVERIFY(counted);
                // A term that is the same at all frequencies turns no locus: there may be none.
                if (!counted->margin_p05_db) QVERIFY(rt60 < 1.0 && volume < 1.0);
                // What dies at once is not there; what is smaller than a grain of dust and does not die howls.
                if (rt60 < 1.0 && volume > 1.0) QVERIFY(std::abs(*counted->margin_p05_db - dry) < 0.05);
                if (rt60 > 1.0 && volume < 1.0) QVERIFY(*counted->margin_p05_db < -60.0);
            }
    }
    void any_show_that_a_file_may_hold() {
        RandomShowOptions options;
        options.unknown_keys = false;
        for (std::uint64_t seed = 1; seed <= 12; ++seed) {
            Show show = random_show(seed, options);
            show.tolerance.draws = 2;
            show.stage.room.reset();
            const auto result = analyse(show);
            QVERIFY(result);
            QVERIFY(!result->margin_db || std::isfinite(*result->margin_db));
            for (const Ring& ring : result->rings)
                QVERIFY(std::isfinite(ring.hz) && std::isfinite(ring.build_up_db_per_s));
        }
    }
};
HOWLMAP_TEST(Analysis)
#include "test_analysis.moc"
