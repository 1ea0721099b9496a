// SPDX-License-Identifier: GPL-3.0-or-later
// What a run that ended badly left behind is offered at the next start: restore it, discard it, or decide later.
#include <QDialog>
#include <QJsonDocument>
#include <QJsonObject>
#include <QPushButton>
#include <QTreeWidget>

#include "app/window/main_window.h"
#include "core/file/write.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

QByteArray bytes_aside(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// A copy aside of a show with this title; its file.
QString leave(const char* name, const char* title, const char* time = "2026-01-02T03:04:05.000Z") {
    QDir().mkpath(Autosave::folder());
    Show lost;
    lost.title = title;
    QFile file(Autosave::folder() + u'/' + QLatin1StringView(name) + QStringLiteral(".autosave"));
    if (!file.open(QIODevice::WriteOnly)) return {};
    file.write(QJsonDocument(QJsonObject{{QStringLiteral("format"), QStringLiteral("howlmap-autosave")},
                                         {QStringLiteral("title"), QLatin1StringView(title)},
                                         {QStringLiteral("time"), QLatin1StringView(time)},
                                         {QStringLiteral("show"), QString::fromStdString(write_show(lost))}})
                   .toJson());
    return file.fileName();
}

/// Does something at the dialog once it is there; counts how often it was.
void at_the_offer(int& offers, const std::function<void(QDialog&)>& what) {
    QTimer::singleShot(0, qApp, [&offers, what] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog || dialog->objectName() != QStringLiteral("recovery")) return;
        ++offers;
        qApp->setActiveWindow(dialog);
        what(*dialog);
        if (dialog->isVisible()) dialog->reject();
    });
}

void click(QDialog& dialog, const char* text) {
    for (auto* button : dialog.findChildren<QPushButton*>())
        if (button->text().remove(u'&') == QLatin1StringView(text)) return QTest::mouseClick(button, Qt::LeftButton);
    QFAIL(text);
}

}  // namespace

class TestRecovery : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void init() { QDir(Autosave::folder()).removeRecursively(); }

    void whatWasLostIsOfferedAndRestored() {
        const QString file = leave("left", "lost");
        MainWindow window;
        int offers = 0;
        at_the_offer(offers, [](QDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Return); });
        window.start({});
        QCOMPARE(offers, 1);
        QCOMPARE(window.document().show().title, std::string("lost"));
        QVERIFY(window.document().modified());
        QVERIFY(!QFile::exists(file));
        QVERIFY(QFile::exists(window.autosave().file()));
    }
    void laterLeavesEverythingForTheNextStart_data() {
        QTest::addColumn<bool>("by_key");
        QTest::newRow("button") << false;
        QTest::newRow("escape") << true;
    }
    void laterLeavesEverythingForTheNextStart() {
        QFETCH(const bool, by_key);
        const QString file = leave("left", "lost");
        const QByteArray before = bytes_aside(file);
        int offers = 0;
        for (int start = 1; start <= 2; ++start) {
            MainWindow window;
            at_the_offer(offers, [by_key](QDialog& dialog) {
                if (by_key)
                    QTest::keyClick(&dialog, Qt::Key_Escape);
                else
                    click(dialog, "Later");
            });
            window.start({});
            QCOMPARE(offers, start);
            QVERIFY(window.document().show().title != "lost");
            QVERIFY(!window.document().modified());
            QCOMPARE(bytes_aside(file), before);
        }
    }
    void whatIsDiscardedIsGone() {
        const QString file = leave("left", "lost");
        int offers = 0;
        {
            MainWindow window;
            at_the_offer(offers, [](QDialog& dialog) { click(dialog, "Discard"); });
            window.start({});
            QCOMPARE(offers, 1);
            QVERIFY(window.document().show().title != "lost");
            QVERIFY(!window.document().modified());
            QVERIFY(!QFile::exists(file));
        }
        MainWindow again;
        at_the_offer(offers, [](QDialog&) {});
        again.start({});
        QCoreApplication::processEvents();
        QCOMPARE(offers, 1);
    }
    /// One goes, the other stays in the list and can be restored.
    void oneOfTwoIsDiscarded() {
        const QString newer = leave("newer", "newer show", "2026-01-03T03:04:05.000Z"),
                      older = leave("older", "older show");
        MainWindow window;
        int offers = 0;
        at_the_offer(offers, [&](QDialog& dialog) {
            auto* list = dialog.findChild<QTreeWidget*>();
            QCOMPARE(list->topLevelItemCount(), 2);
            QCOMPARE(list->topLevelItem(0)->text(0), QStringLiteral("newer show"));
            click(dialog, "Discard");
            QVERIFY(dialog.isVisible());
            QCOMPARE(list->topLevelItemCount(), 1);
            QVERIFY(!QFile::exists(newer) && QFile::exists(older));
            click(dialog, "Restore");
        });
        window.start({});
        QCOMPARE(offers, 1);
        QCOMPARE(window.document().show().title, std::string("older show"));
        QVERIFY(!QFile::exists(older));
        window.document().set_clean();
    }
};

HOWLMAP_TEST(TestRecovery)

}  // namespace howlmap::app

#include "test_recovery.moc"
