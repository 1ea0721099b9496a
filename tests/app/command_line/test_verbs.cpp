// SPDX-License-Identifier: GPL-3.0-or-later
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <cmath>
#include <sstream>

#include "app/command_line/run.h"
#include "tests/support/registry.h"
#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {

struct Ran {
    int status;
    QString out, err;
};

Ran run_here(const QStringList& arguments) {
    std::ostringstream out, err;
    Console console{out, err};
    const int status = run(request_of(arguments), console);
    return {status, QString::fromStdString(out.str()), QString::fromStdString(err.str())};
}

/// An example that comes with the program, as a file.
QString example(const char* name) {
    static const QTemporaryDir folder;
    const QString file = folder.filePath(QLatin1StringView(name)) + QStringLiteral(".howlmap");
    if (!QFile::exists(file)) QFile::copy(QStringLiteral(":/examples/%1.howlmap").arg(QLatin1StringView(name)), file);
    return file;
}

/// The program itself, on a machine without a display.
Ran run_program(const QStringList& arguments, const QString& output_to = {}) {
    QProcessEnvironment bare = QProcessEnvironment::systemEnvironment();
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) bare.remove(QLatin1StringView(name));
    const test::Ended ended = test::run_to_end(qEnvironmentVariable("HOWLMAP_PROGRAM"), arguments, bare, output_to);
    return {ended.status, QString::fromUtf8(ended.out), QString::fromUtf8(ended.err)};
}

}  // namespace

class TestVerbs : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void everyVerbExplainsItself() {
        QVERIFY(!verbs().empty());
        const QString overview = run_here({QStringLiteral("--help")}).out;
        for (const Verb& verb : verbs()) {
            const QString name = QLatin1StringView(verb.name);
            QVERIFY2(overview.contains(name), verb.name);
            const Ran help = run_here({name, QStringLiteral("--help")});
            QCOMPARE(help.status, 0);
            QCOMPARE(help.out.contains(QStringLiteral("--json")), !verb.draws);  // a drawing prints nothing
            QVERIFY2(help.out.startsWith(QStringLiteral("Usage: howlmap %1 ").arg(name)), verb.name);
            QVERIFY2(!help.out.contains(QStringLiteral("help-all")), verb.name);
            const QStringList asked{name, QLatin1StringView(verb.operands), QStringLiteral("--json")};
            if (verb.draws) QCOMPARE(run_here(asked).status, 2);
        }
    }
    void whatCuresPromiseCheckConfirms() {
        const QTemporaryDir folder;
        const QString better = folder.filePath(QStringLiteral("better.howlmap"));
        const Ran cures = run_here({QStringLiteral("cures"), example("fiddle-and-wedge"), QStringLiteral("--json"),
                                    QStringLiteral("--apply"), better});
        QCOMPARE(cures.status, 0);
        const QJsonObject promised =
            QJsonDocument::fromJson(cures.out.toUtf8())[QStringLiteral("plan")][QStringLiteral("after")].toObject();
        const Ran check = run_here({QStringLiteral("check"), better, QStringLiteral("--json")});
        const QJsonDocument found = QJsonDocument::fromJson(check.out.toUtf8());
        const auto differ = [](const QJsonValue& a, const QJsonValue& b) {
            return std::abs(a.toDouble(-1e9) - b.toDouble(1e9));
        };
        QVERIFY(differ(found[QStringLiteral("margin_db")], promised[QStringLiteral("margin_db")]) < 0.05);
        QVERIFY(differ(found[QStringLiteral("tolerance")][QStringLiteral("margin_p05_db")],
                       promised[QStringLiteral("margin_p05_db")]) < 0.05);
    }
    void curesWithoutWhatCannotBeHad() {
        const Ran ran = run_here({QStringLiteral("cures"), example("fiddle-and-wedge"), QStringLiteral("--json"),
                                  QStringLiteral("--without"), QStringLiteral("in_ears,change_pattern")});
        QCOMPARE(ran.status, 0);
        QVERIFY(ran.out.contains(QStringLiteral("\"kind\"")));
        QVERIFY(!ran.out.contains(QStringLiteral("\"in_ears\"")));
        const Ran wrong = run_here({QStringLiteral("cures"), example("fiddle-and-wedge"), QStringLiteral("--without"),
                                    QStringLiteral("magic")});
        QVERIFY(wrong.status > 1);
        QVERIFY2(wrong.err.contains(QStringLiteral("\"magic\"")) && wrong.err.contains(QStringLiteral("in_ears")),
                 qPrintable(wrong.err));
    }
    void badUsageIsRefused_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QString>("says");
        QTest::newRow("nothing to check") << QStringList{QStringLiteral("check")} << QStringLiteral("SHOW is missing");
        QTest::newRow("one too many") << QStringList{QStringLiteral("check"), QStringLiteral("a"), QStringLiteral("b")}
                                      << QStringLiteral("\"b\" is one too many");
        QTest::newRow("no such option") << QStringList{QStringLiteral("check"), QStringLiteral("--loud"),
                                                       QStringLiteral("a")}
                                        << QStringLiteral("loud");
        QTest::newRow("no such verb") << QStringList{QStringLiteral("chekc")}
                                      << QStringLiteral("neither a verb nor a file");
        QTest::newRow("no such option at all")
            << QStringList{QStringLiteral("--loud")} << QStringLiteral("unknown option");
        QTest::newRow("no such file") << QStringList{QStringLiteral("check"), QStringLiteral("/nowhere/at.howlmap")}
                                      << QStringLiteral("/nowhere/at.howlmap");
    }
    void badUsageIsRefused() {
        QFETCH(QStringList, arguments);
        QFETCH(QString, says);
        const Ran ran = run_here(arguments);
        QCOMPARE(ran.status, 2);
        QVERIFY2(ran.err.contains(says), qPrintable(ran.err));
        QVERIFY(ran.out.isEmpty());
    }
    void aRefusedFileNamesThePlace() {
        QTemporaryDir folder;
        QFile file(folder.filePath(QStringLiteral("bad.howlmap")));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(R"({"format": "howlmap-show", "version": 1, "air": {"temperature_c": "warm"}})");
        file.close();
        const Ran ran = run_here({QStringLiteral("check"), file.fileName()});
        QCOMPARE(ran.status, 2);
        QVERIFY2(ran.err.contains(file.fileName()) && ran.err.contains(QStringLiteral("/air/temperature_c")),
                 qPrintable(ran.err));
    }
    void checkSaysTheSameTwiceAndInBothForms() {
        const Ran once = run_here({QStringLiteral("check"), example("duo"), QStringLiteral("--json")});
        QCOMPARE(once.out, run_here({QStringLiteral("check"), QStringLiteral("--json"), example("duo")}).out);
        const QJsonObject figures = QJsonDocument::fromJson(once.out.toUtf8()).object();
        QCOMPARE(figures[QStringLiteral("format")].toString(), QStringLiteral("howlmap-analysis"));
        const Ran words = run_here({QStringLiteral("check"), example("duo")});
        QCOMPARE(words.status, once.status);
        const double counted =
            figures[QStringLiteral("tolerance")].toObject()[QStringLiteral("margin_p05_db")].toDouble();
        QVERIFY2(words.out.contains(QStringLiteral("count on %1 dB").arg(counted, 0, 'f', 1)), qPrintable(words.out));
        QCOMPARE(words.status, counted >= 6.0 ? 0 : 1);
    }
    void worksWithoutADisplay() {
        QCOMPARE(run_program({QStringLiteral("--version")}).status, 0);
        QVERIFY(run_program({QStringLiteral("--help")}).out.contains(QStringLiteral("check")));
        const Ran checked = run_program({QStringLiteral("check"), example("fiddle-and-wedge")});
        QVERIFY2(checked.status == 0 || checked.status == 1, qPrintable(checked.err));
        const Ran window = run_program({example("duo")});
        QCOMPARE(window.status, 2);
        QVERIFY(window.err.contains(QStringLiteral("no display")));
    }
    void aFullDiskIsTold() {
        if (!QFile::exists(QStringLiteral("/dev/full"))) QSKIP("no /dev/full here");
        QCOMPARE(run_program({QStringLiteral("--help")}, QStringLiteral("/dev/full")).status, 3);
    }
};

HOWLMAP_TEST(TestVerbs)

}  // namespace howlmap::app

#include "test_verbs.moc"
