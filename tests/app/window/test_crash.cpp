// SPDX-License-Identifier: GPL-3.0-or-later
// The window is killed in the middle of edits and started again. HOWLMAP_LONG_TESTS=1 does it a hundred times.
#include <signal.h>

#include <QAbstractButton>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>
#include <random>

#include "app/settings/preferences.h"
#include "app/window/main_window.h"
#include "core/file/write.h"
#include "tests/support/registry.h"
#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {

QByteArray bytes_of(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// The shows that lie aside, as their copies hold them.
QList<QByteArray> shows_aside() {
    QList<QByteArray> found;
    for (const Recoverable& copy : recoverable())
        found.append(QJsonDocument::fromJson(bytes_of(copy.file)).object()[QStringLiteral("show")].toString().toUtf8());
    return found;
}

}  // namespace

class TestCrash : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;
    QString file_ = folder_.filePath(QStringLiteral("gig.howlmap"));
    std::mt19937 random_{20};

    /// Edits in a process of its own and kills it after so many milliseconds; the last step that it took.
    int killed_after(int ms) {
        QProcess editor;
        editor.setStandardErrorFile(QProcess::nullDevice());
        editor.start(qEnvironmentVariable("HOWLMAP_DRIVE"),
                     {QStringLiteral("edit"), file_, QCoreApplication::applicationName()});
        if (!editor.waitForReadyRead(60000)) return -1;
        // No step without a first copy: the killer waits until there is one, then for his moment.
        const QDir aside(Autosave::folder());
        for (int i = 0; i < 600 && aside.entryList({QStringLiteral("*.autosave")}).isEmpty(); ++i) QTest::qWait(50);
        QTest::qWait(ms);
        ::kill(static_cast<pid_t>(editor.processId()), SIGKILL);
        editor.waitForFinished();
        return editor.readAllStandardOutput().trimmed().split('\n').last().toInt();
    }

  private Q_SLOTS:
    void init() {
        if (!test::kMayUseQProcess) QSKIP("starts a program");
        QDir(Autosave::folder()).removeRecursively();
    }

    void nothingIsLostThatLayAside() {
        if (!qEnvironmentVariableIsSet("HOWLMAP_DRIVE")) QSKIP("needs the program that is killed");
        Show show;
        show.title = "as saved";
        const QByteArray saved = QByteArray::fromStdString(write_show(show));
        QVERIFY(save_atomically(file_.toStdString(), saved.toStdString()));
        const int kills = qEnvironmentVariableIsSet("HOWLMAP_LONG_TESTS") ? 100 : 2;
        for (int i = 0; i < kills; ++i) {
            const int steps = killed_after(std::uniform_int_distribution<int>(0, 2500)(random_));
            QVERIFY(steps > 0);
            QCOMPARE(bytes_of(file_), saved);
            const auto aside = shows_aside();
            QCOMPARE(aside.size(), 1);

            MainWindow again;
            bool offered = false;
            QTimer::singleShot(0, qApp, [&] {
                QWidget* dialog = QApplication::activeModalWidget();
                offered = dialog && dialog->objectName() == QStringLiteral("recovery");
                if (dialog) QTest::keyClick(dialog, Qt::Key_Return);
            });
            again.start({file_});
            QVERIFY(offered);
            QCOMPARE(QByteArray::fromStdString(write_show(again.document().show())), aside[0]);
            const int kept = QString::fromStdString(again.document().show().title).mid(5).toInt();
            QVERIFY2(steps - kept <= 20, qPrintable(QStringLiteral("%1 of %2 steps kept").arg(kept).arg(steps)));
            QVERIFY(again.document().modified());
            QCOMPARE(again.document().path(), file_);
            QVERIFY(!again.document().read_only());  // the lock of the dead is no obstacle
            QCOMPARE(bytes_of(file_), saved);
            again.document().set_clean();
        }
    }
};

HOWLMAP_TEST(TestCrash)

}  // namespace howlmap::app

#include "test_crash.moc"
