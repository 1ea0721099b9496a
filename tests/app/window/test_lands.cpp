// SPDX-License-Identifier: GPL-3.0-or-later
// Other lands: feet where people measure in feet, decimal marks as people write them; files are the same everywhere.
#include <QLocale>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/window/file_actions.h"
#include "app/window/main_window.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "tests/support/registry.h"
#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {

/// What the program says and writes to a file in a language of the system.
QByteArray said_in(const char* language, const QStringList& arguments, const QString& file = {}) {
    QProcessEnvironment world = QProcessEnvironment::systemEnvironment();
    world.insert(QStringLiteral("LC_ALL"), QLatin1StringView(language));
    world.insert(QStringLiteral("LANGUAGE"), QLatin1StringView(language));
    const test::Ended program = test::run_to_end(qEnvironmentVariable("HOWLMAP_PROGRAM"), arguments, world);
    if (program.status < 0) return {};
    if (file.isEmpty()) return program.out;
    QFile written(file);
    const QByteArray bytes = written.open(QIODevice::ReadOnly) ? written.readAll() : QByteArray();
    written.remove();
    return bytes;
}

/// All numbers with their points; a decimal comma would make two of one.
QStringList numbers_in(const QByteArray& text) {
    static const QRegularExpression number(QStringLiteral("[0-9]+(?:\\.[0-9]+)?"));
    QStringList found;
    for (auto all = number.globalMatch(QString::fromUtf8(text)); all.hasNext();) found.append(all.next().captured());
    return found;
}

}  // namespace

class TestLands : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;

  private Q_SLOTS:
    void cleanup() { QLocale::setDefault(QLocale::c()); }

    void aNewShowIsInTheUnitsOfTheLand_data() {
        QTest::addColumn<QString>("land");
        QTest::addColumn<bool>("feet");
        QTest::newRow("United States") << "en_US" << true;
        QTest::newRow("Germany") << "de_DE" << false;
        QTest::newRow("Great Britain") << "en_GB" << false;  // stages there are drawn in metres
        QTest::newRow("nowhere") << "C" << false;
    }
    void aNewShowIsInTheUnitsOfTheLand() {
        QFETCH(const QString, land);
        QFETCH(const bool, feet);
        QLocale::setDefault(QLocale(land));
        MainWindow window;
        QVERIFY(window.files().new_show());
        QVERIFY((window.document().show().display.units == Units::imperial) == feet);
        QVERIFY(window.files().new_on_stage(QStringLiteral(":/stages/hall.howlmap")));
        QVERIFY((window.document().show().display.units == Units::imperial) == feet);
        QVERIFY(!window.document().modified());
    }
    void whatProgramsReadIsTheSameInEveryLanguage_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<QString>("file");
        const QString show = QStringLiteral("SHOW");
        const auto row = [&](const char* name, const QString& words, const char* file = "") {
            QTest::newRow(name) << words.split(u' ') << QString::fromLatin1(file);
        };
        row("text", QStringLiteral("check SHOW"));
        row("JSON", QStringLiteral("check SHOW --json"));
        row("cures", QStringLiteral("cures SHOW --json"));
        row("map", QStringLiteral("map SHOW --kind wash --step 0.5 -o FOLDER/map.csv"), "map.csv");
        row("list", QStringLiteral("advance SHOW --csv FOLDER"), "ring-out.csv");
    }
    void whatProgramsReadIsTheSameInEveryLanguage() {
        if (!QFile::exists(qEnvironmentVariable("HOWLMAP_PROGRAM"))) QSKIP("the program is not built");
        QFETCH(QStringList, arguments);
        QFETCH(QString, file);
        const QString show = folder_.filePath(QStringLiteral("duo.howlmap"));
        if (!QFile::exists(show)) {
            QFile example(QStringLiteral(":/examples/duo.howlmap"));
            QVERIFY(example.open(QIODevice::ReadOnly));
            auto read = read_show(example.readAll().toStdString());
            read->show.tolerance.draws = 20;
            read->show.mixes[0].sends[0].level_db = 96.5;
            QVERIFY(save_atomically(show.toStdString(), write_show(read->show)));
        }
        for (QString& word : arguments)
            word.replace(QStringLiteral("SHOW"), show).replace(QStringLiteral("FOLDER"), folder_.path());
        if (!file.isEmpty()) file = folder_.filePath(file);
        const QByteArray here = said_in("C", arguments, file), there = said_in("de_DE.UTF-8", arguments, file);
        QVERIFY(here.size() > 100);
        QCOMPARE(numbers_in(there), numbers_in(here));
        if (file.endsWith(QStringLiteral("ring-out.csv")))  // belongs to the sheet, which speaks the language
            QVERIFY(there != here);
        else
            QCOMPARE(there, here);
    }
    /// What the German window writes, the English one reads: the same show, no decimal comma.
    void aShowWrittenInGermanyIsTheSameShow() {
        QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
        MainWindow window;
        QVERIFY(window.files().open_example(QStringLiteral(":/examples/sixteen-inputs.howlmap")));
        const std::string german = write_show(window.document().show());
        QLocale::setDefault(QLocale::c());
        QCOMPARE(QString::fromStdString(german), QString::fromStdString(write_show(window.document().show())));
        const auto read = read_show(german);
        QVERIFY(read);
        QVERIFY(read->show == window.document().show());
        window.document().set_clean();
    }
};

HOWLMAP_TEST(TestLands)

}  // namespace howlmap::app

#include "test_lands.moc"
