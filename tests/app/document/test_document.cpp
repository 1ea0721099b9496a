// SPDX-License-Identifier: GPL-3.0-or-later
#include <QSignalSpy>

#include "app/document/analysis_service.h"
#include "app/document/cure_service.h"
#include "app/document/document.h"
#include "app/document/pace.h"
#include "app/document/response_service.h"
#include "app/document/spotlight.h"
#include "core/file/write.h"
#include "tests/app/document/patience.h"
#include "tests/support/plain_stage.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {
void add_voice(Show& show) {
    Input input;
    input.id = "voice";
    input.name = "Voice";
    show.inputs.push_back(input);
}

Edit rename(const char* name) {
    return [name](Show& show) { show.inputs.front().name = name; };
}

/// A microphone, a wedge and a send.
Show one_loop() {
    Show show = test::plain_stage(1, 1);
    test::send(show, 0, 0, 94.0);
    show.tolerance.draws = 400;
    return show;
}

}  // namespace

class TestDocument : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void everyStepGoesBackAndForth() {
        Document document;
        const std::string start = write_show(document.show());
        QVERIFY(document.edit(QStringLiteral("Add voice"), add_voice));
        QVERIFY(document.edit(QStringLiteral("Rename"), rename("Ada")));
        const std::string end = write_show(document.show());
        document.undo();
        document.undo();
        QCOMPARE(write_show(document.show()), start);
        document.redo();
        QCOMPARE(document.undo_stack().undoText(), QStringLiteral("Add voice"));
        document.redo();
        QCOMPARE(write_show(document.show()), end);
    }
    void anEditThatChangesNothingIsNoStep() {
        Document document;
        QVERIFY(!document.edit(QStringLiteral("Nothing"), [](Show&) {}));
        QCOMPARE(document.undo_stack().count(), 0);
    }
    void aGestureIsOneStepHoweverLong() {
        Document document;
        document.edit(QStringLiteral("Add voice"), add_voice);
        document.begin_gesture(QStringLiteral("Move"));
        for (int i = 1; i <= 100; ++i)
            document.update_gesture([i](Show& show) { show.inputs.front().position.x = 0.01 * i; });
        QVERIFY(document.end_gesture());
        QCOMPARE(document.undo_stack().count(), 2);
        QCOMPARE(document.show().inputs.front().position.x, 1.0);
        document.undo();
        QCOMPARE(document.show().inputs.front().position.x, 0.0);
    }
    void undoInTheMiddleOfAGestureGivesItUp() {
        Document document;
        document.edit(QStringLiteral("Add voice"), add_voice);
        document.begin_gesture(QStringLiteral("Move"));
        document.update_gesture(rename("Moved"));
        document.undo();
        QVERIFY(!document.in_gesture());
        QCOMPARE(document.show().inputs.front().name, std::string("Voice"));
        QCOMPARE(document.undo_stack().count(), 1);
    }
    void tellsTrulyWhetherItIsModified() {
        Document document;
        QSignalSpy spy(&document, &Document::modified_changed);
        document.edit(QStringLiteral("Add voice"), add_voice);
        QVERIFY(document.modified());
        document.set_clean();
        QVERIFY(!document.modified());
        document.undo();
        QVERIFY(document.modified());
        document.redo();
        QVERIFY(!document.modified());
        document.set_unsaved();
        QVERIFY(document.modified());
        document.replace({}, {}, false);
        QVERIFY(!document.modified());
        QVERIFY(spy.count() >= 5);
    }
};

class TestAnalysisService : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void figuresFollowTheLastEdit() {
        Document document;
        AnalysisService analysis(document);
        document.replace({}, {}, false);
        for (int i = 0; i < 20; ++i)
            document.edit(QStringLiteral("Title"), [i](Show& show) { show.title = std::to_string(i); });
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && analysis.fresh(), kPatienceMs);
        QCOMPARE(analysis.result()->title, std::string("19"));
        QVERIFY(!analysis.busy());
    }
    void whatTouchesNoLoopKeepsTheDraws() {
        Document document;
        AnalysisService analysis(document);
        document.replace(one_loop(), {}, false);
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && analysis.result()->tolerance, kPatienceMs);
        const auto before = *analysis.result()->tolerance;
        QVERIFY(before.margin_p05_db);
        QSignalSpy drawing(&analysis, &AnalysisService::progress);
        document.edit(QStringLiteral("Rename"), rename("Ada"));
        document.edit(QStringLiteral("Title"), [](Show& show) { show.title = "Tonight"; });
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        QCOMPARE(analysis.result()->title, std::string("Tonight"));
        QCOMPARE(analysis.result()->tolerance->margin_p05_db, before.margin_p05_db);
        QCOMPARE(drawing.count(), 0);
        document.edit(QStringLiteral("Louder"), [](Show& show) { show.mixes.front().sends.front().level_db += 1.0; });
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        QVERIFY(std::abs(*analysis.result()->tolerance->margin_p05_db - (*before.margin_p05_db - 1.0)) < 0.01);
        QVERIFY(drawing.count() > 0);
    }
    void theMarginGoesAheadOfTheRingsUnderTheHand() {
        Document document;
        AnalysisService analysis(document);
        document.replace(one_loop(), {}, false);
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted(), kPatienceMs);
        const double before = analysis.margin_db().value();
        QSignalSpy moved(&analysis, &AnalysisService::margin_moved), updated(&analysis, &AnalysisService::updated);
        document.begin_gesture(QStringLiteral("Louder"));
        for (int i = 1; i <= 3; ++i) {
            document.update_gesture([i](Show& show) { show.mixes.front().sends.front().level_db += i; });
            QTRY_COMPARE_WITH_TIMEOUT(moved.count(), i, kPatienceMs);
            QVERIFY(std::abs(*analysis.margin_db() - (before - i)) < 0.02);
        }
        QVERIFY(updated.count() < 3);
        document.end_gesture();
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        QVERIFY(std::abs(*analysis.result()->margin_db - (before - 3.0)) < 0.002);
        QCOMPARE(analysis.margin_db(), analysis.result()->margin_db);
    }
    void theMarginGoesWithItsShow() {
        Document document;
        AnalysisService analysis(document);
        document.replace(one_loop(), {}, false);
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted(), kPatienceMs);
        QSignalSpy moved(&analysis, &AnalysisService::margin_moved);
        document.begin_gesture(QStringLiteral("Louder"));
        document.update_gesture([](Show& show) { show.mixes.front().sends.front().level_db += 1.0; });
        QTRY_VERIFY_WITH_TIMEOUT(moved.count() > 0, kPatienceMs);
        document.end_gesture();
        document.replace(one_loop(), {}, false);
        QVERIFY(!analysis.margin_db());
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted(), kPatienceMs);
    }
    void whatIsUndoneIsRemembered() {
        Document document;
        AnalysisService analysis(document);
        document.replace(one_loop(), {}, false);
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && analysis.result()->tolerance, kPatienceMs);
        const auto before = *analysis.result()->tolerance;
        document.edit(QStringLiteral("Louder"), [](Show& show) { show.mixes.front().sends.front().level_db += 1.0; });
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        QSignalSpy drawing(&analysis, &AnalysisService::progress);
        document.undo();
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        QCOMPARE(analysis.result()->tolerance->margin_p05_db, before.margin_p05_db);
        document.redo();
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        QCOMPARE(drawing.count(), 0);
    }
    void aNameGivenWhileTheDrawsRunDoesNotStopThem() {
        Document document;
        AnalysisService analysis(document);
        Show show = one_loop();
        show.tolerance.draws = 20000;
        document.replace(std::move(show), {}, false);
        QSignalSpy drawing(&analysis, &AnalysisService::progress);
        QTRY_VERIFY_WITH_TIMEOUT(drawing.count() > 0, kPatienceMs);
        document.edit(QStringLiteral("Rename"), rename("Ada"));
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        double last = 0.0;
        for (const auto& told : drawing) {  // one run, from 0 to 1, and not a second from the beginning
            QVERIFY(told[0].toDouble() > last - 0.5);
            last = std::max(last, told[0].toDouble());
        }
        QCOMPARE(analysis.result()->tolerance->draws, 20000);
    }
    void mayGoInTheMiddleOfItsWork() {
        for (int i = 0; i < 20; ++i) {
            Document document;
            AnalysisService analysis(document);
            document.edit(QStringLiteral("Add voice"), add_voice);
            QTest::qWait(i * 5);
        }
    }
};

class TestResponseService : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void aNameLeavesTheCurvesAsTheyAre() {
        Document document;
        AnalysisService analysis(document);
        Spotlight spotlight;
        ResponseService response(document, analysis, spotlight);
        document.replace(one_loop(), {}, false);
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && response.band(), kPatienceMs);
        QTest::qWait(50);  // the curves are drawn once more with the rings in them
        const auto curves = response.curves();
        const auto band = response.band();
        document.edit(QStringLiteral("Rename"), rename("Ada"));
        QTRY_VERIFY_WITH_TIMEOUT(analysis.counted() && !analysis.busy(), kPatienceMs);
        QTest::qWait(400);
        QCOMPARE(response.curves(), curves);
        QCOMPARE(response.band(), band);
        document.edit(QStringLiteral("Louder"), [](Show& show) { show.mixes.front().sends.front().level_db += 1.0; });
        QTRY_VERIFY_WITH_TIMEOUT(response.curves() != curves && response.band() != band, kPatienceMs);
    }
    void curvesOfOneShowAreNeverThoseOfTheNext() {
        Document document;
        AnalysisService analysis(document);
        Spotlight spotlight;
        ResponseService response(document, analysis, spotlight);
        document.replace(one_loop(), {}, false);
        QThread::msleep(300);  // the curves are ready and wait to be handed over
        document.replace(test::plain_stage(1, 1), {}, false);
        QTRY_VERIFY_WITH_TIMEOUT(response.curves(), kPatienceMs);
        QVERIFY(response.curves()->hz.empty());
    }
};

class TestCureService : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    /// Of a search that was given up nothing arrives any more, though it was for the same show.
    void whatWasGivenUpIsNotHandedOver() {
        Document document;
        AnalysisService analysis(document);
        CureService cures(document, analysis);
        document.replace(one_loop(), {}, false);
        cures.set_wanted(true);
        QTRY_VERIFY_WITH_TIMEOUT(!cures.cures().empty() && !cures.report(), kPatienceMs);
        QThread::msleep(1500);  // more are found and wait to be handed over
        const auto before = cures.cures();
        cures.look_again();
        QTest::qWait(200);
        QCOMPARE(cures.cures(), before);
        QTRY_VERIFY_WITH_TIMEOUT(cures.report(), kPatienceMs);
    }
};

class TestPace : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void tellsAtOnceWhileNothingIsDragged() {
        Document document;
        int told = 0;
        Pace pace(document, [&] { ++told; });
        for (int i = 0; i < 10; ++i) pace.ask();
        QCOMPARE(told, 10);
    }
    void tellsAtAPaceWhileSomethingIs() {
        Document document;
        int told = 0;
        Pace pace(document, [&] { ++told; });
        document.begin_gesture(QStringLiteral("Move"));
        QElapsedTimer clock;
        clock.start();
        int asked = 0;
        for (; clock.elapsed() < 400; ++asked) {
            pace.ask();
            QTest::qWait(2);
        }
        QVERIFY(asked > 20);
        QVERIFY2(told >= 2 && told <= static_cast<int>(clock.elapsed()) / 40 + 2, qPrintable(QString::number(told)));
        pace.ask();
        const int before = told;
        document.end_gesture();  // nothing that was asked for gets lost
        pace.ask();
        QVERIFY(told > before);
    }
};

HOWLMAP_TEST(TestDocument)
HOWLMAP_TEST(TestCureService)
HOWLMAP_TEST(TestPace)
HOWLMAP_TEST(TestResponseService)
HOWLMAP_TEST(TestAnalysisService)

}  // namespace howlmap::app

#include "test_document.moc"
