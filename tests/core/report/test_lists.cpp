// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/differences.h"
#include "core/report/lists.h"
#include "core/report/risks.h"
#include "core/report/words.h"
#include "core/units/translate.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::report;

namespace {

Show two_player_show() {
    Show show;
    show.title = "Two players";
    Loudspeaker wedge;
    wedge.id = "w1";
    wedge.name = "wedge 1";
    show.loudspeakers = {wedge};
    Input fiddle;
    fiddle.id = "fid";
    fiddle.name = "fiddle";
    fiddle.channel = 2;
    fiddle.transducer = Pickup{};
    fiddle.performer = "ada";
    fiddle.di = true;
    fiddle.polarity = Polarity::inverted;
    fiddle.high_pass = HighPass{100.0, 4, {}};
    Input voice;
    voice.id = "vox";
    voice.name = "voice";
    voice.channel = 1;
    voice.phantom = true;
    voice.stand = "tall boom";
    show.inputs = {fiddle, voice};
    Performer ada;
    ada.id = "ada";
    ada.name = "Ada";
    ada.mix = "m1";
    Performer ben = ada;
    ben.id = "ben";
    ben.name = "Ben";
    ben.hears = Hears::in_ear;
    show.performers = {ada, ben};
    Mix mix;
    mix.id = "m1";
    mix.number = 1;
    mix.name = "front";
    mix.loudspeakers = {"w1"};
    mix.sends = {Send{"vox", 92.0, {}}, Send{"fid", 98.0, {}}};
    mix.graphic_eq = {{14, -6.0}};
    mix.notches = {PeakFilter{545.0, 8.0, -6.0, {}}};
    show.mixes = {mix};
    return show;
}

}  // namespace

class TestLists : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void csv_quotes_what_rfc_4180_says() {
        const Table table{"", {"a", "b"}, {{"x,y", "say \"hi\""}, {"two\nlines", "plain"}}};
        QCOMPARE(QByteArray::fromStdString(to_csv(table)),
                 QByteArray("a,b\r\n\"x,y\",\"say \"\"hi\"\"\"\r\n\"two\nlines\",plain\r\n"));
        QCOMPARE(QByteArray::fromStdString(to_tsv(table)), QByteArray("a\tb\nx,y\tsay \"hi\"\ntwo lines\tplain\n"));
    }

    void input_list_is_in_channel_order_with_its_settings() {
        const Show show = two_player_show();
        const Table table = input_list(show);
        QCOMPARE(table.rows.size(), std::size_t{2});
        QCOMPARE(table.rows[0][0], std::string("1"));
        QCOMPARE(table.rows[0][2], std::string("cardioid microphone"));
        QCOMPARE(table.rows[0][3], std::string("tall boom"));
        QCOMPARE(table.rows[0][4], std::string("yes"));
        QCOMPARE(table.rows[1][6], std::string("Ada"));
        QCOMPARE(table.rows[1][7], std::string("polarity inverted; high-pass 100 Hz, 24 dB/oct"));
    }

    void a_mix_says_who_hears_it_and_how_much_of_what() {
        const Show show = two_player_show();
        const auto sheets = mix_sheets(show);
        QCOMPARE(sheets.size(), std::size_t{1});
        QCOMPARE(listed(sheets[0].who), std::string("Ada and Ben"));
        QCOMPARE(listed(sheets[0].outlets), std::string("wedge 1 and in-ears of Ben"));
        QCOMPARE(sheets[0].sends[0].input, std::string("fiddle"));
        QCOMPARE(sheets[0].sends[0].amount, std::string("most"));
        QCOMPARE(sheets[0].sends[1].amount, std::string("medium"));
        QCOMPARE(sheets[0].settings, (std::vector<std::string>{"-6.0 dB at 545 Hz, Q 8.0"}));
        QCOMPARE(send_matrix(show).rows[0], (std::vector<std::string>{"1", "voice", "92"}));
    }

    void ring_out_list_tells_who_rings_and_what_is_cut_already() {
        const Show show = two_player_show();
        const Table table = ring_out_list(
            show, {{500.0, 0.42, 512.0, {}, {}, {}, {}},
                   {1250.0, 0.1, 1187.0, show.inputs[0].id, show.loudspeakers[0].id, show.mixes[0].id, {}},
                   {2000.0, 0.001, 2000.0, "gone", "w1", "m1", {}}});
        QCOMPARE(table.rows[0], (std::vector<std::string>{"500 Hz", "512 Hz", "42 %",
                                                          "not known: no loop as drawn reaches it", "mix 1: -6 dB"}));
        QCOMPARE(table.rows[1],
                 (std::vector<std::string>{"1.25 kHz", "1.19 kHz", "10 %", "mix 1: wedge 1 to fiddle", ""}));
        QCOMPARE(table.rows[2][2], std::string("< 1 %"));
        QCOMPARE(table.rows[2][3], table.rows[0][3]);
    }

    void what_was_found_at_the_soundcheck_is_in_words() {
        Show show = two_player_show();
        QVERIFY(soundcheck_list(show).rows.empty());
        show.soundcheck = {{547.0, 500.0, "fid", "m1", "cut", -4.5, "18:02", "with the whole band", {}},
                           {1210.0, 1250.0, "", "gone", "heard", 0.0, "", "", {}}};
        QCOMPARE(soundcheck_list(show).rows[0],
                 (std::vector<std::string>{"547 Hz", "500 Hz", "front", "cut", "-4.5 dB", "with the whole band"}));
        QCOMPARE(soundcheck_list(show).rows[1],
                 (std::vector<std::string>{"1.21 kHz", "1.25 kHz", "gone", "heard", "", ""}));
    }

    void notes_of_players_and_gear_are_listed_where_there_are_any() {
        Show show = two_player_show();
        for (auto& performer : show.performers) performer.notes.clear();
        for (auto& loudspeaker : show.loudspeakers) loudspeaker.notes.clear();
        QVERIFY(notes_list(show).rows.empty());
        show.performers[0].notes = "sits";
        QCOMPARE(notes_list(show).rows.size(), 1U);
        QCOMPARE(notes_list(show).rows[0][2], std::string("sits"));
    }

    void all_lists_have_a_file_name_each() {
        Show show = two_player_show();
        QCOMPARE(all_lists(show, {}).size(), 3U);
        show.performers[0].notes = "sits";
        show.soundcheck.push_back({});
        const auto lists = all_lists(show, {{}});
        QCOMPARE(lists.size(), 6U);
        QCOMPARE(lists[4].file, std::string("ring-out.csv"));
    }

    void figures_have_the_decimal_mark_of_the_language_and_lists_for_machines_points() {
        Show show = two_player_show();
        show.mixes[0].sends[0].level_db = 92.5;
        show.mixes[0].delay_ms = 1.5;
        show.inputs[0].high_pass = HighPass{1250.0, 2, {}};
        const std::vector<BandProbability> bands{{1250.0, 0.4, 1187.0, "fid", "w1", "m1", {}}};
        const auto with_points = all_lists(show, bands);
        set_decimal_mark(',');
        QCOMPARE(hz_words(1250.0), std::string("1,25 kHz"));
        QCOMPARE(band_words(31.5), std::string("31,5 Hz"));
        QCOMPARE(margin_words(-3.14), std::string("-3,1 dB"));
        QCOMPARE(peak_words({545.0, 8.5, -6.5, {}}), std::string("-6,5 dB at 545 Hz, Q 8,5"));
        QCOMPARE(distance_words(1.5, Units::metric), std::string("1,50 m"));
        QCOMPARE(send_matrix(show).rows[0][2], std::string("92,5"));
        AnalysisResult near;
        near.margin_db = 0.7;
        QVERIFY(risk_sentences(show, near)[0].find("0,7 dB") != std::string::npos);
        for (std::size_t i = 0; i < with_points.size(); ++i) {
            QVERIFY(to_csv(all_lists(show, bands)[i].table).find_first_of("0123456789") != std::string::npos);
            const PointsInFigures for_machines;
            QCOMPARE(to_csv(all_lists(show, bands)[i].table), to_csv(with_points[i].table));
        }
        QVERIFY(to_csv(mix_list(show)) != to_csv(with_points[1].table));
        set_decimal_mark('.');
    }

    void risks_are_three_sentences_with_both_margins() {
        AnalysisResult result;
        result.margin_db = 3.24;
        result.tolerance = ToleranceFigures{1000, 1, 1.26, 3.0, 5.0, {}};
        for (const auto& [band, probability] : {std::pair{500.0, 0.4}, {250.0, 0.2}})
            result.tolerance->first_ring.push_back({band, probability, band, {}, {}, {}, {}});
        result.verdict = Verdict::tight;
        Ring ring;
        ring.hz = 545.2;
        ring.note = "C#5";
        ring.strongest_loudspeaker = "w1";
        ring.strongest_input = "fid";
        ring.strongest_mix = "m1";
        result.rings = {ring};
        const auto sentences = risk_sentences(two_player_show(), result);
        QCOMPARE(sentences.size(), std::size_t{3});
        QCOMPARE(sentences[0],
                 std::string("This stage is tight: count on 1.3 dB before it rings (as drawn 3.2 dB) where "
                             "6 dB are wanted."));
        QCOMPARE(
            sentences[1],
            std::string(
                "Set up exactly as drawn, 545 Hz (C#5) is first to ring: wedge 1 back into fiddle through mix front."));
        QVERIFY(sentences[2].find("500 Hz and 250 Hz") != std::string::npos);
        QCOMPARE(risk_sentences(two_player_show(), AnalysisResult{}).size(), std::size_t{1});
    }

    void differences_tell_moves_worth_telling_only() {
        const Show older = two_player_show();
        Show newer = older;
        QVERIFY(differences_since(older, newer).rows.empty());
        newer.loudspeakers[0].position.x += 0.09;
        QVERIFY(differences_since(older, newer).rows.empty());
        newer.loudspeakers[0].position.x += 0.02;
        newer.mixes[0].graphic_eq[17] = -3.0;
        newer.mixes[0].sends.pop_back();
        newer.inputs.pop_back();
        const Table table = differences_since(older, newer);
        QCOMPARE(table.rows.size(), std::size_t{4});
        QCOMPARE(table.rows[0], (std::vector<std::string>{"input", "voice", "there", "gone"}));
        QCOMPARE(table.rows[1], (std::vector<std::string>{"send", "fiddle > front", "98 dB", "none"}));
        QCOMPARE(table.rows[2], (std::vector<std::string>{"equaliser 1 kHz", "front", "0 dB", "-3 dB"}));
        QCOMPARE(table.rows[3][0], std::string("position"));
        newer.loudspeakers[0].position = {-0.8, 1.55, 0.25};
        QCOMPARE(differences_since(older, newer).rows.back()[3],
                 std::string("0.80 m stage right, 1.55 m from the edge, 0.25 m high"));
        newer.loudspeakers[0].position = {0.0, -1.0, 0.0};
        QCOMPARE(differences_since(older, newer).rows.back()[3],
                 std::string("on the centre line, 1.00 m in front of the edge"));
    }

    void figures_have_no_more_digits_than_are_known() {
        QCOMPARE(hz_words(440.4), std::string("440 Hz"));
        QCOMPARE(hz_words(1250.0), std::string("1.25 kHz"));
        QCOMPARE(hz_words(12500.0), std::string("12.5 kHz"));
        QCOMPARE(band_words(31.5), std::string("31.5 Hz"));
        QCOMPARE(margin_words(std::nullopt), std::string("no loop"));
        QCOMPARE(margin_words(-0.04), std::string("0.0 dB"));
        QCOMPARE(distance_words(1.0668, Units::imperial), std::string("3' 6\""));
        QCOMPARE(listed({"a", "b", "c"}), std::string("a, b and c"));
    }
};

HOWLMAP_TEST(TestLists)
#include "test_lists.moc"
