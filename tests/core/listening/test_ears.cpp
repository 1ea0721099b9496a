// SPDX-License-Identifier: GPL-3.0-or-later
// Levels at ears and in the house against closed forms: inverse square (DERIVED: 20 log10 r), addition of levels, seal,
// energy balance.
#include "core/air/air.h"
#include "core/directivity/loudspeaker_directivity.h"
#include "core/listening/ears.h"
#include "core/listening/exposure.h"
#include "core/listening/headroom.h"
#include "core/listening/listening.h"
#include "core/listening/masking.h"
#include "core/listening/wash.h"
#include "core/units/level.h"
#include "tests/core/listening/small_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
bool near(std::optional<double> value, double expected, double tolerance = 0.01) {
    return value && std::abs(*value - expected) <= tolerance;
}
double air_db(const Show& show, double metres) { return AirAbsorption(show.air).db_per_m(1000.0) * metres; }
}  // namespace

class Ears : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void inverse_square() {
        for (double metres : {0.5, 1.0, 2.0, 4.0}) {
            Show show = one_player();
            show.performers[0].position.y = 1.0 + metres;
            const double expected = 100.0 - 20.0 * std::log10(metres) - air_db(show, metres);
            const auto figure = performer_figures(show)[0];
            QVERIFY(near(figure.ear_dba, expected, 1e-6));
            QVERIFY(near(figure.own_dba, expected, 1e-6));
            QVERIFY(!figure.others_dba && !figure.hear_margin_db);
            QVERIFY(near(figure.niosh_minutes, niosh_minutes(expected), 1e-6));
        }
    }
    void levels_add() {
        Show show = two_players();
        show.performers[1].position = show.performers[0].position;  // both at the same ear
        show.loudspeakers[1].position = show.loudspeakers[0].position;
        const auto figures = performer_figures(show);
        QVERIFY(near(figures[0].hear_margin_db, 0.0, 1e-9));
        QVERIFY(near(*figures[0].ear_dba - *figures[0].own_dba, 10.0 * std::log10(2.0), 1e-9));
    }
    void same_input_in_another_mix_is_others() {
        Show show = two_players();
        show.mixes[1].sends.push_back(Send{"voice", 100.0, {}});
        const double apart = std::hypot(4.0, 2.0);
        const double others = 2.0 * db_to_energy(100.0 - 20.0 * std::log10(apart) - air_db(show, apart));
        QVERIFY(near(performer_figures(show)[0].others_dba, energy_to_db(others), 1e-6));
    }
    void floor_image_adds_its_energy() {
        Show show = one_player();
        show.stage.surfaces.floor.absorption = 0.36;  // reflects 0.64 of the energy
        const double image = std::hypot(2.0, 3.2);
        const double expected = db_to_energy(100.0 - 20.0 * std::log10(2.0) - air_db(show, 2.0)) +
                                0.64 * db_to_energy(100.0 - 20.0 * std::log10(image) - air_db(show, image));
        QVERIFY(near(performer_figures(show)[0].ear_dba, energy_to_db(expected), 1e-6));
    }
    void in_ear_seals_the_stage_out() {
        Show show = two_players();
        Performer& ann = show.performers[0];
        ann.hears = Hears::in_ear;
        ann.seal_db = 20.0;
        ann.own_acoustic_dba = 90.0;
        show.mixes[0].loudspeakers.clear();
        show.mixes[0].sends[0].level_db = 85.0;
        const double apart = std::hypot(4.0, 2.0);
        const auto figure = performer_figures(show)[0];
        QVERIFY(near(figure.own_dba, energy_to_db(db_to_energy(85.0) + db_to_energy(70.0)), 1e-6));
        QVERIFY(near(figure.others_dba, 80.0 - 20.0 * std::log10(apart) - air_db(show, apart), 1e-6));
    }
    void acoustic_player_has_only_herself() {
        Show show = one_player();
        show.performers[0].hears = Hears::acoustic;
        show.performers[0].own_acoustic_dba = 84.0;
        const auto figure = performer_figures(show)[0];
        QVERIFY(near(figure.own_dba, 84.0, 1e-9));
        QVERIFY(near(figure.others_dba, 100.0 - 20.0 * std::log10(2.0) - air_db(show, 2.0), 1e-6));
    }
    void backline_is_a_weighted_at_one_metre() {
        Show show = one_player();
        show.mixes[0].sends.clear();
        Backline amp;
        amp.id = "amp";
        amp.position = {0.0, 4.0, 1.6};  // 1 m from the ear
        amp.level_1m_dba = 88.0;
        amp.spectrum = SpectrumName::bass;
        show.backline = {amp};
        QVERIFY(near(performer_figures(show)[0].others_dba, 88.0, 0.01));
    }
    void silence_is_absent() {
        Show show = one_player();
        show.mixes[0].sends.clear();
        const auto figure = performer_figures(show)[0];
        QVERIFY(!figure.ear_dba && !figure.own_dba && !figure.niosh_minutes && !figure.osha_minutes);
    }
    void spectra_sum_to_zero_db() {
        for (SpectrumName name : {SpectrumName::pink, SpectrumName::voice, SpectrumName::strings, SpectrumName::plucked,
                                  SpectrumName::bass})
            QVERIFY(std::abs(sum(spectrum_energies(name)) - 1.0) < 1e-12);
        QCOMPARE(sum(spectrum_energies(std::map<int, double>{})), 0.0);
    }
    void energy_balance() {
        // What passes a sphere of 1 m is what the source sends: 4 pi for an omni, 4 pi / Q for a cabinet (Beranek,
        // Acoustics, 1954).
        Show show = one_player();
        show.loudspeakers[0].position = {0.0, 0.0, 50.0};
        show.loudspeakers[0].directivity = Coverage{};
        const int steps = 60;
        const std::size_t band = 20;  // 2 kHz
        double passed = 0.0;
        for (int i = 0; i < steps; ++i)
            for (int j = 0; j < 2 * steps; ++j) {
                const double cosine = -1.0 + (i + 0.5) * 2.0 / steps, turn = (j + 0.5) * kPi / steps;
                const double side = std::sqrt(1.0 - cosine * cosine);
                const Vec3 at{side * std::cos(turn), side * std::sin(turn), 50.0 + cosine};
                passed += path_energies(show, show.loudspeakers[0], at)[band] * (2.0 / steps) * (kPi / steps);
            }
        const double hz = third_octave_centre(static_cast<int>(band));
        const double q =
            directivity_factor(show.loudspeakers[0].directivity, hz, speed_of_sound(show.air.temperature_c));
        const double air = db_to_energy(-AirAbsorption(show.air).db_per_m(hz));
        QVERIFY(std::abs(energy_to_db(passed / (4.0 * kPi / q * air))) < 0.02);
    }
    /// Inverse square: an omni 10 m away that goes 1 m further off loses 20 log10(11 / 10) dB; turning it does nothing.
    void moving_changes_the_wash_by_inverse_square() {
        Show show = one_player();
        Vec3 place = show.loudspeakers[0].position;
        place.y -= 10.0;
        const auto effects = wash_effects(show, place);
        QCOMPARE(effects.size(), 1U);
        QVERIFY(std::abs(effects[0].move_change_db + 20.0 * std::log10(11.0 / 10.0)) < 0.02);
        QVERIFY(std::abs(effects[0].turn_change_db) < 1e-9);
        show.loudspeakers[0].directivity = Coverage{};
        show.loudspeakers[0].aim.yaw_deg = 20.0;  // half away from the place already: further away is better
        QVERIFY(wash_effects(show, place)[0].turned_deg > 0.0);
        QVERIFY(wash_effects(show, place)[0].turn_change_db < -1.0);
    }
    void wash_and_its_makers() {
        Show show = two_players();
        show.loudspeakers.push_back(show.loudspeakers[0]);
        show.loudspeakers.back().id = "main";
        show.loudspeakers.back().kind = LoudspeakerKind::main;  // no stage loudspeaker
        show.mixes[0].loudspeakers.push_back("main");
        show.listeners = {Listener{"row", "row", {0.0, -9.0, 1.6}, {}}};
        const auto shares = wash_shares(show, show.listeners[0].position);
        QCOMPARE(shares.size(), std::size_t{2});
        QCOMPARE(shares[0].loudspeaker, std::string("w1"));
        QVERIFY(std::abs(shares[0].share + shares[1].share - 1.0) < 1e-12);
        QVERIFY(near(shares[0].dba, 80.0 - air_db(show, 10.0), 1e-6));
        const double total = energy_to_db(db_to_energy(shares[0].dba) + db_to_energy(shares[1].dba));
        QVERIFY(near(house_figures(show)[0].wash_dba, total, 1e-9));
        QVERIFY(near(house_figures(show)[0].against_target_db, total - 95.0, 1e-9));
    }
    void headroom() {
        Show show = one_player();
        show.mixes[0].sends.push_back(Send{"voice", 100.0, {}});
        show.loudspeakers[0].trim_db = 2.0;
        show.loudspeakers[0].max_spl_db = 104.0;
        const auto loads = loudspeaker_loads(show);
        QVERIFY(near(loads[0].level_db, 100.0 + 10.0 * std::log10(2.0) + 2.0, 1e-9));
        QCOMPARE(headroom_warnings(show).size(), std::size_t{1});
        show.loudspeakers[0].max_spl_db = 106.0;
        QVERIFY(headroom_warnings(show).empty());
    }
    void what_is_masked_in_words() {
        Show show = one_player();
        show.inputs[0].spectrum = SpectrumName::strings;
        show.performers[0].own_acoustic_dba.reset();
        show.mixes[0].sends[0].level_db = 90.0;
        Backline amp;
        amp.id = "amp";
        amp.name = "bass amp";
        amp.position = {0.5, 4.0, 1.6};
        amp.level_1m_dba = 92.0;
        amp.spectrum = SpectrumName::bass;
        show.backline = {amp};
        const auto spectra = ear_spectra(show);
        QVERIFY(!spectra[0].masked.empty());
        const std::string sentence = spectra[0].masked[0].sentence;
        QVERIFY2(sentence.starts_with("Your low strings are under bass amp ("), sentence.c_str());
        show.backline[0].level_1m_dba = 50.0;
        QVERIFY(ear_spectra(show)[0].masked.empty());
    }
    /// The sentence names the part that its figure belongs to, and of two inputs the one that is heard there.
    void the_part_that_is_named_is_the_one_that_is_worst() {
        Show show = one_player();
        show.performers[0].own_acoustic_dba.reset();
        show.inputs[0].spectrum = SpectrumName::pink;
        Backline amp;
        amp.id = "amp";
        amp.position = {0.5, 4.0, 1.6};
        amp.level_1m_dba = 95.0;
        amp.spectrum = SpectrumName::voice;
        show.backline = {amp};
        auto masked = ear_spectra(show)[0].masked;
        QCOMPARE(masked.size(), std::size_t{1});
        QVERIFY2(masked[0].sentence.starts_with("Your middle is under amp ("), masked[0].sentence.c_str());
        Input bass = show.inputs[0];
        bass.id = "bass", bass.spectrum = SpectrumName::bass;
        show.inputs.push_back(bass);
        show.mixes[0].sends[0].level_db = 60.0;
        show.mixes[0].sends.push_back({"bass", 80.0, {}});
        show.backline[0].spectrum = SpectrumName::bass;
        masked = ear_spectra(show)[0].masked;
        QVERIFY(!masked.empty());
        QVERIFY2(masked[0].sentence.starts_with("Your upper notes are under amp ("), masked[0].sentence.c_str());
    }
};
HOWLMAP_TEST(Ears)
#include "test_ears.moc"
