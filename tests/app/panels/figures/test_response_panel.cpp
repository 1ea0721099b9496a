// SPDX-License-Identifier: GPL-3.0-or-later
// The Response panel: what is read off the curve, and what faders, handles and buttons do to the show.
#include <QComboBox>
#include <QFileDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QSignalSpy>
#include <QTimer>
#include <QToolButton>
#include <QTreeWidget>

#include "app/export/ink.h"
#include "app/panels/response/fader_bank.h"
#include "app/panels/response/filter_handles.h"
#include "app/panels/response/mix_edits.h"
#include "app/panels/response/polarity_list.h"
#include "app/panels/response/response_csv.h"
#include "app/panels/response/response_panel.h"
#include "app/panels/response/response_plot.h"
#include "core/show/find.h"
#include "core/units/bands.h"
#include "tests/app/panels/figures/window_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

/// Triggers an entry of a button's menu that asks for a file, and gives it this name.
void save_as(QToolButton& button, int entry, const QString& name) {
    QTimer::singleShot(0, &button, [name] {
        auto* dialog = qobject_cast<QFileDialog*>(QApplication::activeModalWidget());
        QVERIFY(dialog);
        dialog->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))->setText(name);
        QMetaObject::invokeMethod(dialog, "accept");
    });
    button.menu()->actions().at(entry)->trigger();
}

QByteArray beginning_of(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.read(200) : QByteArray();
}

}  // namespace

class TestResponsePanel : public QObject {
    Q_OBJECT
    test::WindowFixture stage_;
    ResponsePanel* panel_ = nullptr;

    const Mix& mix() { return *find_by_id(stage_.show().mixes, panel_->mix()); }
    int steps() { return stage_.document().undo_stack().count(); }

  private Q_SLOTS:
    void initTestCase() {
        stage_.open("fiddle-and-wedge", 20, "response");
        panel_ = stage_.window()->findChild<ResponsePanel*>();
        stage_.settle();
        QTRY_VERIFY_WITH_TIMEOUT(panel_->plot().curves(), 30000);
    }
    void cleanupTestCase() { stage_.close(); }

    void curveStandsAtTheMarginWhereItRings() {
        const auto result = stage_.window()->analysis().result();
        QVERIFY(!result->rings.empty());
        const Ring& first = result->rings.front();
        const auto gain = panel_->plot().gain_at(first.hz);
        QVERIFY(gain);
        // At a ring of a single largest eigenlocus its gain is the margin, but for the step of the drawn grid.
        QVERIFY2(std::abs(*gain + first.margin_db) < 0.5, qPrintable(QString::number(*gain + first.margin_db)));
    }
    void worstRingIsNamedBesideItsMark() {
        const Ring& first = stage_.window()->analysis().result()->rings.front();
        panel_->plot().replot();
        QVERIFY(!panel_->plot().ring_names().isEmpty());
        QVERIFY(panel_->plot().ring_names().first().contains(QString::fromStdString(first.note)));
    }
    void cursorReadsFrequencyNoteCentsAndGain() {
        ResponsePlot& plot = panel_->plot();
        const QPoint at(qRound(plot.x_of(440.0)), plot.axisRect()->rect().center().y());
        QTest::mouseMove(&plot, at);
        const QString text = stage_.find<QLabel>("reading")->text();
        QVERIFY2(text.contains(QStringLiteral("Hz")) && text.contains(QStringLiteral("A4")) &&
                     text.contains(QStringLiteral(" c ")) && text.endsWith(QStringLiteral("dB")),
                 qPrintable(text));
    }
    void zoomPanAndHome() {
        ResponsePlot& plot = panel_->plot();
        const QCPRange all = plot.xAxis->range();
        QTest::keyClick(&plot, Qt::Key_Plus);
        QVERIFY(plot.xAxis->range().size() < all.size());
        const double left = plot.xAxis->range().lower;
        QTest::keyClick(&plot, Qt::Key_Right);
        QVERIFY(plot.xAxis->range().lower > left);
        QTest::keyClick(&plot, Qt::Key_Home);
        QVERIFY(std::abs(plot.xAxis->range().upper - all.upper) < 1e-6);
    }
    void aFaderDragIsOneStepAndEscapesNothing() {
        FaderBank& faders = panel_->faders();
        const int band = 14, before = steps();
        const QPoint knob = faders.knob(band);
        QTest::mousePress(&faders, Qt::LeftButton, {}, knob);
        for (int y = 1; y <= 10; ++y) QTest::mouseMove(&faders, knob + QPoint(0, y));
        QTest::mouseRelease(&faders, Qt::LeftButton, {}, knob + QPoint(0, 10));
        QCOMPARE(steps(), before + 1);
        QVERIFY(mix().graphic_eq.at(band) < 0.0);
        stage_.document().undo();
        QVERIFY(!mix().graphic_eq.contains(band));
    }
    void flatTakesAllFadersBack() {
        stage_.document().edit(QStringLiteral("Two bands"), [this](Show& show) {
            set_band(show, panel_->mix(), 10, -3.0);
            set_band(show, panel_->mix(), 12, -6.0);
        });
        stage_.find<QToolButton>("flat")->click();
        QCOMPARE(band_of(stage_.show(), panel_->mix(), 10), 0.0);
        QCOMPARE(band_of(stage_.show(), panel_->mix(), 12), 0.0);
        stage_.document().undo();
        QCOMPARE(band_of(stage_.show(), panel_->mix(), 12), -6.0);
        stage_.document().undo();
    }
    void beforeAndAfterIsOnlyLookedAt() {
        const int before = steps();
        stage_.find<QToolButton>("compare")->click();
        QVERIFY(stage_.window()->spotlight().preview());
        stage_.find<QToolButton>("compare")->click();
        QVERIFY(!stage_.window()->spotlight().preview());
        QCOMPARE(steps(), before);
    }
    void aNotchHasAHandleThatMovesIt() {
        stage_.document().edit(QStringLiteral("Notch"), [this](Show& show) { add_notch(show, panel_->mix(), 500.0); });
        const double before = mix().notches.front().hz;
        const int count = steps();
        const QPoint handle = panel_->handles().handle(0);
        QTest::mousePress(&panel_->plot(), Qt::LeftButton, {}, handle);
        for (int x = 1; x <= 8; ++x) QTest::mouseMove(&panel_->plot(), handle + QPoint(5 * x, 0));
        QTest::mouseRelease(&panel_->plot(), Qt::LeftButton, {}, handle + QPoint(40, 0));
        QVERIFY(mix().notches.front().hz > before);
        QCOMPARE(steps(), count + 1);
        stage_.document().undo();
        stage_.document().undo();
        QVERIFY(mix().notches.empty());
    }
    void whatTouchesNoFilterLeavesThePlotAlone() {
        Document document;
        Show show = stage_.show();
        const std::string mix = show.mixes.front().id;
        add_notch(show, mix, 500.0);
        document.replace(show, {}, false);
        ResponsePlot plot;
        FilterHandles handles(document, plot);
        handles.set_mix(mix);
        plot.resize(400, 300);
        plot.show();
        QVERIFY(QTest::qWaitForWindowExposed(&plot));
        QTest::qWait(20);  // what was asked for so far
        QSignalSpy drawn(&plot, &QCustomPlot::afterReplot);
        document.edit(QStringLiteral("Move"), [](Show& after) { after.loudspeakers.front().position.x += 0.5; });
        handles.set_mix(mix);
        QTest::qWait(20);
        QCOMPARE(drawn.count(), 0);
        const QPoint before = handles.handle(0);
        document.edit(QStringLiteral("Notch"), [&](Show& after) { set_notch(after, mix, 0, 700.0, -6.0); });
        handles.set_mix(mix);
        QTRY_VERIFY(!drawn.empty());
        QVERIFY(handles.handle(0).x() > before.x());
    }
    void handlesFollowTheColoursOfTheWindow() {
        ResponsePlot& plot = panel_->plot();
        stage_.document().edit(QStringLiteral("Notch"), [this](Show& show) { add_notch(show, panel_->mix(), 500.0); });
        const auto paper = [&] {
            for (int i = 0; i < plot.itemCount(); ++i)
                if (const auto* tracer = qobject_cast<QCPItemTracer*>(plot.item(i))) return tracer->brush().color();
            return QColor();
        };
        QPalette dark = plot.palette();
        dark.setColor(QPalette::Base, QColor(20, 20, 20));
        dark.setColor(QPalette::Window, QColor(30, 30, 30));
        QVERIFY(paper() != Ink::from(dark).paper);
        plot.setPalette(dark);
        QCOMPARE(paper(), Ink::from(dark).paper);
        plot.setPalette({});
        stage_.document().undo();
    }
    void theHighPassHasAHandleThatMovesIt() {
        stage_.document().edit(QStringLiteral("High-pass"),
                               [this](Show& show) { set_high_pass(show, panel_->mix(), 80.0); });
        const int count = steps();
        const QPoint handle = panel_->handles().handle(mix().notches.size());
        QTest::mousePress(&panel_->plot(), Qt::LeftButton, {}, handle);
        for (int x = 1; x <= 8; ++x) QTest::mouseMove(&panel_->plot(), handle + QPoint(5 * x, 0));
        QTest::mouseRelease(&panel_->plot(), Qt::LeftButton, {}, handle + QPoint(40, 0));
        const double there = panel_->plot().xAxis->pixelToCoord(handle.x() + 40);
        QVERIFY(mix().high_pass && std::abs(mix().high_pass->hz - there) < 1.0);
        QCOMPARE(steps(), count + 1);
        stage_.document().undo();
        QCOMPARE(mix().high_pass->hz, 80.0);
        stage_.document().undo();
        QVERIFY(!mix().high_pass);
    }
    void anEqualiserIsCopiedToAnotherMix() {
        stage_.document().edit(QStringLiteral("Another mix"), [this](Show& show) {
            set_band(show, panel_->mix(), 10, -4.0);
            Mix other;
            other.id = "other";
            other.number = 9;
            other.name = "Other";
            show.mixes.push_back(other);
        });
        const int count = steps();
        QMenu* menu = stage_.find<QToolButton>("copy_to")->menu();
        Q_EMIT menu->aboutToShow();
        QCOMPARE(menu->actions().size(), 1);
        QVERIFY(menu->actions().front()->text().contains(QStringLiteral("Other")));
        menu->actions().front()->trigger();
        QCOMPARE(band_of(stage_.show(), "other", 10), -4.0);
        QCOMPARE(steps(), count + 1);
        stage_.document().undo();
        QCOMPARE(band_of(stage_.show(), "other", 10), 0.0);
        stage_.document().undo();
    }
    void curvesAreSavedAsPictureAndTable() {
        QTemporaryDir folder;
        auto& save = *stage_.find<QToolButton>("save_curves");
        const QString png = folder.filePath(QStringLiteral("c.png")), pdf = folder.filePath(QStringLiteral("c.pdf")),
                      csv = folder.filePath(QStringLiteral("c.csv"));
        save_as(save, 0, png);
        QVERIFY(QImage(png).width() > 400);
        save_as(save, 0, pdf);
        QVERIFY(beginning_of(pdf).startsWith("%PDF"));
        QTRY_VERIFY_WITH_TIMEOUT(panel_->plot().curves(), 30000);
        save_as(save, 1, csv);
        QVERIFY2(beginning_of(csv).contains("Hz") || beginning_of(csv).contains("hz"), beginning_of(csv));
    }
    void curvesOfAPartCanBeChosen() {
        auto* choice = stage_.find<QComboBox>("curve_choice");
        QVERIFY(choice->count() >= 4);  // all, mix, input, pair
        choice->setCurrentIndex(1);
        Q_EMIT choice->activated(1);
        QCOMPARE(stage_.window()->response().open().mix, stage_.show().mixes.front().id);
        choice->setCurrentIndex(0);
        Q_EMIT choice->activated(0);
        QCOMPARE(stage_.window()->response().open(), OpenLoops{});
    }
    void tableHasARowAFrequency() {
        const std::string csv = response_csv(*panel_->plot().curves(), nullptr);
        QCOMPARE(static_cast<std::size_t>(std::ranges::count(csv, '\n')), panel_->plot().curves()->hz.size() + 1);
    }
    void polarityTellsWhereTheRingGoes() {
        using Effect = PolarityList::Effect;
        QCOMPARE(PolarityList::words(Effect{1.0, 0.2, 188.0, 271.0}),
                 QStringLiteral("only moves from 188 Hz to 271 Hz"));
        QCOMPARE(PolarityList::words(Effect{4.0, 3.0, 188.0, 271.0}), QStringLiteral("from 188 Hz to 271 Hz"));
        QCOMPARE(PolarityList::words(Effect{0.0, 0.0, 188.0, 189.0}), QStringLiteral("stays at 188 Hz"));
        stage_.find<QToolButton>("show_polarity")->click();
        auto* list = stage_.find<QTreeWidget>("polarities");
        QTRY_VERIFY_WITH_TIMEOUT(list->topLevelItem(0)->text(3).contains(QStringLiteral("Hz")), 60000);
        stage_.find<QToolButton>("show_polarity")->click();
    }
};

HOWLMAP_TEST(TestResponsePanel)

}  // namespace howlmap::app

#include "test_response_panel.moc"
