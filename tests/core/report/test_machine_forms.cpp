// SPDX-License-Identifier: GPL-3.0-or-later
// What the verbs say to machines against the schemas that are published for it: keys, types, ranges, what may be null.
#include <filesystem>
#include <nlohmann/json.hpp>

#include "core/file/read.h"
#include "core/report/analysis_json.h"
#include "core/report/audio_json.h"
#include "core/report/cures_json.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"
#include "tests/support/schema_judge.h"

using namespace howlmap;
using nlohmann::json;

namespace {
test::SchemaJudge judge_of(const char* verb) {
    return test::SchemaJudge(HOWLMAP_SOURCE_DIR "/resources/schema/howlmap-" + std::string(verb) + "-1.schema.json");
}

/// The document is valid; without any one of its own keys, or with one more, it is not.
void is_valid(const char* verb, const std::string& text) {
    const auto judge = judge_of(verb);
    const json document = json::parse(text);
    QVERIFY2(judge.complaint(document).empty(), (judge.complaint(document) + "\n" + text).c_str());
    for (const auto& [key, value] : document.items()) {
        json less = document;
        less.erase(key);
        QVERIFY2(!judge.complaint(less).empty(), key.c_str());
    }
    json more = document;
    more["surprise"] = 1;
    QVERIFY(!judge.complaint(more).empty());
}

Show example(const char* name) {
    auto read = load_show(std::filesystem::path(HOWLMAP_SOURCE_DIR) / "examples" / (std::string(name) + ".howlmap"));
    if (!read) qFatal("%s", read.error().message(name).c_str());
    return std::move(read->show);
}
}  // namespace

class MachineFormsTest : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    /// The same is a first look at every show that comes with the program: it has loops, and figures for them.
    void analysisOfEveryExample_data() {
        QTest::addColumn<QString>("name");
        for (const auto& entry : std::filesystem::directory_iterator(HOWLMAP_SOURCE_DIR "/examples"))
            if (entry.path().extension() == ".howlmap") QTest::newRow(entry.path().stem().c_str()) << "";
    }
    void analysisOfEveryExample() {
        Show show = example(QTest::currentDataTag());
        show.tolerance.draws = 20;
        const auto result = analyse(show);
        is_valid("analysis", analysis_json(*result));
        QVERIFY(result->margin_db && result->tolerance && result->tolerance->margin_p05_db);
        QVERIFY(!result->rings.empty() && !result->pairs.empty());
    }
    void analysisOfAStageWithoutLoops() {
        const auto result = analyse(test::plain_stage(1, 1));
        QVERIFY(!result->margin_db);
        is_valid("analysis", analysis_json(*result));
        is_valid("analysis", analysis_json(*analyse(example("duo"), {.tolerance = false})));
    }
    void mistakesInAnAnalysisAreSeen_data() {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<QString>("value");
        const auto row = [](const char* pointer, const char* value) {
            QTest::addRow("%s %s", pointer, value) << pointer << value;
        };
        row("/version", "2"), row("/verdict", "\"fine\""), row("/margin_db", "\"6\""), row("/tolerance/draws", "0");
        row("/tolerance/first_ring/0/probability", "1.5"), row("/rings/0/note", "\"H4\"");
        row("/rings/0/cents", "51"), row("/rings/0/shares/0/input", "\"\""), row("/rings/0/hz", "null");
        row("/pairs/0/microphone_angle_deg", "-1"), row("/performers/0/id", "7"), row("/warnings", "[\"\"]");
    }
    void mistakesInAnAnalysisAreSeen() {
        QFETCH(QString, pointer);
        QFETCH(QString, value);
        static const auto judge = judge_of("analysis");
        static const json good = json::parse(analysis_json(*analyse(example("fiddle-and-wedge"))));
        json bad = good;
        bad.at(json::json_pointer(pointer.toStdString())) = json::parse(value.toStdString());
        QVERIFY(!judge.complaint(bad).empty());
    }
    void cures() {
        Show show = example("fiddle-and-wedge");
        show.tolerance.draws = 50;
        const auto report = find_cures(show);
        QVERIFY(!report->cures.empty());
        is_valid("cures", cures_json(*report));
        for (const CureKind kind : all_cure_kinds()) {  // each has its name in the schema
            CureReport other = *report;
            other.cures.front().kind = kind;
            is_valid("cures", cures_json(other));
        }
        CureReport none;
        none.plan.reason = "there is no loop";
        is_valid("cures", cures_json(none));
    }
    void ring() {
        const RingFindings findings{3725.0, {{1262.0, 3723.4, 3724.9, 41.5, -8.25}, {98.2, 1.0, 2.0, 0.0, -20.0}}};
        is_valid("ring", ring_json(findings, {{{"m", "w", 1250.0, 2.25}}, {}}));
        is_valid("ring", ring_json({12.0, {}}));
    }
    void tap() { is_valid("tap", tap_json({3, {{275.0, 15.0, 0.0, 0.0}, {540.0, 30.0, -3.5, -6.0}}})); }
    void hear() {
        is_valid("hear", hear_json({2.5, 3.0, 440.0, 12.0, 15.0, "m", 440.0}));
        is_valid("hear", hear_json({std::nullopt, 0.0, std::nullopt, std::nullopt, 15.0, "m", std::nullopt}));
    }
};

HOWLMAP_TEST(MachineFormsTest)
#include "test_machine_forms.moc"
