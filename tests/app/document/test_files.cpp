// SPDX-License-Identifier: GPL-3.0-or-later
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/document/autosave.h"
#include "app/document/file_session.h"
#include "core/file/write.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

QByteArray bytes_of(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void write(const QString& name, const QByteArray& bytes) {
    QFile file(name);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

QByteArray titled(const char* title) {
    Show show;
    show.title = title;
    return QByteArray::fromStdString(write_show(show));
}

const Edit kRetitle = [](Show& show) { show.title = "changed"; };

}  // namespace

class TestFiles : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;
    QString path(const char* name) { return folder_.filePath(QLatin1StringView(name)); }

  private Q_SLOTS:
    void opensSavesAndReverts() {
        write(path("a.howlmap"), titled("first"));
        Document document;
        FileSession session(document);
        QVERIFY(session.open(path("a.howlmap")));
        QVERIFY(!document.read_only());
        document.edit(QStringLiteral("Title"), kRetitle);
        QVERIFY(session.revert());
        QCOMPARE(QByteArray::fromStdString(write_show(document.show())), titled("first"));
        document.edit(QStringLiteral("Title"), kRetitle);
        QVERIFY(session.save());
        QVERIFY(!document.modified());
        QCOMPARE(bytes_of(path("a.howlmap")), titled("changed"));
    }
    void saveAsKeepsTheOldFile() {
        write(path("old.howlmap"), titled("old"));
        Document document;
        FileSession session(document);
        QVERIFY(session.open(path("old.howlmap")));
        document.edit(QStringLiteral("Title"), kRetitle);
        QVERIFY(session.save_as(path("new.howlmap")));
        QCOMPARE(bytes_of(path("old.howlmap")), titled("old"));
        QCOMPARE(document.path(), path("new.howlmap"));
        QVERIFY(!QFile::exists(lock_name(path("old.howlmap"))));
        QVERIFY(QFile::exists(lock_name(path("new.howlmap"))));
    }
    void aRefusedFileChangesNothing() {
        write(path("bad.howlmap"), R"({"format": "howlmap-show", "version": 1, "air": {"humidity_pct": 140}})");
        Document document;
        FileSession session(document);
        document.edit(QStringLiteral("Title"), kRetitle);
        const Outcome outcome = session.open(path("bad.howlmap"));
        QVERIFY(!outcome);
        QCOMPARE(outcome.error().file, path("bad.howlmap"));
        QVERIFY2(outcome.error().detail.contains(QStringLiteral("/air/humidity_pct")),
                 qPrintable(outcome.error().detail));
        QVERIFY(!outcome.error().advice.isEmpty());
        QCOMPARE(document.show().title, std::string("changed"));
        QVERIFY(document.modified());
    }
    void theSecondOpenerReadsOnly() {
        write(path("both.howlmap"), titled("both"));
        Document one, two;
        auto first = std::make_unique<FileSession>(one);
        FileSession second(two);
        QVERIFY(first->open(path("both.howlmap")));
        QVERIFY(second.open(path("both.howlmap")));
        QVERIFY(!one.read_only());
        QVERIFY(two.read_only());
        QVERIFY(second.read_only_reason().contains(QString::number(QCoreApplication::applicationPid())));
        QVERIFY(!second.save());
        QVERIFY(!second.save_as(path("both.howlmap")));
        first.reset();
        QVERIFY(second.revert());
        QVERIFY(!two.read_only());
    }
    void aDeadHolderLeavesNoLock() {
        write(path("stale.howlmap"), titled("stale"));
        // What a lock looks like: process, program, host, each on a line.
        write(lock_name(path("stale.howlmap")),
              QByteArray("999999\nhowlmap\n") + QSysInfo::machineHostName().toUtf8() + '\n');
        Document document;
        FileSession session(document);
        QVERIFY(session.open(path("stale.howlmap")));
        QVERIFY(!document.read_only());
    }
    void aChangeOnDiskIsToldOnce() {
        write(path("watched.howlmap"), titled("before"));
        Document document;
        FileSession session(document);
        QSignalSpy spy(&session, &FileSession::changed_on_disk);
        QVERIFY(session.open(path("watched.howlmap")));
        QVERIFY(session.save_as(path("watched.howlmap")));
        QTest::qWait(400);
        QCOMPARE(spy.count(), 0);  // what we wrote ourselves is no news
        QVERIFY(save_atomically(path("watched.howlmap").toStdString(), titled("after").toStdString()));
        QTRY_COMPARE(spy.count(), 1);
        QTest::qWait(400);
        QCOMPARE(spy.count(), 1);
        session.keep_mine();
        QVERIFY(document.modified());
        QVERIFY(save_atomically(path("watched.howlmap").toStdString(), titled("once more").toStdString()));
        QTRY_COMPARE(spy.count(), 2);
    }
    void aRemovedFileIsTold() {
        write(path("gone.howlmap"), titled("gone"));
        Document document;
        FileSession session(document);
        QSignalSpy spy(&session, &FileSession::removed_from_disk);
        QVERIFY(session.open(path("gone.howlmap")));
        QFile::remove(path("gone.howlmap"));
        QTRY_COMPARE(spy.count(), 1);
        QVERIFY(document.modified());
        QVERIFY(session.save());
        QCOMPARE(bytes_of(path("gone.howlmap")), titled("gone"));
    }
    void aFailedSaveLeavesEverythingAsItWas() {
        write(path("kept.howlmap"), titled("kept"));
        Document document;
        FileSession session(document);
        QVERIFY(session.open(path("kept.howlmap")));
        document.edit(QStringLiteral("Title"), kRetitle);
        const Outcome outcome = session.save_as(path("no/such/folder/x.howlmap"));
        QVERIFY(!outcome);
        QVERIFY(document.modified());
        QCOMPARE(document.path(), path("kept.howlmap"));
        QCOMPARE(bytes_of(path("kept.howlmap")), titled("kept"));
        QVERIFY(session.save());
    }
    void examplesOpenAsCopies() {
        Document document;
        FileSession session(document);
        QVERIFY(session.open_copy(QStringLiteral(":/examples/duo.howlmap")));
        QVERIFY(document.read_only());
        QVERIFY(document.path().isEmpty());
        QVERIFY(!session.save());
        QVERIFY(session.save_as(path("mine.howlmap")));
        QVERIFY(!document.read_only());
    }
};

class TestAutosave : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void init() { QDir(Autosave::folder()).removeRecursively(); }

    void keepsACopyAsideAndNeverTouchesTheFile() {
        QTemporaryDir folder;
        const QString name = folder.filePath(QStringLiteral("mine.howlmap"));
        write(name, titled("mine"));
        Document document;
        FileSession session(document);
        QVERIFY(session.open(name));
        Autosave autosave(document, 20, 200);
        document.edit(QStringLiteral("Title"), kRetitle);
        QTRY_VERIFY(QFile::exists(autosave.file()));
        QCOMPARE(bytes_of(name), titled("mine"));
        QVERIFY(recoverable().isEmpty());  // its writer is alive
        QVERIFY(session.save());
        QVERIFY(!QFile::exists(autosave.file()));
    }
    void endlessEditingIsCopiedToo() {
        Document document;
        Autosave autosave(document, 50, 150);
        bool copied = false;
        for (int i = 0; i < 60 && !copied; ++i) {
            document.edit(QStringLiteral("Title"), [i](Show& show) { show.title = std::to_string(i); });
            QTest::qWait(20);
            copied = QFile::exists(autosave.file());
        }
        QVERIFY(copied);
    }
    void goesWhenItEndsWell() {
        QString file;
        {
            Document document;
            Autosave autosave(document, 10, 100);
            document.edit(QStringLiteral("Title"), kRetitle);
            autosave.write_now();
            file = autosave.file();
            QVERIFY(QFile::exists(file));
        }
        QVERIFY(!QFile::exists(file));
    }
    void whatABadEndLeftIsFound() {
        Document document;
        auto* lost = new Autosave(document, 10, 100);
        document.edit(QStringLiteral("Title"), kRetitle);
        lost->write_now();
        const QByteArray copy = bytes_of(lost->file());
        delete lost;
        const QString file = Autosave::folder() + QStringLiteral("/left.autosave");
        write(file, copy);
        write(Autosave::folder() + QStringLiteral("/nonsense.autosave"), "{");
        const auto found = recoverable();
        QCOMPARE(found.size(), 1);
        QCOMPARE(found[0].title, QStringLiteral("changed"));
        QVERIFY(found[0].path.isEmpty());
        QVERIFY(found[0].time.secsTo(QDateTime::currentDateTime()) < 60);
        const auto show = read_recoverable(found[0]);
        QVERIFY(show);
        QCOMPARE(write_show(*show), write_show(document.show()));
        remove_recoverable(found[0]);
        QVERIFY(recoverable().isEmpty());
    }
};

HOWLMAP_TEST(TestFiles)
HOWLMAP_TEST(TestAutosave)

}  // namespace howlmap::app

#include "test_files.moc"
