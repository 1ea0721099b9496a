// SPDX-License-Identifier: GPL-3.0-or-later
// Ranking, plan and what is promised: every figure is compared with a full analysis of the show that comes out.
#include <cmath>
#include <filesystem>
#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "core/analysis/analysis.h"
#include "core/cures/cures.h"
#include "core/cures/loudness.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/listening/listening.h"
#include "core/report/cures_json.h"
#include "core/report/cures_text.h"
#include "tests/core/cures/free_air.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
/// Two singers with a wedge each, each in the other's mix, over a hard floor.
Show two_singers() {
    Show show = single_loop();
    show.title = "Two singers";
    show.tolerance.draws = 200;
    show.stage.surfaces.floor.absorption = 0.1;
    Loudspeaker& wedge = show.loudspeakers[0];
    wedge.directivity = Coverage{70.0, 50.0, 0.5, 0.35, 24.0, {}};
    wedge.response = {70.0, 4, 16000.0, 2, {}, {}};
    wedge.position = {-1.2, 0.9, 0.3};
    wedge.aim = {185.0, 40.0, 0.0};
    show.loudspeakers.push_back(wedge);
    show.loudspeakers[1].id = show.loudspeakers[1].name = "wedge b";
    show.loudspeakers[1].position = {1.3, 1.0, 0.3};
    show.loudspeakers[1].aim = {172.0, 36.0, 0.0};
    set_pattern(show, PatternName::cardioid);
    Input& voice = show.inputs[0];
    voice.position = {-1.1, 2.1, 1.6};
    voice.aim = {180.0, -10.0, 0.0};
    voice.source_spl_db = 96.0;
    show.inputs.push_back(voice);
    Input& second = show.inputs[1];
    second.id = second.name = "voice b";
    second.channel = 2;
    second.performer = "bea";
    second.position = {1.2, 2.2, 1.5};
    show.performers[0].position = {-1.1, 2.3};
    show.performers[0].own_acoustic_dba = 88.0;
    show.performers.push_back(show.performers[0]);
    show.performers[1].id = show.performers[1].name = "bea";
    show.performers[1].position = {1.2, 2.4};
    show.performers[1].mix = "m2";
    show.mixes[0].sends = {Send{"voice", 103.0, {}}, Send{"voice b", 99.0, {}}};
    show.mixes.push_back(show.mixes[0]);
    show.mixes[1].id = show.mixes[1].name = "m2";
    show.mixes[1].number = 2;
    show.mixes[1].loudspeakers = {"wedge b"};
    show.mixes[1].sends = {Send{"voice", 100.0, {}}, Send{"voice b", 104.0, {}}};
    show.listeners = {Listener{"row", "row 5", {0.0, -4.0, 1.2}, {}}};
    return show;
}

AnalysisResult analysed(const Show& show) { return *analyse(show, {true, false, true}); }

bool same(const std::optional<double>& a, const std::optional<double>& b, double tolerance) {
    return a.has_value() == b.has_value() && (!a || std::abs(*a - *b) <= tolerance);
}

/// Largest change of own and of all sound at any ear.
double loudest_change(const Show& before, const Show& after) {
    const auto a = performer_figures(before), b = performer_figures(after);
    double most = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (a[i].own_dba && b[i].own_dba) most = std::max(most, std::abs(*a[i].own_dba - *b[i].own_dba));
        if (a[i].ear_dba && b[i].ear_dba) most = std::max(most, std::abs(*a[i].ear_dba - *b[i].ear_dba));
    }
    return most;
}

const CureReport& found_cures() {
    static const CureReport made = *find_cures(two_singers());
    return made;
}
}  // namespace

class FindCures : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void plan_reaches_its_target() {
        const Plan& plan = found_cures().plan;
        QVERIFY(*found_cures().before.margin_p05_db < found_cures().target_db);
        QVERIFY(plan.reaches_target);
        QVERIFY(!plan.steps.empty());
        const auto result = analysed(plan.show);
        QVERIFY(*result.tolerance->margin_p05_db >= found_cures().target_db);
        QVERIFY(same(result.margin_db, plan.after.margin_db, 0.05));
        QVERIFY(same(result.tolerance->margin_p05_db, plan.after.margin_p05_db, 0.05));
        QVERIFY(result.verdict == Verdict::holds);
    }
    void cures_hold_what_they_promise() {
        QVERIFY(found_cures().cures.size() >= 5);
        const auto before = analysed(two_singers());
        for (const Cure& cure : found_cures().cures) {
            const auto after = analysed(cure.after);
            QVERIFY(same(after.margin_db, cure.margins_after.margin_db, 0.05));
            QVERIFY(same(after.tolerance->margin_p05_db, cure.margins_after.margin_p05_db, 0.05));
            if (cure.count_on_gain_db)
                QVERIFY(std::abs(*after.tolerance->margin_p05_db - *before.tolerance->margin_p05_db -
                                 *cure.count_on_gain_db) < 0.05);
        }
    }
    void equal_loudness_or_a_word() {
        for (const Cure& cure : found_cures().cures) {
            const double change = loudest_change(two_singers(), cure.after);
            QVERIFY2(change <= 0.1 + 1e-9 || !cure.loses.empty(), cure.id.c_str());
            QVERIFY2(cure.loses.empty() == (std::abs(cure.loudness_change_db) <= 0.1), cure.id.c_str());
        }
    }
    void each_is_told_once_and_what_is_known_is_not_asked_again() {
        CureOptions options;
        options.before = found_cures().before;
        options.plan = false;
        std::vector<std::string> told;
        double least = 1.0;  // progress at which the first was told
        Job job;
        double progress = 0.0;
        job.progress = [&](double fraction) { progress = fraction; };
        const auto report = find_cures(two_singers(), options, job, [&](const Cure& cure) {
            if (told.empty()) least = progress;
            told.push_back(cure.id);
        });
        QVERIFY(report && least < 0.2);
        QCOMPARE(report->cures.size(), found_cures().cures.size());
        for (std::size_t i = 0; i < report->cures.size(); ++i) {
            QCOMPARE(report->cures[i].id, found_cures().cures[i].id);
            QCOMPARE(report->cures[i].score, found_cures().cures[i].score);
            QCOMPARE(std::ranges::count(told, report->cures[i].id), 1);
        }
    }
    void best_first() {
        const auto& cures = found_cures().cures;
        for (std::size_t i = 1; i < cures.size(); ++i) QVERIFY(cures[i - 1].score >= cures[i].score - 0.01);
    }
    void changes_name_places_in_the_file() {
        const auto before = nlohmann::json::parse(write_show(two_singers()));
        for (const Cure& cure : found_cures().cures) {
            QVERIFY2(!cure.changes.empty(), cure.id.c_str());
            auto changed = before;
            bool removes = false;
            for (const ChangedValue& value : cure.changes) {
                const nlohmann::json::json_pointer place(value.pointer);
                if (value.from != "null") QCOMPARE(before.at(place), nlohmann::json::parse(value.from));
                removes = removes || value.to == "null";
                if (value.to != "null") changed[place] = nlohmann::json::parse(value.to);
            }
            if (!removes) QVERIFY2(changed == nlohmann::json::parse(write_show(cure.after)), cure.id.c_str());
        }
    }
    void change_is_the_edit_itself() {
        for (const Cure& cure : found_cures().cures) {
            Show show = two_singers();
            apply(show, cure.change);
            QVERIFY2(show == cure.after, cure.id.c_str());
            apply(show, inverted(cure.change));
            QVERIFY2(show == two_singers(), cure.id.c_str());
        }
    }
    void machine_form() {
        const auto json = nlohmann::json::parse(cures_json(found_cures()));
        QCOMPARE(json["format"].get<std::string>(), std::string("howlmap-cures"));
        QCOMPARE(json["cures"].size(), found_cures().cures.size());
        QCOMPARE(json["plan"]["reaches_target"].get<bool>(), true);
        const auto keys = [](const nlohmann::json& object) {
            std::set<std::string> all;
            for (const auto& [key, value] : object.items()) all.insert(key);
            return all;
        };
        const std::set<std::string> of_cure = {"id",
                                               "kind",
                                               "instruction",
                                               "changes",
                                               "margin_gain_db",
                                               "count_on_gain_db",
                                               "tone_cost_db",
                                               "loudness_change_db",
                                               "worst_after"};
        for (const auto& cure : json["cures"]) QVERIFY(keys(cure) == of_cure);
        for (const auto& step : json["plan"]["steps"]) QVERIFY(keys(step) == of_cure);
        QVERIFY(keys(json) == (std::set<std::string>{"format", "version", "target_db", "before", "cures", "plan"}));
        QVERIFY(keys(json["before"]) == (std::set<std::string>{"margin_db", "margin_p05_db"}));
        QVERIFY(howlmap::report::cures_text(found_cures()).find("The plan") != std::string::npos);
    }
    void same_again() {
        const CureReport again = *find_cures(two_singers());
        QCOMPARE(cures_json(again), cures_json(found_cures()));
    }
    void progress_and_each_cure_as_it_is_found() {
        double last = 0.0;
        bool rising = true;
        std::size_t found = 0;
        Job job;
        job.progress = [&](double fraction) {
            rising = rising && fraction >= last && fraction <= 1.0;
            last = fraction;
        };
        CureOptions options;
        options.plan = false;
        const auto made = find_cures(two_singers(), options, job, [&](const Cure&) { ++found; });
        QVERIFY(rising);
        QCOMPARE(last, 1.0);
        QCOMPARE(found, made->cures.size());
    }
    void cancelled() {
        std::stop_source stop;
        stop.request_stop();
        QVERIFY(!find_cures(two_singers(), {}, Job{stop.get_token(), {}}));
        QVERIFY(!make_plan(two_singers(), {}, Job{stop.get_token(), {}}));
    }
    void nothing_to_cure() {
        Show silent = two_singers();
        for (Mix& mix : silent.mixes) mix.sends.clear();
        const auto none = *find_cures(silent);
        QVERIFY(none.cures.empty() && none.plan.steps.empty() && none.plan.reaches_target);
        QVERIFY(!none.plan.reason.empty());
        Show quiet = two_singers();
        for (Mix& mix : quiet.mixes)
            for (Send& send : mix.sends) send.level_db -= 20.0;
        const auto fine = *make_plan(quiet);
        QVERIFY(fine.steps.empty() && fine.reaches_target);
    }
    void what_cannot_be_had_otherwise_comes_out_of_the_level() {
        // One omni, one omni loudspeaker, nothing to aim, nowhere to go: the equaliser cannot take 30 dB at all
        // frequencies.
        Show show = single_loop();
        show.stage.outline = {{-0.1, 0.9}, {0.1, 0.9}, {0.1, 3.1}, {-0.1, 3.1}};
        show.inputs[0].position = {0.0, 2.9, 1.5};
        show.inputs[0].spectrum = SpectrumName::pink;
        show.mixes[0].sends[0].level_db = 130.0;
        std::get<Microphone>(show.inputs[0].transducer).pattern = 1.0;
        show.performers[0].hears = Hears::loudspeakers;
        show.performers[0].mix.clear();  // nobody to give in-ears to
        const auto plan = *make_plan(show);
        QVERIFY(plan.reaches_target);
        QVERIFY(plan.steps.back().kind == CureKind::turn_down || plan.reason.empty());
    }
    void every_small_example() {
        for (const char* name : {"fiddle-and-wedge", "duo", "duo-in-ears", "classroom"}) {
            auto read =
                load_show(std::filesystem::path(HOWLMAP_SOURCE_DIR) / "examples" / (std::string(name) + ".howlmap"));
            QVERIFY2(read.has_value(), name);
            Show& show = read->show;
            show.tolerance.draws = 24;
            const CureReport report = *find_cures(show);
            QVERIFY2(report.plan.reaches_target || !report.plan.reason.empty(), name);
            const auto after = analysed(report.plan.show);
            QVERIFY2(same(after.margin_db, report.plan.after.margin_db, 0.05), name);
            QVERIFY2(same(after.tolerance->margin_p05_db, report.plan.after.margin_p05_db, 0.05), name);
            for (const Cure& cure : report.cures)
                QVERIFY2(loudest_change(show, cure.after) <= 0.1 + 1e-9 || !cure.loses.empty(), cure.id.c_str());
        }
    }
    void only_for_one_input() {
        CureOptions options;
        options.plan = false;
        options.input = "voice b";
        const auto made = find_cures(two_singers(), options);
        QVERIFY(!made->cures.empty());
        for (const Cure& cure : made->cures)
            if (cure.kind == CureKind::aim_microphone || cure.kind == CureKind::closer_to_source)
                QVERIFY2(cure.objects[0] == "voice b", cure.id.c_str());
    }
    void what_is_ruled_out_is_neither_offered_nor_planned() {
        CureOptions options;
        const std::set<CureKind> out = {CureKind::aim_microphone, CureKind::change_pattern, CureKind::graphic_bands,
                                        CureKind::turn_down, CureKind::in_ears};
        for (const CureKind kind : out) options.weights.set(kind, std::numeric_limits<double>::infinity());
        const auto made = find_cures(two_singers(), options);
        QVERIFY(!made->cures.empty());
        for (const Cure& cure : made->cures) QVERIFY2(!out.contains(cure.kind), cure.id.c_str());
        for (const Cure& step : made->plan.steps) QVERIFY2(!out.contains(step.kind), step.id.c_str());
        QVERIFY(made->plan.reaches_target || !made->plan.reason.empty());
    }
    void trouble_decides_the_order() {
        // The cure that came first costs ten times as much as any other: another comes first.
        CureOptions options;
        options.plan = false;
        const CureKind first = found_cures().cures[0].kind;
        options.weights.set(first, 10.0);
        QCOMPARE(options.weights.of(first), 10.0);
        QVERIFY(find_cures(two_singers(), options)->cures[0].kind != first);
    }
    void levels_kept_for_two_listeners_of_a_mix() {
        Show show = two_singers();
        show.performers[1].mix = "m1";
        const cures::Loudness loudness(show);
        Show louder = show;
        louder.loudspeakers[0].trim_db = -6.0;
        const Show kept = loudness.restored(louder);
        QVERIFY(std::abs(loudness.loss(kept).change_db) <= 0.1);
        QVERIFY(std::abs(kept.mixes[0].sends[0].level_db - 109.0) < 0.25);
    }
};
HOWLMAP_TEST(FindCures)
#include "test_find_cures.moc"
