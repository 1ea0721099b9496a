// SPDX-License-Identifier: GPL-3.0-or-later
// The verbs that write pictures, figures and sheets: what they write, and every exit status.
#include <QDir>
#include <QImage>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <sstream>

#include "app/command_line/run.h"
#include "core/analysis/ring_out.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/maps/maps.h"
#include "core/report/lists.h"
#include "tests/support/registry.h"
#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {

struct Outcome {
    int status;
    QString err;
};

/// Arguments separated by blanks.
Outcome outcome_of(const QString& line) {
    std::ostringstream out, err;
    Console console{out, err};
    const int status = run(request_of(line.split(u' ')), console);
    return {status, QString::fromStdString(err.str())};
}

QByteArray content_of(const QString& name) {
    QFile file(name);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

int pages_in(const QByteArray& pdf) {
    static const QRegularExpression page(QStringLiteral("/Type /Page\\b"));
    return static_cast<int>(QString::fromLatin1(pdf).count(page));
}

}  // namespace

class TestDrawingVerbs : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;
    QString show_ = path("fiddle-and-wedge.howlmap");

    QString path(const char* name) const { return folder_.filePath(QLatin1StringView(name)); }
    Show show() const { return load_show(show_.toStdString())->show; }
    /// Runs a verb on the example, writes to a file and gives its content.
    QByteArray written(const QString& verb, const char* name, const QString& options = {}) const {
        const Outcome ran = outcome_of(verb + u' ' + show_ + QStringLiteral(" -o ") + path(name) + options);
        if (ran.status != 0) qWarning("%s", qPrintable(ran.err));
        return ran.status == 0 ? content_of(path(name)) : QByteArray();
    }
    QString first_input() const { return QString::fromStdString(show().inputs.front().id); }

  private Q_SLOTS:
    void initTestCase() { QVERIFY(QFile::copy(QStringLiteral(":/examples/fiddle-and-wedge.howlmap"), show_)); }

    void plotsAreOfTheKindTheirNameSays() {
        QVERIFY(written(QStringLiteral("plot"), "plan.svg").contains("<svg"));
        QVERIFY(written(QStringLiteral("plot"), "plan.pdf").startsWith("%PDF"));
        const QImage usual = QImage::fromData(written(QStringLiteral("plot"), "plan.png"));
        const QImage fine = QImage::fromData(written(QStringLiteral("plot"), "fine.png", QStringLiteral(" --dpi 300")));
        QVERIFY(!usual.isNull() && std::abs(fine.width() - 2 * usual.width()) <= 1);
        QCOMPARE(usual.pixelColor(0, 0).alpha(), 255);
        const QImage clear = QImage::fromData(
            written(QStringLiteral("plot"), "clear.png", QStringLiteral(" --size 640x480 --transparent")));
        QCOMPARE(clear.size(), QSize(640, 480));
        QCOMPARE(clear.pixelColor(0, 0).alpha(), 0);
        QVERIFY(written(QStringLiteral("plot"), "loops.svg", QStringLiteral(" --loops")).size() >
                content_of(path("plan.svg")).size());
    }

    void figuresOfAMapAreThoseOfTheCore_data() {
        QTest::addColumn<QString>("options");
        QTest::addColumn<MapKind>("kind");
        QTest::addColumn<QString>("id");
        const Show show = load_show(show_.toStdString())->show;
        const QString input = QString::fromStdString(show.inputs.front().id);
        const QString loudspeaker = QString::fromStdString(show.loudspeakers.front().id);
        const QString mix = QString::fromStdString(show.mixes.front().id);
        QTest::newRow("feedback") << QStringLiteral("feedback --input ") + input << MapKind::feedback << input;
        QTest::newRow("loudspeaker") << QStringLiteral("loudspeaker --loudspeaker ") + loudspeaker
                                     << MapKind::loudspeaker << loudspeaker;
        QTest::newRow("level") << QStringLiteral("level --mix ") + mix << MapKind::level << mix;
        QTest::newRow("wash") << QStringLiteral("wash") << MapKind::wash << QString();
    }
    void figuresOfAMapAreThoseOfTheCore() {
        QFETCH(QString, options);
        QFETCH(MapKind, kind);
        QFETCH(QString, id);
        MapRequest request;
        request.kind = kind;
        request.id = id.toStdString();
        request.options.step = 0.5;
        request.options.band = 17;  // 1 kHz
        const QByteArray csv =
            written(QStringLiteral("map"), "map.csv", QStringLiteral(" --step 0.5 --band 1000 --kind ") + options);
        QVERIFY(csv.startsWith("x_m,y_m,value,worst_hz\n") && csv.count('\n') > 50);
        QCOMPARE(csv.toStdString(), map_csv(*make_map(show(), request)));
        const QByteArray all =
            written(QStringLiteral("map"), "all.csv", QStringLiteral(" --step 0.5 --kind ") + options);
        QVERIFY(!all.isEmpty() && all != csv);
    }
    void aMapIsDrawnOverThePlan() {
        const QByteArray map = written(QStringLiteral("map"), "map.png", QStringLiteral(" --kind wash --step 0.5"));
        QVERIFY(!QImage::fromData(map).isNull());
        QVERIFY(map != written(QStringLiteral("plot"), "plan.png"));
    }

    void theSheetHasThePagesThatAreWanted() {
        const auto pages = [&](const char* options) {
            return pages_in(written(QStringLiteral("advance"), "sheet.pdf", QLatin1StringView(options)));
        };
        const int all = pages(""), plan = pages(" --pages plan");
        QCOMPARE(plan, 1);
        QVERIFY(all > plan);
        QVERIFY(pages(" --pages plan,inputs,mixes,risks") == all);
        QVERIFY(content_of(path("sheet.pdf")).startsWith("%PDF"));
        Show older = show();
        older.inputs.front().name = "Somebody else";
        QVERIFY(save_atomically(path("older.howlmap").toStdString(), write_show(older)));
        const QString since = QStringLiteral(" --since ") + path("older.howlmap");
        const auto without = content_of(path("sheet.pdf")).size();
        QVERIFY(written(QStringLiteral("advance"), "sheet.pdf", since).size() > without + 200);  // a list of one row
    }
    /// Two runs of the program, not of one process: what lies in memory in another order must not change the file.
    void theSheetIsTheSameTwice() {
        const auto sheet = [&](const char* name) {
            test::run_to_end(qEnvironmentVariable("HOWLMAP_PROGRAM"),
                             {QStringLiteral("advance"), show_, QStringLiteral("-o"), path(name)});
            QByteArray bytes = content_of(path(name));
            const auto at = bytes.indexOf("/CreationDate");
            return at < 0 ? QByteArray() : bytes.replace(at, bytes.indexOf('\n', at) - at, "");
        };
        const QByteArray once = sheet("once.pdf");
        QVERIFY(!once.isEmpty());
        for (int run = 0; run < 3; ++run) QVERIFY(sheet("again.pdf") == once);
    }

    void paperAndMapOfTheSheet() {
        const QByteArray letter =
            written(QStringLiteral("advance"), "sheet.pdf", QStringLiteral(" --pages plan --paper Letter"));
        QVERIFY(letter.contains("612") && letter.contains("792"));
        const QByteArray a4 =
            written(QStringLiteral("advance"), "sheet.pdf", QStringLiteral(" --pages plan --paper A4"));
        QVERIFY(a4.contains("595") && a4.contains("842"));
        // The input that rings first is the one of the only loop.
        const QString options = QStringLiteral(" --pages plan --paper A4 --loops");
        const QByteArray map = written(QStringLiteral("advance"), "map.pdf", options + QStringLiteral(" --map"));
        QVERIFY(map.size() > a4.size());
        QVERIFY(!written(QStringLiteral("advance"), "map.pdf", options + QStringLiteral(" --input ") + first_input())
                     .isEmpty());
    }
    void aStageWithoutLoopsHasNoMap() {
        Show silent = show();
        for (Mix& mix : silent.mixes) mix.sends.clear();
        QVERIFY(save_atomically(path("silent.howlmap").toStdString(), write_show(silent)));
        const Outcome ran =
            outcome_of(QStringLiteral("advance %1 --map -o %2").arg(path("silent.howlmap"), path("silent.pdf")));
        QCOMPARE(ran.status, 0);
        QVERIFY2(ran.err.contains(QStringLiteral("no map")), qPrintable(ran.err));
        QVERIFY(content_of(path("silent.pdf")).startsWith("%PDF"));
    }
    void listsOfTheSheetAreWrittenAsTables() {
        QCOMPARE(outcome_of(QStringLiteral("advance %1 --csv %2").arg(show_, path("lists"))).status, 0);
        const Show show = this->show();
        const auto lists = report::all_lists(show, {});
        QVERIFY(lists.size() >= 3);
        for (const auto& one : lists)
            QVERIFY2(content_of(path("lists") + u'/' + QString::fromStdString(one.file)).count('\n') > 1,
                     one.file.c_str());
        QVERIFY(content_of(path("lists") + u'/' + QString::fromStdString(lists.front().file))
                    .contains(show.inputs.front().name.c_str()));
    }

    void whatCannotBeDoneIsSaid_data() {
        QTest::addColumn<QString>("line");  // %1: the show, %2: the folder
        QTest::addColumn<int>("status");
        QTest::addColumn<QString>("says");
        const auto row = [](const char* line, int status, const char* says) {
            QTest::newRow(line) << QString::fromLatin1(line) << status << QString::fromLatin1(says);
        };
        row("plot %1", 2, "say where to write");
        row("plot %1 -o %2/plan.txt", 2, "expected a name that ends in .svg, .pdf or .png");
        row("plot %1 -o %2/x.png --dpi 5", 2, "--dpi: found \"5\", expected a number from 30 to 1200");
        row("plot %1 -o %2/x.png --dpi fine", 2, "--dpi: found \"fine\"");
        row("plot %1 -o %2/x.png --size large", 2, "--size: found \"large\"");
        row("plot %1 -o %2/x.png --size 30000x100", 2, "--size: found \"30000x100\"");
        row("plot %2/none.howlmap -o %2/x.svg", 2, "none.howlmap: cannot be opened");
        row("plot %1 -o %2/none/x.svg", 3, "its folder is not there");
        row("map %1 -o %2/x.csv --kind magic", 2, "--kind: found \"magic\"");
        row("map %1 -o %2/x.csv --kind feedback", 2, "a feedback map needs --input ID");
        row("map %1 -o %2/x.csv --kind wash --step 9", 2, "--step: found \"9\", expected a number from 0.02 to 1");
        row("map %1 -o %2/x.csv --kind wash --band 1234", 2, "--band: found \"1234\"");
        row("map %1 -o %2/x.csv --kind wash --band low", 2, "--band: found \"low\"");
        row("map %1 -o %2/x.csv --kind level --mix none", 2, "none");
        row("map %1 -o %2/x.doc --kind wash", 2, "expected a name that ends in");
        row("map %2/none.howlmap -o %2/x.csv --kind wash", 2, "cannot be opened");
        row("map %1 -o %2/none/x.csv --kind wash --step 1", 3, "its folder is not there");
        row("advance %1", 2, "where to?");
        row("advance %1 -o %2/x.png", 2, "x.png: expected a name that ends in .pdf");
        row("hear %1 -o %2/x.mp3", 2, "x.mp3: expected a name that ends in .wav");
        row("advance %2/none.howlmap -o %2/x.pdf", 2, "cannot be opened");
        row("advance %1 -o %2/x.pdf --paper A3", 2, "--paper: found \"A3\"");
        row("advance %1 -o %2/x.pdf --pages plan,songs", 2, "--pages: found \"songs\"");
        row("advance %1 -o %2/x.pdf --since %2/none.howlmap", 2, "cannot be opened");
        row("advance %1 -o %2/x.pdf --input none", 2, "--map: ");
        row("advance %1 -o %2/none/x.pdf", 3, "its folder is not there");
        row("advance %1 --csv %1/lists", 3, "the folder cannot be made");
    }
    void whatCannotBeDoneIsSaid() {
        QFETCH(QString, line);
        QFETCH(int, status);
        QFETCH(QString, says);
        line.replace(QStringLiteral("%1"), show_).replace(QStringLiteral("%2"), folder_.path());
        const Outcome ran = outcome_of(line);
        QCOMPARE(ran.status, status);
        QVERIFY2(ran.err.contains(says), qPrintable(ran.err));
        QVERIFY(QDir(folder_.path()).entryList({QStringLiteral("x.*")}).isEmpty());
    }
};

HOWLMAP_TEST(TestDrawingVerbs)

}  // namespace howlmap::app

#include "test_drawing_verbs.moc"
