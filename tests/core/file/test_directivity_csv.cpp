// SPDX-License-Identifier: GPL-3.0-or-later
// Measured directivities as spreadsheets and measuring programs write them.
#include <fmt/format.h>

#include "core/file/directivity_csv.h"
#include "tests/support/registry.h"

using namespace howlmap;

namespace {
const DirectivityTable kMeasured{{0.0, 90.0, 180.0}, {125.0, 1000.0}, {{0.0, -1.5, -2.25}, {0.0, -6.0, -20.0}}, {}};

/// A line of angles and lines of frequencies, so many cells each.
std::string table_of(int angles, int frequencies) {
    std::string text = "Hz";
    for (int i = 0; i < angles; ++i) text += fmt::format(",{}", 0.25 * i);
    for (int r = 0; r < frequencies; ++r) {
        text += fmt::format("\n{}", 20 + r);
        for (int i = 0; i < angles; ++i) text += ",0";
    }
    return text;
}
}  // namespace

class TestDirectivityCsv : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void everySpellingIsTaken_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("commas") << QByteArray("Hz,0,90,180\n125,0,-1.5,-2.25\n1000,0,-6,-20\n");
        QTest::newRow("semicolons and decimal commas") << QByteArray("Hz;0;90;180\n125;0;-1,5;-2,25\n1000;0;-6;-20");
        QTest::newRow("tabs") << QByteArray("\t0\t90\t180\n125\t+0\t-1.5\t-2,25\n1e3\t0\t-6\t-20\n");
        QTest::newRow("line ends, quotes, blanks, byte order mark")
            << QByteArray("\xEF\xBB\xBF\"Hz\",\"0\", 90 ,180\r\n125,0,\"-1.5\",-2.25\r\n1000,0,-6,-20\r\n");
        QTest::newRow("remarks and empty lines")
            << QByteArray("# measured\n\nHz,0,90,180\n  \n125,0,-1.5,-2.25\n#\n1000,0,-6,-20\n");
    }
    void everySpellingIsTaken() {
        QFETCH(QByteArray, text);
        const auto got = read_directivity_csv(text.toStdString());
        QVERIFY2(got, got ? "" : got.error().message().c_str());
        QVERIFY(got->hz == kMeasured.hz && got->angles_deg == kMeasured.angles_deg && got->db == kMeasured.db);
    }

    void whatIsWrittenIsReadAgain() {
        const std::string text = write_directivity_csv(kMeasured);
        QCOMPARE(text, std::string("Hz,0,90,180\n125,0,-1.5,-2.25\n1000,0,-6,-20\n"));
        const auto got = read_directivity_csv(text);
        QVERIFY(got && got->db == kMeasured.db && got->hz == kMeasured.hz && got->angles_deg == kMeasured.angles_deg);
    }

    void whatIsWrongIsNamed_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("message");
        const auto row = [](const char* name, QByteArray text, const char* message) {
            QTest::newRow(name) << text << message;
        };
        row("nothing", "", "the table: found 0 lines, expected a line of angles and 1 to 512 lines of frequencies");
        row("angles alone", "Hz,0,90\n",
            "the table: found 1 lines, expected a line of angles and 1 to 512 lines of frequencies");
        row("one column", "Hz\n125\n", "line 1: found 1 cells, expected 2 to 513 cells");
        row("a cell too few", "Hz,0,90\n125,0\n", "line 2: found 2 cells, expected 3 cells");
        row("no angle", "Hz,0,x\n125,0,0\n", "line 1, cell 3: found \"x\", expected a number from 0 to 180");
        row("angle too large", "Hz,0,181\n125,0,0\n", "line 1, cell 3: found \"181\", expected a number from 0 to 180");
        row("falling angles", "Hz,0,90,60\n125,0,0,0\n", "line 1, cell 4: found \"60\", expected rising angles");
        row("an angle twice", "Hz,0,0\n125,0,0\n", "line 1, cell 3: found \"0\", expected rising angles");
        row("no frequency", "# x\nHz,0\n,0\n",
            "line 3, cell 1: found \"\", expected a frequency in Hz above the one before");
        row("frequency too low", "Hz,0\n0.5,0\n",
            "line 2, cell 1: found \"0.5\", expected a frequency in Hz above the one before");
        row("falling frequencies", "Hz,0\n125,0\n100,0\n",
            "line 3, cell 1: found \"100\", expected a frequency in Hz above the one before");
        row("no gain", "Hz,0\n125,loud\n", "line 2, cell 2: found \"loud\", expected a number from -60 to 60");
        row("infinite gain", "Hz,0\n125,inf\n", "line 2, cell 2: found \"inf\", expected a number from -60 to 60");
        row("half a number", "Hz,0\n125,1x\n", "line 2, cell 2: found \"1x\", expected a number from -60 to 60");
    }
    void whatIsWrongIsNamed() {
        QFETCH(QByteArray, text);
        QFETCH(QString, message);
        const auto got = read_directivity_csv(text.toStdString());
        QVERIFY(!got);
        QCOMPARE(QString::fromStdString(got.error().message()), message);
    }

    void bothSidesOfTheLimits() {
        QVERIFY(read_directivity_csv(table_of(512, 512)));
        QVERIFY(!read_directivity_csv(table_of(513, 512)));
        QVERIFY(!read_directivity_csv(table_of(512, 513)));
    }
};

HOWLMAP_TEST(TestDirectivityCsv)
#include "test_directivity_csv.moc"
