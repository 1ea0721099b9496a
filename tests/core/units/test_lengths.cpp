// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/lengths.h"
#include "tests/support/registry.h"

using namespace howlmap;

class TestLengths : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void typed_lengths_data() {
        QTest::addColumn<QString>("text");
        QTest::addColumn<double>("metres");
        const auto row = [](const char* text, double metres) {
            QTest::newRow(text) << QString::fromUtf8(text) << metres;
        };
        row("1.07", 1.07);
        row("1,07 m", 1.07);
        row("107 cm", 1.07);
        row("850mm", 0.85);
        row("1 m 5 cm", 1.05);
        row("3' 6\"", 1.0668);
        row("3'6", 1.0668);
        row("3ft 6in", 1.0668);
        row("3 feet 6 inches", 1.0668);
        row("3' 6 1/2\"", 1.0795);
        row("1/2\"", 0.0127);
        row("42\"", 1.0668);
        row("-2'", -0.6096);
        row("\u22121.5 m", -1.5);
        row("5\u2032 6\u2033", 1.6764);
        row("+0.3", 0.3);
    }
    void typed_lengths() {
        QFETCH(QString, text);
        QFETCH(double, metres);
        const auto read = parse_length(text.toStdString(), LengthUnit::metres);
        QVERIFY2(read.has_value(), read ? "" : read.error().c_str());
        QVERIFY(std::abs(*read - metres) < 1e-12);
    }

    void a_plain_number_is_in_the_unit_of_the_show() {
        QCOMPARE(*parse_length("3", LengthUnit::feet), 3 * 0.3048);
        QCOMPARE(*parse_length("3", LengthUnit::metres), 3.0);
    }

    void nonsense_is_refused_data() {
        QTest::addColumn<QString>("text");
        for (const char* text : {"", " ", "m", "three", "1.2.3", "1,234.5", "6\" 3'", "3' 6' ", "1 m 2", "5 miles",
                                 "1//2\"", "1/0\"", "--1", "1e5", "nan"})
            QTest::newRow(text) << QString::fromUtf8(text);
    }
    void nonsense_is_refused() {
        QFETCH(QString, text);
        QVERIFY(!parse_length(text.toStdString(), LengthUnit::metres));
    }

    void lengths_are_read_back_as_they_are_shown() {
        for (double metres = -3.0; metres <= 3.0; metres += 0.0371) {
            QVERIFY(std::abs(*parse_length(metres_text(metres), LengthUnit::feet) - metres) <= 0.005 + 1e-9);
            QVERIFY(std::abs(*parse_length(feet_text(metres), LengthUnit::metres) - metres) <=
                    kMetresPerInch / 4 + 1e-9);
        }
        QCOMPARE(metres_text(-0.001), std::string("0.00 m"));
        QCOMPARE(feet_text(1.0668), std::string("3' 6\""));
        QCOMPARE(feet_text(0.3047), std::string("1' 0\""));
    }
};

HOWLMAP_TEST(TestLengths)
#include "test_lengths.moc"
