// SPDX-License-Identifier: GPL-3.0-or-later
// Each kind of cure where the right answer is known: patterns (Eargle, The Microphone Book, 2004: null at acos(-a / (1
// - a))), inverse square, half-wave shift by polarity, and what cannot help an omni beside the ear.
#include <cmath>

#include "core/air/air.h"
#include "core/cures/band_solver.h"
#include "core/cures/judge.h"
#include "core/cures/source.h"
#include "core/cures/words.h"
#include "core/listening/listening.h"
#include "core/loop/stability.h"
#include "tests/core/cures/free_air.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;
using namespace howlmap::cures;

namespace {
double worst_phase(const Show& show) { return *stability_of(show, false).worst_phase_margin_db; }

Show turned_off(PatternName pattern, double wedge_deg) {
    Show show = single_loop();
    set_pattern(show, pattern);
    show.inputs[0].performer.clear();
    show.inputs[0].aim.yaw_deg = wedge_deg;  // the wedge lies straight downstage, where yaw 0 looks
    return show;
}

/// A loudspeaker response with a bump of so many dB at a frequency, flat two third-octaves away.
void add_bump(Show& show, double hz, double db) {
    const double third = std::exp2(1.0 / 3.0);
    show.loudspeakers[0].response.table = {{hz / third / third, 0.0, {}}, {hz, db, {}}, {hz * third * third, 0.0, {}}};
}
}  // namespace

class Kinds : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void guard_in_free_air() {
        // 20 log10(source level / send level * distance) for one omni pair: what PAG without its 6 dB says (Ballou, ch.
        // 34).
        const Guard guard(single_loop());
        QVERIFY(std::abs(guard.margin_db() - 6.0) < 0.02);
    }
    void guard_changes_like_a_new_one() {
        Setting s(single_loop());
        Show after = s.show;
        after.loudspeakers[0].position.x = 0.7;
        after.mixes[0].graphic_eq[17] = -6.0;
        after.inputs[0].polarity = Polarity::inverted;
        const Guard changed = s.guard.changed(after), fresh(after);
        for (std::size_t i = 0; i < fresh.hz().size(); ++i) QCOMPARE(changed.gains_db()[i], fresh.gains_db()[i]);
    }
    void parts_sum_to_one() {
        Setting s(single_loop());
        const auto parts = s.guard.parts(s.guard.strongest());
        QCOMPARE(parts.size(), std::size_t{1});
        QVERIFY(std::abs(parts[0].share - 1.0) < 1e-12);
    }
    void cardioid_null_on_the_wedge() {
        Setting s(turned_off(PatternName::cardioid, 150.0));
        const auto found = aim_microphone(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        const Show after = s.now.after(found[0].edit);
        QVERIFY2(std::abs(wedge_angle_deg(after) - 180.0) < 3.0, qPrintable(QString::number(wedge_angle_deg(after))));
    }
    void supercardioid_at_126_degrees() {
        Setting s(turned_off(PatternName::supercardioid, 100.0));
        const auto found = aim_microphone(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        const double expected = degrees(std::acos(-0.37 / 0.63));
        const Show after = s.now.after(found[0].edit);
        QVERIFY2(std::abs(wedge_angle_deg(after) - expected) < 3.0,
                 qPrintable(QString::number(wedge_angle_deg(after))));
    }
    void omni_cannot_be_aimed() { QVERIFY(aim_microphone(Setting(single_loop()).now, 0).empty()); }
    void pattern_with_its_null_where_the_wedge_is() {
        // The wedge at 126 degrees: of the named patterns the supercardioid hears it least without turning.
        Setting s(turned_off(PatternName::cardioid, 126.0));
        const auto found = change_pattern(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        const Show after = s.now.after(found[0].edit);
        const auto pattern = std::get<PatternName>(std::get<Microphone>(after.inputs[0].transducer).pattern);
        QVERIFY(pattern == PatternName::supercardioid || pattern == PatternName::hypercardioid);
        QVERIFY(s.guard.changed(after).margin_db() > s.guard.margin_db() + 6.0);
    }
    void cupped_microphone_is_opened() {
        Setting s([] {
            Show show = single_loop();
            show.inputs[0].transducer = Microphone{PatternName::cardioid, true, {}, {}};
            return show;
        }());
        const auto found = change_pattern(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        QVERIFY(!std::get<Microphone>(s.now.after(found[0].edit).inputs[0].transducer).cupped);
    }
    void closer_by_inverse_square() {
        Setting s(single_loop(), 5.0);
        const auto found = closer_to_source(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        const Show after = s.now.after(found[0].edit);
        const Vec3 source = source_of(s.show, s.show.inputs[0]);
        const double source_gain =
            20.0 * std::log10(length(source - s.show.inputs[0].position) / length(source - after.inputs[0].position));
        const double wedge_gain =
            20.0 * std::log10(length(after.inputs[0].position - s.show.loudspeakers[0].position) / 1.0);
        QVERIFY(source_gain >= 5.0);
        QVERIFY(std::abs(worst_phase(after) - worst_phase(s.show) - source_gain - wedge_gain) < 0.05);
        QCOMPARE(after.mixes[0].sends[0].level_db, s.show.mixes[0].sends[0].level_db);  // as loud as before
    }
    void polarity_moves_rings_by_half_a_wave() {
        Setting s(single_loop());
        const double wave_hz = speed_of_sound(s.show.air.temperature_c) / 1.0;
        const auto found = input_polarity(s.now, 0);
        const auto before = stability_of(s.show, false), after = stability_of(s.now.after(found[0].edit), false);
        QVERIFY(std::abs(*before.margin_hz / wave_hz - 1.0) < 0.01);
        QVERIFY(std::abs(*after.margin_hz / wave_hz - 0.5) < 0.01);
        QVERIFY(mix_polarity(s.now, 0).empty());  // a mix of one input: the same thing
    }
    void polarity_of_a_mix_of_several_inputs() {
        Show show = single_loop();
        Input line;
        line.id = line.name = "keys";
        line.channel = 2;
        line.transducer = Line{};
        line.has_position = false;
        show.inputs.push_back(line);  // no loop of its own: the rings move as those of the one loop do
        show.mixes[0].sends.push_back(Send{"keys", 88.0, {}});
        Setting s(show);
        const double wave_hz = speed_of_sound(show.air.temperature_c) / 1.0;
        const auto found = mix_polarity(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        const Show turned = s.now.after(found[0].edit);
        QVERIFY(turned.mixes[0].polarity != show.mixes[0].polarity);
        QVERIFY(std::abs(*stability_of(turned, false).margin_hz / wave_hz - 0.5) < 0.01);
    }
    void loudspeaker_turned_from_the_microphone_to_the_ear() {
        // An omni microphone: at equal loudness only the difference of the loudspeaker's own levels towards ear and
        // microphone counts, and no other yaw makes more of it.
        Show show = single_loop();
        show.loudspeakers[0].directivity = Coverage{60.0, 60.0, 1.5, 1.5, 24.0, {}};
        show.loudspeakers[0].response = {1000.0, 8, 16000.0, 2, {}, {}};  // lower down it is as wide as an omni
        show.loudspeakers[0].aim.yaw_deg = 180.0;                         // at the player
        show.inputs[0].position = {0.5, 2.0, 1.5};
        Setting s(show);
        const auto found = aim_loudspeaker(s.now, 0);
        QVERIFY(!found.empty());
        const double gain = s.now.guessed_gain(found[0].edit);
        QVERIFY(gain > 0.5);
        const Show after = s.now.after(found[0].edit);
        const Aim& turned = after.loudspeakers[0].aim;  // no finer than an eye can set it
        QVERIFY(std::abs(std::remainder(turned.yaw_deg - 180.0, 5.0)) < 1e-9);
        QVERIFY(std::abs(worst_phase(after) - worst_phase(show) - gain) < 0.1);
        QVERIFY(std::abs(*performer_figures(after)[0].own_dba - *performer_figures(show)[0].own_dba) < 0.1);
        for (int yaw = 100; yaw <= 260; yaw += 10)
            QVERIFY2(s.now.guessed_gain([yaw](Show& at) { at.loudspeakers[0].aim.yaw_deg = yaw; }) < gain + 0.3,
                     std::to_string(yaw).c_str());
    }
    void moving_the_wedge_buys_nothing_beside_the_ear() {
        // An omni microphone at the ear: whatever the wedge loses on its way to the one it loses to the other.
        Show show = single_loop();
        show.inputs[0].position = {0.02, 3.0, 1.5};
        Setting s(show);
        const Edit away = [](Show& moved) { moved.loudspeakers[0].position.y = -1.0; };  // 2 m to 4 m
        QVERIFY(std::abs(s.now.guessed_gain(away)) < 0.1);
        QVERIFY(std::abs(s.now.after(away).mixes[0].sends[0].level_db - 94.0) < 0.15);
        for (const auto& cure : move_loudspeaker(s.now, 0)) QVERIFY(s.now.guessed_gain(cure.edit) < 0.15);
    }
    void wedge_keeps_its_place_on_stage() {
        Show show = single_loop();
        set_pattern(show, PatternName::cardioid);
        show.loudspeakers[0].position = {1.5, 2.5, 0.3};
        show.loudspeakers[0].directivity = Coverage{};
        Setting s(show);
        for (const auto& cure : move_loudspeaker(s.now, 0)) {
            const Show after = s.now.after(cure.edit);
            QVERIFY(covers(show.stage.outline, after.loudspeakers[0].position.xy()));
            QVERIFY(length(after.loudspeakers[0].position.xy() - show.performers[0].position) >= 0.69);
            QVERIFY(s.now.guessed_gain(cure.edit) > 0.5);
        }
    }
    void turning_down_is_worth_what_it_takes() {
        Setting s(single_loop(), 4.0);
        const auto found = turn_down(s.now);
        const Show after = applied(s.show, s.loudness, found[0]);
        QVERIFY(std::abs(worst_phase(after) - worst_phase(s.show) - 4.0) < 1e-6);
        QVERIFY(std::abs(s.loudness.loss(after).change_db + 4.0) < 0.01);
        QVERIFY(!s.loudness.loss(after).words.empty());
        QVERIFY(s.loudness.tone_cost_db(after) < 1e-9);
    }
    void smallest_cuts_sit_on_the_bump() {
        Show show = single_loop();
        add_bump(show, 1000.0, 6.0);
        Setting s(show, 2.5);
        const BandCuts cuts = smallest_cuts(s.now, 2.5);
        QVERIFY(!cuts.empty());
        double deepest = 0.0, squares = 0.0;
        int where = -1;
        for (const auto& [key, cut] : cuts) {
            QVERIFY(std::abs(key.second - 17) <= 3);
            squares += cut * cut;
            if (cut < deepest) {
                deepest = cut;
                where = key.second;
            }
        }
        QVERIFY(std::abs(where - 17) <= 1);
        const Show after = s.now.after([&](Show& changed) { apply_cuts(changed, cuts); });
        QVERIFY2(std::abs(s.guard.changed(after).margin_db() - s.guard.margin_db() - 2.5) < 0.6,
                 qPrintable(QString::number(s.guard.changed(after).margin_db() - s.guard.margin_db())));
        // Five bands scooped by 4 dB, as by guess, cost more.
        QVERIFY(squares < 5 * 16.0);
    }
    void smallest_cuts_against_every_other_setting() {
        // Three faders around the bump in half decibels, all 4,913 settings: none that gains as much moves less.
        Show show = single_loop();
        add_bump(show, 1100.0, 7.0);
        Setting s(show, 3.0);
        const BandCuts cuts = smallest_cuts(s.now, 3.0);
        const auto gain = [&](const BandCuts& some) {
            const Show after = s.now.after([&](Show& changed) { apply_cuts(changed, some); });
            return s.guard.changed(after).margin_db() - s.guard.margin_db();
        };
        const auto squares = [](const BandCuts& some) {
            double total = 0.0;
            for (const auto& [key, cut] : some) total += cut * cut;
            return total;
        };
        const double reached = gain(cuts), moved = squares(cuts);
        QVERIFY2(reached > 2.5, qPrintable(QString::number(reached)));
        double least = 1e9;
        for (int a = 0; a <= 16; ++a)
            for (int b = 0; b <= 16; ++b)
                for (int c = 0; c <= 16; ++c) {
                    const BandCuts some = {{{0, 16}, -0.5 * a}, {{0, 17}, -0.5 * b}, {{0, 18}, -0.5 * c}};
                    if (squares(some) < least && gain(some) >= reached - 0.02) least = squares(some);
                }
        // Half a decibel of rounding on each of the faders is what may lie between.
        const double allowed = std::pow(std::sqrt(least) + 0.5 * std::sqrt(3.0), 2.0);
        QVERIFY2(moved <= allowed, qPrintable(QString("%1 against %2").arg(moved).arg(least)));
    }
    void no_cut_is_wasted() {
        Show show = single_loop();
        add_bump(show, 500.0, 8.0);
        Setting s(show, 4.0);
        const BandCuts cuts = smallest_cuts(s.now, 4.0);
        QVERIFY(!cuts.empty());
        for (const auto& [key, cut] : cuts) {
            if (cut > -1.5) continue;  // half decibels of rounding
            BandCuts less = cuts;
            less[key] += 1.5;
            const Show after = s.now.after([&](Show& changed) { apply_cuts(changed, less); });
            QVERIFY(s.guard.changed(after).margin_db() - s.guard.margin_db() < 4.0);
        }
    }
    void notches_on_the_rings() {
        Show show = single_loop();
        add_bump(show, 1030.0, 9.0);
        Setting s(show, 3.0);
        const auto found = narrow_notches(s.now);
        QCOMPARE(found.size(), std::size_t{1});
        const Show after = s.now.after(found[0].edit);
        QVERIFY(after.mixes[0].notches.size() <= 8);
        const double ring = *stability_of(show, false).margin_hz;
        QVERIFY(std::abs(after.mixes[0].notches[0].hz - ring) <= 0.5);
        QVERIFY(after.mixes[0].notches[0].gain_db >= -9.0);
        QVERIFY(*stability_of(after, false).margin_db > *stability_of(show, false).margin_db + 1.0);
    }
    void low_cut_below_the_voice() {
        Show show = single_loop();
        add_bump(show, 60.0, 12.0);
        Setting s(show);
        const auto found = input_high_pass(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        const Show after = s.now.after(found[0].edit);
        QVERIFY(s.guard.changed(after).margin_db() > s.guard.margin_db() + 3.0);
        QVERIFY(s.loudness.tone_cost_db(after) <= 2.0);
    }
    void covered_holes_take_the_air_mode() {
        Show show = single_loop();
        Pickup body;
        body.isolation_db = 10.0;
        body.modes = {{104.0, 18.0, 6.0, true, "air", {}}, {196.0, 25.0, 0.0, false, "top", {}}};
        show.inputs[0].transducer = body;
        show.inputs[0].name = "guitar";
        Setting s(show);
        const auto found = cover_sound_holes(s.now, 0);
        QCOMPARE(found.size(), std::size_t{1});
        QVERIFY(found[0].buys.find("air at 104 Hz") != std::string::npos);
        QVERIFY(found[0].buys.find("top at 196 Hz is left") != std::string::npos);
        QVERIFY(found[0].caution.find("finish") != std::string::npos);
        // 6 dB air mode less 10 dB: the top mode at 0 dB is the strongest, so 6 dB are gained, the baseline aside.
        const double gain = s.now.guessed_gain(found[0].edit);
        QVERIFY2(gain > 4.0 && gain < 7.0, qPrintable(QString::number(gain)));
        const Show after = s.now.after(found[0].edit);
        QVERIFY(cover_sound_holes(Setting(after).now, 0).empty());
    }
    void only_what_nobody_needs_is_taken_out() {
        Show show = single_loop();
        Input spare = show.inputs[0];
        spare.id = spare.name = "spare";
        spare.channel = 2;
        spare.performer.clear();
        spare.position.x = 0.5;
        show.inputs.push_back(spare);
        show.mixes[0].sends.push_back(Send{"spare", 88.0, {}});
        Setting s(show);
        const auto found = remove_sends(s.now);
        QCOMPARE(found.size(), std::size_t{1});
        QCOMPARE(found[0].key, std::string("spare:m1"));
        const Show after = s.now.after(found[0].edit);
        QCOMPARE(after.mixes[0].sends.size(), std::size_t{1});
        QVERIFY(s.loudness.loss(after).words.find("ann no longer has spare in the mix.") != std::string::npos);
    }
    void the_house_keeps_its_mix_and_its_tone() {
        Show show = single_loop();
        show.performers[0].mix.clear();  // nobody on stage listens: the loudspeaker is one for the audience
        show.loudspeakers[0].kind = LoudspeakerKind::main;
        Setting s(show);
        QVERIFY(remove_sends(s.now).empty());
        Show thin = show;
        thin.mixes[0].high_pass = HighPass{315.0, 4, {}};
        QVERIFY(s.loudness.tone_cost_db(thin) > 2.0);
        QCOMPARE(s.loudness.tone_cost_db(show), 0.0);
        for (const Candidate& cure : mix_high_pass(s.now, 0)) {
            const Show after = s.now.after(cure.edit);
            QVERIFY2(s.loudness.tone_cost_db(after) <= 2.0, qPrintable(QString::number(after.mixes[0].high_pass->hz)));
        }
    }
    void in_ears_leave_no_loop() {
        Setting s(single_loop());
        const auto found = in_ears(s.now);
        QCOMPARE(found.size(), std::size_t{1});
        const Show after = s.now.after(found[0].edit);
        QVERIFY(!stability_of(after, false).margin_db);
        QVERIFY(std::abs(s.loudness.loss(after).change_db) < 0.1);  // as loud in the ear as it was from the wedge
        QVERIFY(found[0].caution.find("limiter") != std::string::npos);
    }
    void in_ears_from_a_shared_mix() {
        Show show = single_loop();
        Performer bea = show.performers[0];
        bea.id = bea.name = "bea";
        bea.position.x = 1.0;
        show.performers.push_back(bea);
        Setting s(show);
        const auto found = in_ears(s.now);
        for (const auto& cure : found) {
            const Show after = s.now.after(cure.edit);
            QCOMPARE(after.mixes.size(), std::size_t{2});
            QVERIFY(!after.mixes[0].loudspeakers.empty() && after.mixes[1].loudspeakers.empty());
        }
    }
    void player_steps_with_her_instrument() {
        Show show = single_loop();
        show.inputs[0].transducer = Pickup{10.0, -12.0, false, 10.0, {{200.0, 20.0, 6.0, false, "top", {}}}, {}};
        show.inputs[0].position = {0.0, 2.6, 1.2};
        show.loudspeakers[0].position = {0.0, 1.8, 0.3};
        show.loudspeakers[0].directivity = Coverage{};
        show.loudspeakers[0].aim = {180.0, 45.0, 0.0};
        Setting s(show);
        for (const auto& cure : move_microphone(s.now, 0)) {
            const Show after = s.now.after(cure.edit);
            const Vec2 step = after.performers[0].position - show.performers[0].position;
            QVERIFY(length(step) <= 1.0 + 1e-9);
            QCOMPARE(after.inputs[0].position.x - show.inputs[0].position.x, step.x);
            QCOMPARE(after.inputs[0].position.y - show.inputs[0].position.y, step.y);
        }
    }
    void directions_as_players_say_them() {
        QCOMPARE(shift_words({}, {0.1, -0.3, 0.0}, Units::metric),
                 std::string("0.30 m downstage and 0.10 m towards stage left"));
        QCOMPARE(shift_words({}, {-0.3048, 0.0, 0.0}, Units::imperial), std::string("1 ft towards stage right"));
        // Facing the audience, positive yaw turns towards +x, stage left; facing upstage it turns towards stage right.
        QCOMPARE(turn_words({0.0, 0.0, 0.0}, {20.0, 0.0, 0.0}), std::string("20 deg towards stage left"));
        QCOMPARE(turn_words({180.0, 0.0, 0.0}, {200.0, 10.0, 0.0}),
                 std::string("20 deg towards stage right and 10 deg up"));
    }
};
HOWLMAP_TEST(Kinds)
#include "test_kinds.moc"
