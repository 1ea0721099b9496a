// SPDX-License-Identifier: GPL-3.0-or-later
// Malformed files, class by class: every one is refused with the place, what was found and what was expected.
#include <algorithm>
#include <chrono>
#include <map>

#include "core/file/read.h"
#include "tests/core/file/malformed.h"
#include "tests/core/file/samples.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::test;

class TestRefusals : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void everyMalformedFileIsRefusedWithItsPlace() {
        std::map<std::string, int> classes;
        std::vector<double> times;
        for (const Malformed& file : malformed_files()) {
            ++classes[file.kind];
            const auto start = std::chrono::steady_clock::now();
            const auto got = read_show(file.text);
            times.push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
            const std::string about = file.kind + " at " + file.place;
            QVERIFY2(!got, (about + " was accepted").c_str());
            const FileError& error = got.error();
            const bool named = file.place == "line"
                                   ? error.place.starts_with("line ")
                                   : error.place == file.place || error.place.starts_with(file.place + "/");
            QVERIFY2(named, (about + ": " + error.message()).c_str());
            QVERIFY2(error.message().find(file.expected) != std::string::npos,
                     (about + ": " + error.message()).c_str());
            QVERIFY2(!error.found.empty() && !error.expected.empty(), about.c_str());
            QVERIFY2(QString::fromUtf8(error.message().c_str()).toStdString() == error.message(), "a message is UTF-8");
        }
        std::nth_element(times.begin(), times.begin() + static_cast<std::ptrdiff_t>(times.size() / 2), times.end());
        qInfo("%zu files in %zu classes, median %.2f ms", times.size(), classes.size(), 1e3 * times[times.size() / 2]);
        QVERIFY(times.size() >= 500);
        QVERIFY(classes.size() >= 25);
    }

    void messagesReadWell_data() {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("message");
        const auto row = [](const char* name, const std::string& text, const char* message) {
            QTest::newRow(name) << QString::fromStdString(text) << message;
        };
        row("word for number", sample_with("/inputs/3/position/0", "left"),
            "gig.howlmap: /inputs/3/position/0: found \"left\", expected a number from -1000 to 1000");
        row("out of range", sample_with("/mixes/0/sends/0/level_db", 161),
            "gig.howlmap: /mixes/0/sends/0/level_db: found 161, expected a number from -60 to 160");
        row("above", sample_with("/mixes/0/notches/0/q", 0),
            "gig.howlmap: /mixes/0/notches/0/q: found 0, expected a number above 0 to 1000");
        row("broken", "{\n  \"format\": howl\n}",
            "gig.howlmap: line 2, column 13: found 'h', expected JSON (invalid literal)");
        row("end", "{\"format\": \"howlmap-show\"",
            "gig.howlmap: line 1, column 26: found the end of the file, expected '}'");
        row("twice", "{\"a\": 1, \"a\": 2}",
            "gig.howlmap: /a: found this key twice in one object, expected every key once");
        row("key", "{\"a\": 1, }", "gig.howlmap: line 1, column 10: found '}', expected a key in quotes");
        row("value", "{\"a\": ]}",
            "gig.howlmap: line 1, column 7: found ']', expected a value, such as a number, a text in quotes, '[' or "
            "'{'");
        row("more", "{} {}", "gig.howlmap: line 1, column 4: found '{', expected the end of the file");
        row("id", sample_with("/marks/1/id", "voice"),
            "gig.howlmap: /marks/1/id: found \"voice\", expected an id of its own (/inputs/0/id has it)");
    }
    void messagesReadWell() {
        QFETCH(QString, text);
        QFETCH(QString, message);
        const auto got = read_show(text.toStdString());
        QVERIFY(!got);
        QCOMPARE(QString::fromStdString(got.error().message("gig.howlmap")), message);
    }

    void whatStandsThereIsShownAsACharacter_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("found");
        QTest::newRow("smart quote") << QByteArray("{“a”: 1}") << "'“'";
        QTest::newRow("bad byte") << QByteArray("{\"a\": \xFF}") << "the byte 0xFF";
        QTest::newRow("control") << QByteArray("{\"a\": \"\x01\"}") << "the byte 0x01";
        QTest::newRow("line end") << QByteArray("{\"a\": \"text\n\"}") << "the end of the line";
        QTest::newRow("end") << QByteArray("[1") << "the end of the file";
    }
    void whatStandsThereIsShownAsACharacter() {
        QFETCH(QByteArray, text);
        QFETCH(QString, found);
        const auto got = read_show(text.toStdString());
        QVERIFY(!got);
        QCOMPARE(QString::fromStdString(got.error().found), found);
    }

    void longTextsAreCutBetweenCharacters() {
        const auto found = [](const std::string& text) {
            return read_show(sample_with("/tolerance/draws", text)).error().found;
        };
        const std::string a(58, 'a');
        QCOMPARE(found(a), '"' + a + '"');
        QCOMPARE(found(a + "aaa"), '"' + a + "a...");
        QCOMPARE(found(a + "ü"), '"' + a + "...");  // whose second byte would be the 61st
    }

    void columnsCountCharacters() {
        const auto got = read_show("{\"Größe\": x}");
        QVERIFY(!got);
        QCOMPARE(got.error().place, std::string("line 1, column 11"));
    }
};

HOWLMAP_TEST(TestRefusals)
#include "test_refusals.moc"
