// SPDX-License-Identifier: GPL-3.0-or-later
// One soundcheck from end to end, by mouse and keys, against what the command line says.
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QListView>
#include <QTemporaryDir>
#include <QToolButton>
#include <QTreeWidget>

#include "app/panels/response/fader_bank.h"
#include "app/panels/response/response_panel.h"
#include "app/window/dock_layout.h"
#include "app/window/file_actions.h"
#include "app/window/main_window.h"
#include "core/file/write.h"
#include "core/show/find.h"
#include "core/units/bands.h"
#include "tests/support/registry.h"
#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {

QJsonObject checked(const Show& show, const QTemporaryDir& folder) {
    const QString name = folder.filePath(QStringLiteral("now.howlmap"));
    if (!save_atomically(name.toStdString(), write_show(show))) return {};
    const test::Ended check = test::run_to_end(qEnvironmentVariable("HOWLMAP_PROGRAM"),
                                               {QStringLiteral("check"), name, QStringLiteral("--json")});
    return QJsonDocument::fromJson(check.out).object();
}

QString one_digit(double db) { return QString::number(db, 'f', 1) + QStringLiteral(" dB"); }

}  // namespace

class TestWalk : public QObject {
    Q_OBJECT
    MainWindow* window_ = nullptr;
    QTemporaryDir folder_;

    template <class Widget>
    Widget* find(const char* name) {
        return window_->findChild<Widget*>(QLatin1StringView(name));
    }
    void settle() { QTRY_VERIFY_WITH_TIMEOUT(window_->analysis().counted() && window_->analysis().fresh(), 120000); }
    void compare_with_check() {
        settle();
        const QJsonObject figures = checked(window_->document().show(), folder_);
        const QJsonObject tolerance = figures[QStringLiteral("tolerance")].toObject();
        const QString drawn = find<QLabel>("margin_as_drawn")->text(),
                      counted = find<QLabel>("margin_to_count_on")->text();
        QVERIFY2(drawn.contains(one_digit(figures[QStringLiteral("margin_db")].toDouble())), qPrintable(drawn));
        QVERIFY2(counted.contains(one_digit(tolerance[QStringLiteral("margin_p05_db")].toDouble())),
                 qPrintable(counted));
        const QJsonObject first = figures[QStringLiteral("rings")].toArray()[0].toObject();
        const QString ring = find<QLabel>("first_ring")->text();
        QVERIFY2(ring.contains(first[QStringLiteral("note")].toString()), qPrintable(ring));
    }

  private Q_SLOTS:
    void initTestCase() {
        window_ = new MainWindow;
        window_->resize(1280, 800);
        window_->show();
        QVERIFY(QTest::qWaitForWindowExposed(window_));
        QVERIFY(window_->files().open_example(QStringLiteral(":/examples/folk-band-six.howlmap")));
        window_->document().edit(QStringLiteral("Fewer draws"), [](Show& show) { show.tolerance.draws = 100; });
        window_->document().set_clean();
    }
    void cleanupTestCase() {
        window_->document().set_clean();
        delete window_;
    }

    void findsTheFirstRing() {
        settle();
        window_->docks().bring_up(QStringLiteral("loops"));
        auto* list = find<QListView>("rings");
        QTRY_VERIFY(list->model()->rowCount() > 0);
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(0, 0)).center());
        const auto result = window_->analysis().result();
        QVERIFY(window_->spotlight().ring());
        QCOMPARE(window_->spotlight().ring()->hz, result->rings.front().hz);
        compare_with_check();
    }
    void seesWhoMakesIt() {
        const Ring ring = *window_->spotlight().ring();
        const QString why = find<QLabel>("ring_why")->text();
        const Show& show = window_->document().show();
        QVERIFY(why.contains(QString::fromStdString(find_by_id(show.loudspeakers, ring.strongest_loudspeaker)->name)));
        QVERIFY(why.contains(QString::fromStdString(find_by_id(show.inputs, ring.strongest_input)->name)));
    }
    void pullsItsBand() {
        window_->docks().bring_up(QStringLiteral("response"));
        auto* panel = window_->findChild<ResponsePanel*>();
        const Ring ring = *window_->spotlight().ring();
        QCOMPARE(panel->mix(), ring.strongest_mix);
        const int band = third_octave_of(ring.band_hz), steps = window_->document().undo_stack().count();
        const double before = *window_->analysis().result()->margin_db;
        FaderBank& faders = panel->faders();
        QTRY_VERIFY(faders.knob(band).x() > 0);
        const QPoint knob = faders.knob(band);
        QTest::mousePress(&faders, Qt::LeftButton, {}, knob);
        for (int y = 1; y <= 12; ++y) QTest::mouseMove(&faders, knob + QPoint(0, y));
        QVERIFY(window_->document().in_gesture());
        QTest::mouseRelease(&faders, Qt::LeftButton, {}, knob + QPoint(0, 12));
        QCOMPARE(window_->document().undo_stack().count(), steps + 1);
        QVERIFY(find_by_id(window_->document().show().mixes, ring.strongest_mix)->graphic_eq.at(band) < 0.0);
        settle();
        QVERIFY(*window_->analysis().result()->margin_db != before);
        compare_with_check();
    }
    void flipsPolarity() {
        const Ring ring = window_->analysis().result()->rings.front();
        find<QToolButton>("show_polarity")->click();
        auto* list = find<QTreeWidget>("polarities");
        const int row = index_by_id(window_->document().show().mixes, ring.strongest_mix);
        QTreeWidgetItem* item = list->topLevelItem(list->topLevelItemCount() -
                                                   static_cast<int>(window_->document().show().mixes.size()) + row);
        list->scrollToItem(item);
        list->setCurrentItem(item);
        list->setFocus();
        QTest::keyClick(list, Qt::Key_Space);
        QTRY_COMPARE(find_by_id(window_->document().show().mixes, ring.strongest_mix)->polarity, Polarity::inverted);
        compare_with_check();
    }
    void takesItAllBack() {
        while (window_->document().undo_stack().canUndo()) window_->document().undo();
        window_->document().edit(QStringLiteral("Fewer draws"), [](Show& show) { show.tolerance.draws = 100; });
        compare_with_check();
    }
};

HOWLMAP_TEST(TestWalk)

}  // namespace howlmap::app

#include "test_walk.moc"
