// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/migrate.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/find.h"
#include "tests/core/file/samples.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

namespace {
Show read(const std::string& text) {
    auto result = read_show(text);
    if (!result) qFatal("%s", result.error().message().c_str());
    return std::move(result->show);
}

/// Adds an unknown key to every object but those whose keys are bands; returns how many.
int mark_objects(Json& value) {
    int count = 0;
    if (value.is_object()) {
        const std::string first = value.empty() ? "" : value.items().begin().key();
        const bool bands = !first.empty() && first.find_first_not_of("0123456789.") == std::string::npos;
        for (auto& [key, member] : value.items())
            if (key.rfind("x_", 0) != 0) count += mark_objects(member);
        if (!bands) {
            value["zz_later"] = {{"kept", {1, "two", nullptr}}};
            ++count;
        }
    } else if (value.is_array()) {
        for (Json& item : value) count += mark_objects(item);
    }
    return count;
}
}  // namespace

class TestRead : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void theLeastShowHasTheDocumentedDefaults() {
        const Show show = read(least().dump());
        Show expected;
        expected.stage.outline = {{0, 0}, {4, 0}, {4, 3}};
        QVERIFY(show == expected);
        QCOMPARE(show.air.temperature_c, 20.0);
        QCOMPARE(show.air.pressure_kpa, 101.325);
        QCOMPARE(show.tolerance.draws, 1000);
        QCOMPARE(show.system.house_target_dba, 95.0);
        QVERIFY(show.stage.surfaces.floor.absorption == Absorption(0.1));
    }

    void defaultsOfObjects() {
        Json show = least();
        show["loudspeakers"] = {{{"id", "s"},
                                 {"name", "s"},
                                 {"kind", "sub"},
                                 {"position", {0, 0, 0}},
                                 {"directivity",
                                  {{"type", "coverage"},
                                   {"horizontal_deg", 90},
                                   {"vertical_deg", 60},
                                   {"width_m", 0.5},
                                   {"height_m", 0.3}}}}};
        show["inputs"] = {{{"id", "p"},
                           {"channel", 1},
                           {"name", "p"},
                           {"kind", "pickup"},
                           {"position", {0, 1, 1}},
                           {"high_pass", {{"hz", 80}}},
                           {"pickup", {{"isolation_db", 15}}}},
                          {{"id", "l"}, {"channel", 2}, {"name", "l"}, {"kind", "line"}}};
        show["performers"] = {{{"id", "w"}, {"name", "w"}, {"position", {0, 1}}}};
        const Show got = read(show.dump());
        QCOMPARE(got.loudspeakers[0].aim.yaw_deg, 180.0);
        QCOMPARE(std::get<Coverage>(got.loudspeakers[0].directivity).floor_db, 24.0);
        QVERIFY(!got.loudspeakers[0].max_spl_db);
        QCOMPARE(got.inputs[0].source_spl_db, 94.0);
        QCOMPARE(got.inputs[0].high_pass->order, 2);
        QCOMPARE(std::get<Pickup>(got.inputs[0].transducer).baseline_db, -12.0);
        QCOMPARE(std::get<Pickup>(got.inputs[0].transducer).cover_db, 10.0);
        QVERIFY(is_line(got.inputs[1]) && !got.inputs[1].has_position);
        QCOMPARE(got.performers[0].ear_height_m, 1.6);
        QCOMPARE(got.performers[0].seal_db, 25.0);
        QVERIFY(got.performers[0].hears == Hears::loudspeakers && !got.performers[0].own_acoustic_dba);
    }

    void theSampleIsReadToTheLetter() {
        const Show show = read(sample_text());
        QCOMPARE(show.tolerance.seed, UINT64_MAX);
        QVERIFY(show.display.units == Units::imperial);
        QCOMPARE(show.stage.surfaces.front->at, -9.5);
        QCOMPARE(std::get<1>(show.stage.surfaces.floor.absorption).at(7), 0.08);
        QCOMPARE(show.loudspeakers[0].response.table[2].db, 2.5);
        QCOMPARE(std::get<CapOnSphere>(show.loudspeakers[1].directivity).cap_radius_m, 0.12);
        QCOMPARE(std::get<DirectivityTable>(show.loudspeakers[2].directivity).db[2][3], -24.0);
        QVERIFY(std::holds_alternative<Omni>(show.loudspeakers[3].directivity));
        QVERIFY(microphone_of(show.inputs[0])->pattern == Pattern(PatternName::supercardioid));
        QVERIFY(microphone_of(show.inputs[2])->pattern == Pattern(0.45));
        QCOMPARE(std::get<DirectivityTable>(microphone_of(show.inputs[3])->pattern).db[1][2], -18.0);
        QCOMPARE(pickup_of(show.inputs[1])->modes[0].q, 15.0);
        QVERIFY(pickup_of(show.inputs[1])->modes[0].air);
        QCOMPARE(std::get<1>(show.inputs[1].spectrum).at(17), -6.5);
        QCOMPARE(show.mixes[0].graphic_eq.at(2), -12.0);
        QCOMPARE(show.mixes[0].graphic_eq.at(30), -6.0);
        QCOMPARE(find_send(show.mixes[0], "voice")->level_db, 101.5);
        QCOMPARE(show.soundcheck[0].hz, 2310.5);
    }

    void wholeNumbersMayBeSpeltWithAPoint() {
        const Show show = read(sample_with("/tolerance/draws", 88.0));
        QCOMPARE(show.tolerance.draws, 88);
        std::string text = sample_text();
        text.replace(text.find("\"draws\": 250"), 12, "\"draws\": 2.5e2");
        QCOMPARE(read(text).tolerance.draws, 250);
        QCOMPARE(read(sample_with("/tolerance/seed", 7.0)).tolerance.seed, std::uint64_t{7});
        QCOMPARE(read(sample_with("/version", 1.0)).tolerance.draws, 250);
    }

    void aByteOrderMarkIsTaken() { QVERIFY(read("\xEF\xBB\xBF" + sample_text()) == read(sample_text())); }

    void nullStandsForNotKnown() {
        QVERIFY(!read(sample_with("/loudspeakers/0/max_spl_db", nullptr)).loudspeakers[0].max_spl_db);
        QVERIFY(!read(sample_with("/performers/0/own_acoustic_dba", nullptr)).performers[0].own_acoustic_dba);
    }

    void minusZeroIsZero() {
        const Show show = read(sample_with("/inputs/0/position", {-0.0, 1.0, 1.0}));
        QVERIFY(!std::signbit(show.inputs[0].position.x));
    }

    void unknownKeysAreKeptInEveryObject() {
        Json show = sample();
        const int marked = mark_objects(show);
        QVERIFY(marked >= 50);
        const Json written = Json::parse(write_show(read(show.dump())));
        int found = 0;
        const std::string text = written.dump();
        for (std::size_t at = text.find("zz_later"); at != std::string::npos; at = text.find("zz_later", at + 1))
            ++found;
        QCOMPARE(found, marked);
        QVERIFY(nlohmann::json::parse(show.dump()) == nlohmann::json::parse(text));
    }

    void theSpellingOfUnknownNumbersIsKept() {
        Json show = least();
        std::string text = show.dump();
        text.insert(1, R"("x": [1.50, 1E+2, 123456789012345678901234567890, 0.1000000000000000055511151231257827],)");
        const std::string written = write_show(read(text));
        QVERIFY2(written.find("[1.50, 1E+2, 123456789012345678901234567890, 0.1000000000000000055511151231257827]") !=
                     std::string::npos,
                 written.c_str());
    }

    void keysOfAnotherKindOfInputAreKept() {
        Json show = sample();
        show["inputs"][0]["pickup"] = {{"isolation_db", 12}};
        Show got = read(show.dump());
        QVERIFY(microphone_of(got.inputs[0]));
        QVERIFY(write_show(got).find(R"("pickup": {"isolation_db": 12})") != std::string::npos);
        got.inputs[0].transducer = Pickup{};  // now the show has a pickup of its own: one key, not two
        QVERIFY(pickup_of(read(write_show(got)).inputs[0]));
    }

    void anIdMayHoldAnything() {
        const Show show = read(sample_with("/marks/0/id", "~/\"ü\n"));
        QCOMPARE(show.marks[0].id, std::string("~/\"ü\n"));
        QVERIFY(read(write_show(show)) == show);
    }

    void aNewerFileIsReadOnlyIfItsKeysAllow() {
        const auto newer = read_show(sample_with("/version", 2));
        QVERIFY(newer && newer->read_only);
        QCOMPARE(newer->version, 2);
        const auto present = read_show(sample_text());
        QVERIFY(present && !present->read_only);
        QCOMPARE(present->version, 1);
    }

    void aNewerFileIsElseRefusedByName() {
        Json show = sample();
        show["version"] = 3;
        show["inputs"][0]["kind"] = "hologram";
        const auto newer = read_show(show.dump());
        QVERIFY(!newer);
        QCOMPARE(newer.error().place, std::string("/version"));
        QVERIFY(newer.error().found.find("version 3") != std::string::npos);
        QVERIFY(newer.error().message().find("/inputs/0/kind") != std::string::npos);
    }

    void olderFilesAreLiftedStepByStep() {
        // No older version exists yet: the machinery, with steps of its own.
        auto root = file::parse(R"({"a": 1})");
        QVERIFY(root.has_value());
        const file::Step steps[] = {[](file::Value& value) { std::get<file::Object>(value.data)[0].key += "b"; },
                                    [](file::Value& value) { std::get<file::Object>(value.data)[0].key += "c"; },
                                    [](file::Value& value) { std::get<file::Object>(value.data)[0].key += "d"; }};
        file::migrate(*root, 2, steps);
        QCOMPARE(file::text_of(*root), std::string(R"({"acd": 1})"));
        file::migrate(*root, 9, steps);  // newer than all steps: nothing to do
        QCOMPARE(file::text_of(*root), std::string(R"({"acd": 1})"));
    }

    void everySampleOfEveryVersionOpens() {
        int count = 0;
        for (const auto& entry : std::filesystem::directory_iterator(HOWLMAP_SOURCE_DIR "/tests/shows")) {
            const auto got = load_show(entry.path());
            QVERIFY2(got, got ? "" : got.error().message(entry.path().string()).c_str());
            ++count;
        }
        QVERIFY(count >= 1);
    }

    void everyExampleOpens() {
        int count = 0;
        for (const auto& entry : std::filesystem::directory_iterator(HOWLMAP_SOURCE_DIR "/examples")) {
            if (entry.path().extension() != ".howlmap") continue;
            const auto got = load_show(entry.path());
            QVERIFY2(got, got ? "" : got.error().message(entry.path().string()).c_str());
            QCOMPARE(write_show(got->show), text_of_file(entry.path()));
            ++count;
        }
        QVERIFY(count >= 4);
    }

    void troubleWithTheFileItself() {
        const auto gone = load_show("/no/such/folder/gig.howlmap");
        QVERIFY(!gone);
        QCOMPARE(gone.error().place, std::string());
        QCOMPARE(gone.error().message("gig.howlmap"),
                 std::string("gig.howlmap: cannot be opened: No such file or directory"));
        QCOMPARE(load_show("/").error().message(), std::string("is a folder"));
        QCOMPARE(load_show("/dev/null").error().message(), std::string("is not a regular file"));
        // A regular file to the system, but nothing lies at its beginning.
        QCOMPARE(load_show("/proc/self/mem").error().message(), std::string("cannot be read: Input/output error"));
        // No more of a file is read than a show may have.
        QTemporaryFile large;
        QVERIFY(large.open() && large.resize((64ll << 20) + 1));
        QCOMPARE(load_show(large.fileName().toStdString()).error().message(), std::string("is larger than 64 MiB"));
    }
};

HOWLMAP_TEST(TestRead)
#include "test_read.moc"
