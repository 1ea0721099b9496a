// SPDX-License-Identifier: GPL-3.0-or-later
// Ringing out: who makes a band, and cuts that are deep enough and no deeper.
#include <algorithm>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/analysis/response.h"
#include "core/analysis/ring_out.h"
#include "core/loop/tolerance.h"
#include "core/units/bands.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {

/// One microphone before one loudspeaker, with a resonance of the microphone that stands out by 8 dB at 1 kHz.
Show peaky_stage() {
    Show show;
    Loudspeaker wedge;
    wedge.id = "w";
    wedge.position = {0.0, 1.0, 0.3};
    wedge.directivity = Coverage{};
    Input voice;
    voice.id = "v";
    voice.position = {0.0, 2.0, 1.5};
    voice.equaliser = {{1000.0, 4.0, 8.0, {}}};
    Mix mix;
    mix.id = "m";
    mix.loudspeakers = {"w"};
    mix.sends = {Send{"v", 92.0, {}}};
    Mix other = mix;
    other.id = "n";
    other.number = 2;
    other.loudspeakers.clear();
    show.loudspeakers = {wedge};
    show.inputs = {voice};
    show.mixes = {mix, other};
    show.tolerance.draws = 50;
    return show;
}

double peak(const Show& show, double hz, bool near) {
    const auto response = loop_response(show, {}, {hz});
    double most = -300.0;
    for (std::size_t i = 0; i < response->hz.size(); ++i)
        if ((std::abs(std::log2(response->hz[i] / hz)) <= 1.0 / 6.0) == near)
            most = std::max(most, response->gain_db[i]);
    return most;
}

double strongest_hz(const Show& show) {
    const auto response = loop_response(show);
    const auto at = std::max_element(response->gain_db.begin(), response->gain_db.end());
    return response->hz[static_cast<std::size_t>(at - response->gain_db.begin())];
}

}  // namespace

class RingOutTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void a_cut_levels_with_the_next_and_half_a_decibel_less_does_not_data() {
        QTest::addColumn<int>("with");
        QTest::newRow("band") << static_cast<int>(CutWith::graphic_band);
        QTest::newRow("notch") << static_cast<int>(CutWith::notch);
    }
    void a_cut_levels_with_the_next_and_half_a_decibel_less_does_not() {
        QFETCH(int, with);
        const Show show = peaky_stage();
        const double hz = strongest_hz(show);
        const auto cut = smallest_ring_out_cut(show, "m", hz, static_cast<CutWith>(with));
        QVERIFY(cut && cut->by_drawing && cut->levels_with);
        QVERIFY(cut->cut_db <= -kLeastCut && cut->cut_db >= -12.0 && cut->cut_db <= cut->needed_db);
        QCOMPARE(std::round(cut->needed_db * 2.0), cut->needed_db * 2.0);
        Show enough = show, less = show;
        apply_ring_out_cut(enough, "m", hz, static_cast<CutWith>(with), cut->needed_db);
        apply_ring_out_cut(less, "m", hz, static_cast<CutWith>(with), cut->needed_db + 0.5);
        QVERIFY(peak(enough, hz, true) <= peak(enough, hz, false));
        QVERIFY(peak(less, hz, true) > peak(less, hz, false));
    }

    /// Two equal peaks: half a decibel would make the other one the first, which is no use to anybody.
    void many_peaks_of_a_height_still_get_a_step_worth_making() {
        Show show = peaky_stage();
        PeakFilter twin = show.inputs[0].equaliser[0];
        twin.hz *= 2.0;
        show.inputs[0].equaliser.push_back(twin);
        const auto cut = smallest_ring_out_cut(show, "m", strongest_hz(show), CutWith::graphic_band);
        QVERIFY(cut && cut->by_drawing && cut->levels_with);
        QVERIFY2(cut->needed_db > -kLeastCut, qPrintable(QString::number(cut->needed_db)));
        QCOMPARE(cut->cut_db, -kLeastCut);
    }

    void what_the_drawing_does_not_expect_gets_little() {
        const auto cut = smallest_ring_out_cut(peaky_stage(), "m", 60.0, CutWith::graphic_band);
        QVERIFY(cut && !cut->by_drawing);
        QCOMPARE(cut->cut_db, -3.0);
    }

    void a_band_that_is_down_stays_within_its_travel() {
        Show show = peaky_stage();
        show.inputs[0].equaliser[0].gain_db = 40.0;
        const double hz = strongest_hz(show);
        show.mixes[0].graphic_eq[third_octave_of(hz)] = -13.0;
        const auto cut = smallest_ring_out_cut(show, "m", hz, CutWith::graphic_band);
        QVERIFY(cut && !cut->levels_with);
        QCOMPARE(cut->cut_db, -2.0);
        apply_ring_out_cut(show, "m", hz, CutWith::graphic_band, -12.0);
        QCOMPARE(show.mixes[0].graphic_eq.at(third_octave_of(hz)), -15.0);
        QVERIFY(!smallest_ring_out_cut(show, "nobody", hz, CutWith::graphic_band));
    }

    void a_second_notch_at_the_same_place_deepens_the_first() {
        Show show = peaky_stage();
        apply_ring_out_cut(show, "m", 1000.0, CutWith::notch, -3.0);
        apply_ring_out_cut(show, "m", 1010.0, CutWith::notch, -2.0);
        apply_ring_out_cut(show, "m", 1100.0, CutWith::notch, -1.0);
        QCOMPARE(show.mixes[0].notches.size(), std::size_t{2});
        QCOMPARE(show.mixes[0].notches[0].gain_db, -5.0);
    }

    void the_mix_named_is_the_one_to_cut() {
        Show show = test::plain_stage(2, 2);
        show.stage.room = Room{400.0, 0.8, {}};
        show.tolerance.draws = 300;
        for (int i = 0; i < 2; ++i)
            for (int m = 0; m < 2; ++m) test::send(show, i, m, i == m ? 96.0 : 84.0);
        show.mixes[0].graphic_eq[15] = -9.0;
        const auto before = tolerance_figures(show);
        QVERIFY(before->first_ring.size() > 2);
        double all = 0.0;
        for (const BandProbability& band : before->first_ring) {
            double sum = 0.0;
            for (const auto& [mix, share] : band.mixes) sum += share;
            QVERIFY(std::abs(sum - 1.0) < 1e-9);
            all += band.probability;
        }
        QVERIFY(std::abs(all - 1.0) < 1e-9);
        const BandProbability& worst = before->first_ring.front();
        const auto after = [&](const std::string& mix) {
            Show cut = show;
            apply_ring_out_cut(cut, mix, worst.hz, CutWith::graphic_band, -12.0);
            const auto figures = tolerance_figures(cut);
            for (const BandProbability& band : figures->first_ring)
                if (band.band_hz == worst.band_hz) return band.probability;
            return 0.0;
        };
        for (const Mix& other : show.mixes)
            if (other.id != worst.mix) QVERIFY(after(worst.mix) < after(other.id));
    }

    void bands_name_their_makers() {
        const Show show = peaky_stage();
        const auto result = analyse(show);
        const auto& bands = result->tolerance->first_ring;
        QVERIFY(!bands.empty());
        for (const BandProbability& band : bands) {
            QCOMPARE(third_octave_of(band.hz), third_octave_of(band.band_hz));
            QCOMPARE(band.input, std::string("v"));
            QCOMPARE(band.loudspeaker, std::string("w"));
            QCOMPARE(band.mix, std::string("m"));
        }
        QCOMPARE(mix_between(show, "v", "w"), std::string("m"));
        QCOMPARE(mix_between(show, "v", "nobody"), std::string());
    }
};

HOWLMAP_TEST(RingOutTest)
#include "test_ring_out.moc"
