// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>
#include <cstdio>

#include "core/file/read.h"
#include "core/file/write.h"
#include "core/lesson/pair.h"
#include "core/lesson/task.h"
#include "core/lesson/words.h"
#include "core/loop/stability.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

Bench free_air(double distance) {
    Bench bench = plain_bench();
    bench.show.loudspeakers[0].directivity = Omni{}, bench.show.loudspeakers[0].response = {};
    turn(bench, Knob::floor, 0), turn(bench, Knob::pattern, 0);
    turn(bench, Knob::speaker_height, 1.0), turn(bench, Knob::height, 1.0), turn(bench, Knob::distance, distance);
    return bench;
}

}  // namespace

class TestBench : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void every_knob_reads_back_what_was_set() {
        for (int k = 0; k < kKnobs; ++k) {
            const auto knob = static_cast<Knob>(k);
            const KnobRange& range = range_of(knob);
            QCOMPARE(int(*knob_named(range.key)), k);
            for (const double value : {range.least, range.most, range.least + 3 * range.step}) {
                Bench bench = plain_bench();
                if (knob == Knob::covered) turn(bench, Knob::body, 1);
                const double held = std::min(value, range.most);
                turn(bench, knob, value);
                const double got = value_of(bench, knob);
                const double turns = knob == Knob::aim ? std::remainder(got - held, 360.0) : got - held;
                QVERIFY2(std::abs(turns) < 1e-9, range.key);
                // What stands on the bench is a show that a file can hold.
                QVERIFY2(read_show(write_show(bench.show)).has_value(), range.key);
            }
            Bench bench = plain_bench();
            turn(bench, knob, std::nan(""));
            QVERIFY(bench == plain_bench());
            if (is_switch(knob)) continue;
            turn(bench, knob, 1e9);
            QVERIFY(std::abs(std::abs(value_of(bench, knob)) - range.most) < 1e-9);
        }
        QVERIFY(!knob_named("nothing"));
    }

    // One omnidirectional loudspeaker and microphone in free air: whole waves r f / c, so k c / r fits, and at equal
    // level the loop falls 6.02 dB a doubling of distance (inverse distance law).
    void the_comb_of_free_air_is_a_row_of_whole_waves() {
        const LessonFigures near = figures_of(free_air(1.0)), far = figures_of(free_air(2.0));
        QVERIFY(!near.bounce_m);
        QVERIFY(near.comb.size() > 20);
        for (std::size_t k = 0; k < near.comb.size(); ++k)
            QVERIFY(std::abs(near.comb[k].hz - static_cast<double>(k + 1) * 343.2) < 0.02);
        QVERIFY(std::abs(far.comb[0].hz - 171.6) < 0.02);
        QVERIFY(std::abs(near.whole_waves - 1000.0 / 343.2) < 1e-9);
        QVERIFY(std::abs(*near.loop_gain_db - *far.loop_gain_db - 6.02) < 0.02);
        QVERIFY(std::abs(near.sum - near.direct) < 1e-12);
    }
    void turned_polarity_fits_half_way_between() {
        Bench bench = free_air(1.0);
        turn(bench, Knob::polarity, 1);
        const LessonFigures figures = figures_of(bench);
        for (std::size_t k = 0; k < figures.comb.size(); ++k)
            QVERIFY(std::abs(figures.comb[k].hz - (static_cast<double>(k) + 0.5) * 343.2) < 0.02);
    }
    void another_frequency_of_the_same_bench_needs_no_new_comb() {
        Bench bench = plain_bench();
        turn(bench, Knob::latency, 3.0);
        turn(bench, Knob::band_cut, -4.0);
        LessonFigures quick = figures_of(bench);
        for (const double hz : {100.0, 733.0, 6000.0}) {
            turn(bench, Knob::hz, hz);
            quick = figures_at_other_frequency(bench, quick);
            const LessonFigures whole = figures_of(bench);
            QCOMPARE(quick.hz, hz);
            QCOMPARE(quick.sum, whole.sum);
            QCOMPARE(quick.loop_gain_db, whole.loop_gain_db);
            QCOMPARE(quick.whole_waves, whole.whole_waves);
            QCOMPARE(quick.margin_db, whole.margin_db);
            QCOMPARE(quick.ring_hz, whole.ring_hz);
            QCOMPARE(quick.tone_cost_db, whole.tone_cost_db);
            QCOMPARE(quick.speaker_fan, whole.speaker_fan);
            QCOMPARE(quick.comb.size(), whole.comb.size());
        }
    }
    // The comb and the analysis of all loops are two roads to the same frequencies.
    void the_first_ring_is_one_that_fits() {
        for (const double distance : {0.5, 0.9, 1.3, 2.1})
            for (const double polarity : {0.0, 1.0})
                for (const double body : {0.0, 1.0}) {
                    Bench bench = plain_bench();
                    turn(bench, Knob::distance, distance), turn(bench, Knob::polarity, polarity);
                    turn(bench, Knob::body, body), turn(bench, Knob::latency, 2.5);
                    const LessonFigures figures = figures_of(bench);
                    const Stability stability = stability_of(bench.show, true);
                    QCOMPARE(*figures.margin_db, *stability.margin_db);
                    const auto best = std::ranges::max_element(figures.comb, {}, &Fit::gain_db);
                    QVERIFY(std::abs(best->hz - *figures.ring_hz) < 0.02);
                    QVERIFY(std::abs(best->gain_db + *figures.margin_db) < 0.01);
                    QVERIFY(std::abs(figures.sum - figures.direct - figures.bounce) < 1e-12);
                }
    }
    // Null of a supercardioid: 126 degrees (Eargle, The Microphone Book, table of first-order patterns).
    void the_null() {
        Bench bench = free_air(1.0);
        turn(bench, Knob::pattern, 3), turn(bench, Knob::aim, 126);
        const LessonFigures figures = figures_of(bench);
        QVERIFY(std::abs(figures.microphone_angle_deg - 126.0) < 1e-6);
        QVERIFY(figures.pattern_db < -45.0);
    }
    void in_ears_leave_no_loop() {
        Bench bench = plain_bench();
        turn(bench, Knob::in_ears, 1);
        const LessonFigures figures = figures_of(bench);
        QVERIFY(!figures.margin_db && !figures.ring_hz && !figures.loop_gain_db && figures.comb.empty());
        QVERIFY(figures.distance_m > 1.0);
        turn(bench, Knob::in_ears, 0);
        QVERIFY(bench == plain_bench());
    }
    void tasks_are_computed() {
        Bench now = free_air(1.0);
        const Bench start = now;
        const LessonFigures before = figures_of(start);
        turn(now, Knob::level, 80);
        const LessonFigures after = figures_of(now);
        const Standing standing{start, before, now, after};
        QVERIFY(std::abs(*figure_named("margin_gain_db", standing) - 10.0) < 0.01);
        QCOMPARE(*figure_named("level_db", standing), 80.0);
        QVERIFY(is_solved({{"margin_gain_db", 9.0, 11.0}, {"distance_m", 1.0, {}}}, standing));
        QVERIFY(!is_solved({{"margin_gain_db", 9.0, 11.0}, {"distance_m", 1.01, {}}}, standing));
        QVERIFY(!is_solved({{"no such figure", {}, {}}}, standing));
        QVERIFY(is_figure("misfit") && is_figure("aim_deg") && !is_figure("aim"));
        for (const char* name : {"misfit", "loop_gain_db", "pattern_db", "tone_cost_db", "lowest_fit_hz",
                                 "fits_below_1k", "ring_shift_cents", "loops", "margin_db"})
            QVERIFY2(figure_named(name, standing), name);
    }
    void words_carry_the_figures() {
        Bench before = free_air(0.76), after = before;
        turn(before, Knob::hz, 1300), turn(after, Knob::hz, 1300), turn(after, Knob::distance, 1.4);
        const std::string said = what_changed(Knob::distance, before, figures_of(before), after, figures_of(after));
        QVERIFY2(said.starts_with("At 0.76 m 1.30 kHz fits 2.9 times; at 1.40 m 5.3 times: other frequencies fit, and "
                                  "the level there falls by 5.3 dB."),
                 said.c_str());
        for (int k = 0; k < kKnobs; ++k) {
            Bench other = before;
            const auto knob = static_cast<Knob>(k);
            turn(other, knob, value_of(before, knob) > 0.5 * range_of(knob).most ? 0.0 : range_of(knob).most);
            const std::string text = what_changed(knob, before, figures_of(before), other, figures_of(other));
            QVERIFY(text.size() > 20 && text.find('{') == std::string::npos);
        }
        QVERIFY(where_it_stands(before, figures_of(before)).find("First ring") != std::string::npos);
        // In step though the air alone does not fit: what is missing is told, and the sum is whole.
        Bench in_step = before;
        turn(in_step, Knob::polarity, 1.0), turn(in_step, Knob::hz, figures_of(in_step).ring_hz.value());
        const std::string sum = where_it_stands(in_step, figures_of(in_step));
        QVERIFY2(sum.find("0.50 on the rest of the way (filters, floor, polarity) = ") != std::string::npos &&
                     sum.find(".00. It comes back in step") != std::string::npos,
                 sum.c_str());
    }
};

class TestPair : public QObject {
    Q_OBJECT
    static Show stage() {
        Show show = plain_bench().show;
        show.stage.outline = {{-3, -3}, {3, -3}, {3, 4}, {-3, 4}};
        Riser riser;
        riser.id = "r", riser.outline = show.stage.outline, riser.height_m = 0.3;
        show.stage.risers = {riser};
        for (auto& l : show.loudspeakers) l.position.z += 0.3;
        for (auto& i : show.inputs) i.position.z += 0.3;
        Loudspeaker other = show.loudspeakers[0];
        other.id = "other", other.position.x = 2.0;
        show.loudspeakers.push_back(other);
        show.mixes[0].loudspeakers.push_back("other");
        return show;
    }
  private Q_SLOTS:
    void there_and_back_changes_nothing() {
        Show show = stage();
        const Show before = show;
        const auto bench = bench_of(show, "microphone", "other");
        QVERIFY(bench.has_value());
        QVERIFY(std::abs(value_of(*bench, Knob::height) - 1.4) < 1e-9);
        QVERIFY(std::abs(value_of(*bench, Knob::distance) - std::hypot(2.0, 1.2)) < 1e-9);
        put_back(show, *bench, *bench);
        QVERIFY(show == before);
    }
    void what_was_turned_comes_back_and_only_that() {
        Show show = stage();
        const auto before = bench_of(show, "microphone", "other", "mix");
        Bench after = *before;
        turn(after, Knob::height, 1.2), turn(after, Knob::level, 84), turn(after, Knob::latency, 3);
        put_back(show, *before, after);
        Show wanted = stage();
        wanted.inputs[0].position.z = 1.5, wanted.mixes[0].sends[0].level_db = 84, wanted.system.latency_ms = 3;
        QVERIFY(std::abs(show.inputs[0].position.z - 1.5) < 1e-9);
        wanted.inputs[0].position.z = show.inputs[0].position.z;
        QVERIFY(show == wanted);
        Bench ears = after;
        turn(ears, Knob::in_ears, 1);
        put_back(show, after, ears);
        QCOMPARE(show.mixes[0].loudspeakers, std::vector<std::string>{"loudspeaker"});
    }
    void what_makes_no_loop_has_no_bench() {
        Show show = stage();
        QVERIFY(!bench_of(show, "nobody", "other"));
        QVERIFY(!bench_of(show, "microphone", "nobody"));
        QVERIFY(!bench_of(show, "microphone", "other", "no mix"));
        show.inputs[0].transducer = Line{};
        QVERIFY(!bench_of(show, "microphone", "other"));
        show.inputs.clear();
        const Bench bench = plain_bench();
        put_back(show, bench, bench);
    }
};

HOWLMAP_TEST(TestBench)
HOWLMAP_TEST(TestPair)
#include "test_bench.moc"
