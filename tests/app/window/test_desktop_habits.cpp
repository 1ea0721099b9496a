// SPDX-License-Identifier: GPL-3.0-or-later
// Others on the same machine: a second opener, a program that changes the file; and what is remembered between runs.
#include <signal.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QMessageBox>
#include <QProcess>
#include <QSpinBox>
#include <QTemporaryDir>

#include "app/document/file_session.h"
#include "app/settings/preferences.h"
#include "app/settings/theme.h"
#include "app/window/file_actions.h"
#include "app/window/main_window.h"
#include "app/window/preferences_dialog.h"
#include "core/file/write.h"
#include "tests/support/registry.h"
#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {

std::string titled(const char* title) {
    Show show;
    show.title = title;
    return write_show(show);
}

/// Clicks the button with this text in the next message box, once there is one.
void answer_with(const QString& text, int* asked) {
    QTimer::singleShot(20, qApp, [=] {
        const auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
        if (!box) return answer_with(text, asked);
        ++*asked;
        for (QAbstractButton* button : box->buttons())
            if (button->text().remove(u'&').startsWith(text)) return button->click();
    });
}

}  // namespace

class TestDesktopHabits : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;
    QString path(const char* name) { return folder_.filePath(QLatin1StringView(name)); }
    void put(const char* name, const char* title) { QVERIFY(save_atomically(path(name).toStdString(), titled(title))); }

  private Q_SLOTS:
    void anotherProcessHoldsTheShow() {
        if (!test::kMayUseQProcess) QSKIP("starts a program");
        if (!qEnvironmentVariableIsSet("HOWLMAP_DRIVE")) QSKIP("needs the program that holds it");
        put("held.howlmap", "held");
        QProcess holder;
        holder.setStandardErrorFile(QProcess::nullDevice());
        holder.start(qEnvironmentVariable("HOWLMAP_DRIVE"),
                     {QStringLiteral("edit"), path("held.howlmap"), QStringLiteral("howlmap-holder")});
        QVERIFY(holder.waitForReadyRead(60000));
        Document document;
        FileSession session(document);
        QVERIFY(session.open(path("held.howlmap")));
        QVERIFY(document.read_only());
        QVERIFY2(session.read_only_reason().contains(QString::number(holder.processId())),
                 qPrintable(session.read_only_reason()));
        QVERIFY(!session.save());
        ::kill(static_cast<pid_t>(holder.processId()), SIGKILL);
        QVERIFY(holder.waitForFinished());
        QVERIFY(session.revert());
        QVERIFY(!document.read_only());
        QVERIFY(session.save());
    }
    /// Root may write everything: the test goes on as somebody else.
    void aWriteProtectedShowIsSavedUnderAnotherName() {
        if (::geteuid() == 0) {
            if (!test::kMayUseQProcess) QSKIP("starts a program");
            QTemporaryDir home;
            QVERIFY(::chmod(home.path().toUtf8().constData(), 0777) == 0);
            QProcess other;
            QProcessEnvironment world = QProcessEnvironment::systemEnvironment();
            for (const char* name : {"HOME", "TMPDIR", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_RUNTIME_DIR"})
                world.insert(QLatin1StringView(name), home.path());
            other.setProcessEnvironment(world);
            other.setChildProcessModifier([] { (void)(::setgid(65534) == 0 && ::setuid(65534) == 0); });
            other.start(QCoreApplication::applicationFilePath(),
                        {QStringLiteral("aWriteProtectedShowIsSavedUnderAnotherName")});
            if (!other.waitForStarted()) QSKIP("nobody else may run this test");
            QVERIFY(other.waitForFinished(120000));
            const QByteArray said = other.readAllStandardOutput();
            QVERIFY2(said.contains("PASS   : howlmap::app::TestDesktopHabits::aWriteProtectedShowIsSavedUnderAnother"),
                     said);
            return;
        }
        put("held-fast.howlmap", "as it was");
        QVERIFY(QFile::setPermissions(path("held-fast.howlmap"), QFileDevice::ReadOwner));
        MainWindow window;
        window.show();
        QVERIFY(window.files().open(path("held-fast.howlmap")));
        QVERIFY(window.document().read_only());
        window.document().edit(QStringLiteral("Title"), [](Show& show) { show.title = "mine"; });
        window.files().names.to_save = [this](QWidget*, const QString&) { return path("free.howlmap"); };
        int asked = 0;
        answer_with(QStringLiteral("Cancel"), &asked);
        QVERIFY(!window.files().save());
        QVERIFY(window.document().modified());
        answer_with(QStringLiteral("Save as"), &asked);
        QVERIFY(window.files().save());
        QCOMPARE(asked, 2);
        QVERIFY(!window.document().read_only() && !window.document().modified());
        QCOMPARE(window.document().path(), path("free.howlmap"));
        QFile kept(path("held-fast.howlmap"));
        QVERIFY(kept.open(QIODevice::ReadOnly));
        QCOMPARE(kept.readAll().toStdString(), titled("as it was"));
    }
    void aShowChangedOnDiskIsReloadedOrKept() {
        for (const bool reload : {true, false}) {
            put("watched.howlmap", "before");
            MainWindow window;
            window.show();
            QVERIFY(window.files().open(path("watched.howlmap")));
            window.document().edit(QStringLiteral("Title"), [](Show& show) { show.title = "mine"; });
            int asked = 0;
            answer_with(reload ? QStringLiteral("Reload") : QStringLiteral("Keep"), &asked);
            put("watched.howlmap", "theirs");
            QTRY_COMPARE(asked, 1);
            QTRY_COMPARE(window.document().show().title, std::string(reload ? "theirs" : "mine"));
            QCOMPARE(window.document().modified(), !reload);
            QTest::qWait(500);  // asked once
            QVERIFY(!QApplication::activeModalWidget());
            window.document().set_clean();
        }
    }
    void preferencesAreKeptAndCancelTakesBack() {
        Preferences plain;
        plain.save();
        PreferencesDialog dialog(nullptr);
        const auto boxes = dialog.findChildren<QComboBox*>();
        QCOMPARE(boxes.size(), 2);
        boxes[0]->setCurrentIndex(static_cast<int>(Look::dark));
        QVERIFY(QApplication::palette().window().color().lightness() < 128);
        boxes[1]->setCurrentIndex(static_cast<int>(UnitChoice::imperial));
        dialog.findChild<QSpinBox*>()->setValue(7);
        dialog.accept();
        const Preferences kept = Preferences::load();
        QCOMPARE(kept.look, Look::dark);
        QCOMPARE(kept.units(), Units::imperial);
        QCOMPARE(kept.autosave_rest_s, 7);

        PreferencesDialog again(nullptr);
        QCOMPARE(again.chosen().look, Look::dark);
        again.findChildren<QComboBox*>()[0]->setCurrentIndex(static_cast<int>(Look::light));
        QVERIFY(QApplication::palette().window().color().lightness() > 128);
        again.reject();
        QVERIFY(QApplication::palette().window().color().lightness() < 128);
        QCOMPARE(Preferences::load().look, Look::dark);
        plain.save();
        apply_look(plain.look);
    }
};

HOWLMAP_TEST(TestDesktopHabits)

}  // namespace howlmap::app

#include "test_desktop_habits.moc"
