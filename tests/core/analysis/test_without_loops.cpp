// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/analysis.h"
#include "tests/support/registry.h"

namespace howlmap {

/// Shows in which nothing can ring are what everybody begins with.
class TestWithoutLoops : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void holdsWithoutAMargin_data() {
        QTest::addColumn<bool>("with_room");
        QTest::addColumn<bool>("with_input");
        QTest::newRow("empty") << false << false;
        QTest::newRow("empty, in a room") << true << false;
        QTest::newRow("an input that is sent nowhere") << false << true;
    }
    void holdsWithoutAMargin() {
        QFETCH(bool, with_room);
        QFETCH(bool, with_input);
        Show show;
        if (with_room) show.stage.room.emplace();
        if (with_input) show.inputs.emplace_back().id = "voice";
        const auto result = analyse(show);
        QVERIFY(result);
        QVERIFY(!result->margin_db && !result->worst_phase_margin_db && result->rings.empty() && result->pairs.empty());
        QVERIFY(!result->tolerance->margin_p05_db);
        QCOMPARE(result->verdict, Verdict::holds);
    }
};

HOWLMAP_TEST(TestWithoutLoops)

}  // namespace howlmap

#include "test_without_loops.moc"
