// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QAction>
#include <QDockWidget>
#include <QDropEvent>
#include <QLabel>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "app/panels/panel_table.h"
#include "app/settings/preferences.h"
#include "app/window/about.h"
#include "app/window/action_table.h"
#include "app/window/dock_layout.h"
#include "app/window/file_actions.h"
#include "app/window/help_viewer.h"
#include "app/window/main_window.h"
#include "app/window/recent_files.h"
#include "core/file/write.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

const Edit kRetitle = [](Show& show) { show.title = "changed"; };

/// Answers the next message box by one of its buttons, and keeps what it said.
void answer(QMessageBox::StandardButton button, QString* said = nullptr) {
    QTimer::singleShot(0, qApp, [button, said] {
        auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        QVERIFY(box);
        if (said) *said = box->text() + u'\n' + box->informativeText();
        box->button(button)->click();
    });
}

void drop_on(MainWindow& window, const QStringList& files) {
    QMimeData data;
    QList<QUrl> urls;
    for (const QString& file : files) urls.append(QUrl::fromLocalFile(file));
    data.setUrls(urls);
    // A drop goes to whatever took the drag that came in before it.
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &enter);
    QVERIFY(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&window, &drop);
}

void save_show(const QString& name, const char* title) {
    Show show;
    show.title = title;
    QVERIFY(save_atomically(name.toStdString(), write_show(show)));
}

}  // namespace

class TestMainWindow : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;
    QString path(const char* name) { return folder_.filePath(QLatin1StringView(name)); }

  private Q_SLOTS:
    void init() {
        QDir(QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation)).removeRecursively();
        QDir(Autosave::folder()).removeRecursively();
    }

    void everyActionIsExplained() {
        MainWindow window;
        for (const QAction* action : window.findChildren<QAction*>()) {
            if (action->isSeparator() || action->text().isEmpty()) continue;
            const QByteArray name = action->text().toUtf8();
            if (action->parent() && action->parent()->inherits("QLineEdit")) continue;
            QVERIFY2(!action->toolTip().isEmpty(), name);
            if (!action->shortcut().isEmpty() && action->objectName().contains(u'.'))
                QVERIFY2(action->toolTip().contains(action->shortcut().toString(QKeySequence::NativeText)), name);
        }
        for (const QAction* action : window.actions_table().all()) {
            QVERIFY2(!action->statusTip().isEmpty(), qPrintable(action->objectName()));
            QVERIFY2(!action->whatsThis().isEmpty(), qPrintable(action->objectName()));
        }
    }
    void noTwoShortcutsClash() {
        MainWindow window;
        QHash<QString, QString> taken;
        for (const QAction* action : window.actions()) {
            for (const QKeySequence& keys : action->shortcuts()) {
                const QString text = keys.toString();
                QVERIFY2(!taken.contains(text), qPrintable(text + u' ' + taken.value(text) + u' ' + action->text()));
                taken[text] = action->text();
            }
        }
        QVERIFY(taken.size() > 15);
    }
    void everyPanelHasADockANameAndHelp() {
        MainWindow window;
        for (const PanelEntry& entry : panel_table()) {
            const QString id = QLatin1StringView(entry.id);
            QDockWidget* dock = window.docks().dock(id);
            QVERIFY2(dock, entry.id);
            QVERIFY(!dock->accessibleName().isEmpty() && !dock->widget()->accessibleName().isEmpty());
            QVERIFY(dock->features() & QDockWidget::DockWidgetFloatable);
            QVERIFY2(!HelpViewer::address(id).isEmpty(), entry.id);
        }
    }
    void panelsBehindOthersRest() {
        MainWindow window;
        window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&window));
        const auto widget = [&](const char* id) { return window.docks().dock(QLatin1StringView(id))->widget(); };
        window.docks().bring_up(QStringLiteral("inputs"));
        QTRY_VERIFY(widget("inputs")->isVisible() && !widget("mixes")->isVisible());
        window.docks().bring_up(QStringLiteral("mixes"));
        QTRY_VERIFY(widget("mixes")->isVisible() && !widget("inputs")->isVisible());
        QVERIFY(widget("mixes") == window.focusWidget() || widget("mixes")->isAncestorOf(window.focusWidget()));
    }
    void theFirstStartOpensTheFolkBandAsACopy() {
        MainWindow window;
        window.start({});
        QVERIFY(window.document().read_only());
        QVERIFY(window.document().path().isEmpty());
        QVERIFY(!window.document().show().inputs.empty());
        QVERIFY(window.windowTitle().contains(QStringLiteral("read-only")));
        MainWindow again;
        again.start({});
        QVERIFY(again.document().show().inputs.empty());
    }
    void unsavedChangesAreAskedFor() {
        save_show(path("asked.howlmap"), "asked");
        MainWindow window;
        QVERIFY(window.files().open(path("asked.howlmap")));
        window.show();
        window.document().edit(QStringLiteral("Title"), kRetitle);
        QVERIFY(window.isWindowModified());
        QString said;
        answer(QMessageBox::Cancel, &said);
        QVERIFY(!window.close());
        QVERIFY(said.contains(QStringLiteral("asked")));
        answer(QMessageBox::Save);
        QVERIFY(window.close());
        QFile file(path("asked.howlmap"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.readAll().contains("changed"));

        MainWindow other;
        QVERIFY(other.files().open(path("asked.howlmap")));
        other.show();
        other.document().edit(QStringLiteral("Title"), [](Show& show) { show.title = "given up"; });
        answer(QMessageBox::Discard);
        QVERIFY(other.close());
        file.seek(0);
        QVERIFY(!file.readAll().contains("given up"));
    }
    void aRefusedFileIsReportedWithThePlace() {
        QFile file(path("bad.howlmap"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(R"({"format": "howlmap-show", "version": 1, "air": {"humidity_pct": 140}})");
        file.close();
        MainWindow window;
        QString said;
        answer(QMessageBox::Ok, &said);
        QVERIFY(!window.files().open(file.fileName()));
        QVERIFY2(said.contains(QStringLiteral("bad.howlmap")) && said.contains(QStringLiteral("/air/humidity_pct")),
                 qPrintable(said));
    }
    void aNewShowOnAStageHasTheStageAndNothingElse() {
        for (const char* stage : {"club-corner", "hall", "open-air-deck", "teaching-room"}) {
            MainWindow window;
            QVERIFY(window.files().new_on_stage(QStringLiteral(":/stages/%1.howlmap").arg(QLatin1String(stage))));
            const Show& show = window.document().show();
            QVERIFY(show.title.empty() && show.notes.empty() && show.inputs.empty() && show.loudspeakers.empty());
            QVERIFY(!(show.stage == Stage()));
            QVERIFY(window.document().path().isEmpty() && !window.document().modified());
            QCOMPARE(window.document().undo_stack().count(), 0);
        }
    }
    void aDroppedFileOpens() {
        save_show(path("dropped.howlmap"), "dropped");
        MainWindow window;
        drop_on(window, {path("dropped.howlmap")});
        QCOMPARE(window.document().show().title, std::string("dropped"));
    }
    void ofTwoDroppedFilesEachHasAWindow() {
        save_show(path("one.howlmap"), "one");
        save_show(path("two.howlmap"), "two");
        MainWindow window;
        QStringList beside;
        window.files().open_beside = [&](const QString& file) {
            beside.append(file);
            return true;
        };
        drop_on(window, {path("one.howlmap"), path("two.howlmap")});
        QCOMPARE(window.document().show().title, std::string("one"));
        QCOMPARE(beside, QStringList{path("two.howlmap")});
    }
    void aSecondWindowThatDoesNotOpenIsTold() {
        save_show(path("one.howlmap"), "one");
        MainWindow window;
        window.files().open_beside = [](const QString&) { return false; };
        QString told;
        answer(QMessageBox::Ok, &told);
        drop_on(window, {path("one.howlmap"), path("two.howlmap")});
        QVERIFY2(told.contains(QStringLiteral("two.howlmap")), qPrintable(told));
    }
    void aDroppedTextIsRefusedAndNothingChanges() {
        save_show(path("kept.howlmap"), "kept");
        QFile text(path("list.txt"));
        QVERIFY(text.open(QIODevice::WriteOnly) && text.write("1 voice\n2 fiddle\n") > 0);
        text.close();
        MainWindow window;
        QVERIFY(window.files().open(path("kept.howlmap")));
        const Show before = window.document().show();
        QString told;
        answer(QMessageBox::Ok, &told);
        drop_on(window, {text.fileName()});
        QVERIFY2(told.contains(QStringLiteral("cannot be opened")) && told.contains(QStringLiteral("list.txt")),
                 qPrintable(told));
        QCOMPARE(window.document().show(), before);
        QCOMPARE(window.document().path(), path("kept.howlmap"));
    }
    void theTenNewestFilesAreRemembered() {
        MainWindow window;
        for (int i = 0; i < 12; ++i) {
            const QString name = path(qPrintable(QStringLiteral("recent%1.howlmap").arg(i)));
            save_show(name, "recent");
            QVERIFY(window.files().open(name));
        }
        RecentFiles recent;
        QCOMPARE(recent.paths().size(), 10);
        QVERIFY(recent.paths().first().endsWith(QStringLiteral("recent11.howlmap")));
        QFile::remove(recent.paths().last());
        QMenu menu;
        recent.fill(&menu);
        QVERIFY(menu.actions().at(0)->isEnabled());
        QVERIFY(!menu.actions().at(9)->isEnabled());
    }
    void undoSaysWhatItTakesBack() {
        MainWindow window;
        QAction* undo = window.actions_table().at("edit.undo");
        QVERIFY(!undo->isEnabled());
        window.document().edit(QStringLiteral("Move Wedge 1"), kRetitle);
        QVERIFY(undo->isEnabled());
        QVERIFY(undo->text().contains(QStringLiteral("Move Wedge 1")));
        undo->trigger();
        QVERIFY(window.document().show().title.empty());
    }
    void oneKeyShowsThePlanAlone() {
        MainWindow window;
        window.show();
        QAction* alone = window.actions_table().at("view.plan_alone");
        QVERIFY(window.docks().dock(QStringLiteral("loops"))->isVisibleTo(&window));
        alone->trigger();
        for (const PanelEntry& entry : panel_table())
            QVERIFY(!window.docks().dock(QLatin1StringView(entry.id))->isVisibleTo(&window));
        alone->trigger();
        QVERIFY(window.docks().dock(QStringLiteral("loops"))->isVisibleTo(&window));
    }
    void keysOpenTheLessonAndTheSoundOfTheStage() {
        MainWindow window;
        window.show();
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));
        QTest::keyClick(&window, Qt::Key_F8);
        QTRY_VERIFY(window.findChild<QWidget*>(QStringLiteral("lesson_window")));
        QVERIFY(window.findChild<QWidget*>(QStringLiteral("lesson_window"))->isVisible());
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));
        QTest::keyClick(&window, Qt::Key_F7);
        QTRY_VERIFY(window.findChild<QWidget*>(QStringLiteral("hear_window")));
        window.document().set_clean();
    }
    void theLayoutComesBackAndNonsenseDoesNoHarm() {
        {
            MainWindow window;
            window.show();
            window.docks().dock(QStringLiteral("parts"))->hide();
            QVERIFY(window.close());
        }
        {
            MainWindow window;
            window.show();
            QVERIFY(!window.docks().dock(QStringLiteral("parts"))->isVisible());
            window.actions_table().at("view.reset")->trigger();
            QVERIFY(window.docks().dock(QStringLiteral("parts"))->isVisible());
        }
        QFile file(settings()->fileName());
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("[window\nstate=@ByteArray(\\xff\\x00nonsense)\n\x01\x02");
        file.close();
        MainWindow window;
        window.show();
        QVERIFY(window.docks().dock(QStringLiteral("parts"))->isVisible());
    }
    void aboutListsTheLibrariesWithTheirLicences() {
        const QString text = about_text();
        for (const char* name : {"Qt 6", "QCustomPlot", "Eigen", "oneTBB", "Highway", "Boost", "NLopt", "libsndfile",
                                 "Kiss FFT", "tl::expected", "fmt"})
            QVERIFY2(text.contains(QLatin1StringView(name)), name);
        QVERIFY(text.contains(QStringLiteral("GPL-3.0-or-later")));
        QVERIFY(text.contains(Autosave::folder()));
    }
};

HOWLMAP_TEST(TestMainWindow)

}  // namespace howlmap::app

#include "test_main_window.moc"
