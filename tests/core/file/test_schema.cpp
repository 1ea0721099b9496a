// SPDX-License-Identifier: GPL-3.0-or-later
// The published schema against what is written and what is refused, judged by valijson (JSON Schema draft-07).
#include "core/file/write.h"
#include "tests/core/file/samples.h"
#include "tests/support/random_show.h"
#include "tests/support/registry.h"
#include "tests/support/schema_judge.h"

using namespace howlmap;
using namespace howlmap::test;

class TestSchema : public QObject {
    Q_OBJECT
    SchemaJudge judge_{HOWLMAP_SOURCE_DIR "/resources/schema/howlmap-show-1.schema.json"};

  private Q_SLOTS:
    void whatIsWrittenIsValid() {
        for (std::uint64_t seed = 0; seed < 1000; ++seed) {
            const std::string complaint = judge_.complaint(nlohmann::json::parse(write_show(random_show(seed))));
            QVERIFY2(complaint.empty(), (std::to_string(seed) + ": " + complaint).c_str());
        }
    }

    void shippedFilesAreValid() {
        int count = 0;
        for (const char* folder : {"/examples", "/resources/stages", "/tests/shows"})
            for (const auto& entry : std::filesystem::directory_iterator(HOWLMAP_SOURCE_DIR + std::string(folder))) {
                if (entry.path().extension() != ".howlmap") continue;
                const std::string complaint = judge_.complaint(nlohmann::json::parse(text_of_file(entry.path())));
                QVERIFY2(complaint.empty(), (entry.path().string() + ": " + complaint).c_str());
                ++count;
            }
        QVERIFY(count >= 5);
    }

    void theLeastShowIsValid() { QCOMPARE(judge_.complaint(nlohmann::json::parse(least().dump())), std::string()); }

    void mistakesAreSeen_data() {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<QString>("value");
        const auto row = [](const char* pointer, const char* value) {
            QTest::addRow("%s %s", pointer, value) << pointer << value;
        };
        for (const char* value : {"1000.1", "-1001", "\"left\"", "null"}) row("/inputs/0/position/0", value);
        for (const char* value : {"[1, 2]", "[1, 2, 3, 4]", "{}"}) row("/loudspeakers/0/position", value);
        for (const char* value : {"0", "1000.5"}) row("/mixes/0/notches/0/q", value);
        for (const char* value : {"0", "9", "2.5"}) row("/inputs/0/high_pass/order", value);
        for (const char* value : {"160.5", "-61", "\"loud\""}) row("/mixes/0/sends/0/level_db", value);
        for (const char* value : {"{\"1001\": -3}", "{\"1000\": 61}", "[]"}) row("/mixes/0/graphic_eq", value);
        for (const char* value : {"{}", "1.1", "{\"31.5\": 0.5}", "\"wood\""})
            row("/stage/surfaces/back/absorption", value);
        for (const char* value : {"{}", "\"brown\"", "{\"1\": 0}"}) row("/inputs/0/spectrum", value);
        for (const char* value : {"\"heart\"", "1.2", "{\"type\": \"omni\"}"})
            row("/inputs/0/microphone/pattern", value);
        for (const char* value : {"{}", "{\"type\": \"horn\"}", "{\"type\": \"coverage\"}"})
            row("/loudspeakers/0/directivity", value);
        for (const char* value : {"\"guitar\"", "1", "null"}) row("/inputs/0/kind", value);
        for (const char* value : {"\"2031-13-01\"", "\"today\"", "1"}) row("/date", value);
        for (const char* value : {"[[0, 0], [1, 1]]", "[]"}) row("/stage/outline", value);
        for (const char* value : {"0", "2", "\"1\""}) row("/version", value);
        for (const char* value : {"\"other\"", "null"}) row("/format", value);
        for (const char* value : {"0", "100001", "1.5"}) row("/tolerance/draws", value);
        for (const char* value : {"-1", "0.5"}) row("/tolerance/seed", value);
        for (const char* value : {"\"\"", "7"}) row("/marks/0/id", value);
    }
    void mistakesAreSeen() {
        QFETCH(QString, pointer);
        QFETCH(QString, value);
        const auto document = sample_with(pointer.toStdString(), Json::parse(value.toStdString()));
        QVERIFY(!judge_.complaint(nlohmann::json::parse(document)).empty());
    }

    void missingKeysAreSeen() {
        for (const std::string pointer :
             {"/format", "/version", "/stage", "/stage/outline", "/loudspeakers/0/id", "/loudspeakers/0/directivity",
              "/inputs/0/microphone", "/inputs/1/pickup", "/inputs/0/position", "/mixes/0/loudspeakers",
              "/performers/0/position", "/listeners/0/name", "/stage/surfaces/ceiling/z"}) {
            Json show = sample();
            const std::size_t slash = pointer.rfind('/');
            show[Json::json_pointer(pointer.substr(0, slash))].erase(pointer.substr(slash + 1));
            QVERIFY2(!judge_.complaint(nlohmann::json::parse(show.dump())).empty(), pointer.c_str());
        }
    }

    void aBadSchemaThrows() {
        QTemporaryDir folder;
        const auto bad = std::filesystem::path(folder.filePath(QStringLiteral("bad.json")).toStdString());
        std::ofstream(bad) << R"({"type": "numbr"})";
        QVERIFY_EXCEPTION_THROWN(SchemaJudge{bad}, std::exception);
    }
};

HOWLMAP_TEST(TestSchema)
#include "test_schema.moc"
