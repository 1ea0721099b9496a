// SPDX-License-Identifier: GPL-3.0-or-later
// The sheets of the examples as their readers get them: both languages, both papers.
#include <QRegularExpression>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTranslator>

#include "app/export/sheet/advance_sheet.h"
#include "app/export/sheet/sheet_plan.h"
#include "app/settings/language.h"
#include "core/file/read.h"
#include "core/units/translate.h"
#include "tests/app/export/sheet/written_pages.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;

namespace {

Show example_named(const QString& name) {
    QFile file(QStringLiteral(":/examples/%1.howlmap").arg(name));
    if (!file.open(QIODevice::ReadOnly)) return {};
    auto read = read_show(file.readAll().toStdString());
    return read ? read->show : Show{};
}

SheetContent analysed(Show show) {
    show.tolerance.draws = 32;  // enough for a ring-out list
    AnalysisOptions quick;
    quick.listening = false;
    return {show, *analyse(show, quick)};
}

/// The text of each page.
QStringList pages_of(const SheetContent& content, const SheetOptions& options) {
    QTemporaryDir dir;
    const QString path = dir.filePath(QStringLiteral("sheet.pdf"));
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return {};
    file.write(sheet_pdf(content, options, plan_of_sheet(content, {})));
    file.close();
    const QString text =
        app::test::run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    if (text.isEmpty()) return {};
    QStringList pages = text.split(u'\f');
    pages.removeLast();
    return pages;
}

}  // namespace

class TestSheetPages : public QObject {
    Q_OBJECT

    static void rows(std::initializer_list<const char*> names) {
        QTest::addColumn<QString>("name");
        QTest::addColumn<bool>("german");
        QTest::addColumn<int>("paper");
        for (const char* name : names)
            for (const bool german : {false, true})
                for (const auto paper : {QPageSize::A4, QPageSize::Letter})
                    QTest::addRow("%s, %s, %s", name, german ? "German" : "English",
                                  paper == QPageSize::A4 ? "A4" : "Letter")
                        << QString::fromLatin1(name) << german << static_cast<int>(paper);
    }

  private Q_SLOTS:
    void initTestCase() {
        if (QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty())
            QSKIP("poppler-utils is not installed");
    }
    void cleanup() {
        set_translator({});
        set_decimal_mark('.');
        QLocale::setDefault(QLocale::c());
        qDeleteAll(qApp->findChildren<QTranslator*>());
    }

    void six_players_take_four_pages_at_most_data() { rows({"folk-band-six", "sixteen-inputs"}); }
    /// And none of them is left half empty but the last.
    void six_players_take_four_pages_at_most() {
        QFETCH(QString, name);
        QFETCH(bool, german);
        QFETCH(int, paper);
        if (german) QLocale::setDefault(QLocale(QLocale::German)), speak(QLocale(QLocale::German));
        SheetOptions options;
        options.paper = static_cast<QPageSize::PageSizeId>(paper);
        const SheetContent content = analysed(example_named(name));
        QCOMPARE(content.show.performers.size(), std::size_t{6});
        const QStringList pages = pages_of(content, options);
        QVERIFY2(pages.size() >= 2 && pages.size() <= 4, qPrintable(QString::number(pages.size())));
        for (int page = 0; page < pages.size(); ++page) {  // whose page it is, and of which version
            const QString words = QCoreApplication::translate("Sheet", "page %1 of %2").arg(page + 1).arg(pages.size());
            QVERIFY2(pages[page].contains(words), qPrintable(words));
            QVERIFY(pages[page].contains(QString::fromStdString(content.show.title)));
            QVERIFY(pages[page].contains(options.made.toString(Qt::ISODate)));
        }
        // The list to patch from is whole, on the page of the plan.
        for (const Input& input : content.show.inputs)
            QVERIFY2(pages[0].count(QString::fromStdString(input.name)) >= (input.has_position ? 2 : 1),
                     input.name.c_str());
        QVERIFY(
            pages.last().contains(german ? QStringLiteral("Liste zum Einpfeifen") : QStringLiteral("Ring-out list")));
    }

    void german_has_decimal_commas_everywhere_data() {
        QTest::addColumn<QString>("name");
        for (const char* name : {"classroom", "duo", "duo-in-ears", "fiddle-and-wedge", "folk-band-six"})
            QTest::newRow(name) << QString::fromLatin1(name);
    }
    void german_has_decimal_commas_everywhere() {
        QFETCH(QString, name);
        static const QRegularExpression point(QStringLiteral("\\d\\.\\d")), comma(QStringLiteral("\\d,\\d"));
        Show show = example_named(name);
        show.marks.clear();  // texts of the user stay as they were typed
        show.mixes[0].graphic_eq = {{11, -4.5}};
        show.mixes[0].notches.push_back({545.5, 8.5, -6.5, {}});
        show.mixes[0].sends[0].level_db = 92.5;
        show.soundcheck.push_back({1210.0, 1250.0, "", "", "cut", -4.5, "", "", {}});
        const SheetContent content = analysed(show);
        SheetOptions options;
        auto older = std::make_shared<Show>(show);
        older->loudspeakers[0].position.x += 0.25;
        options.since = older;
        options.since_name = QStringLiteral("older");
        QVERIFY(pages_of(content, options).join(u' ').contains(point));
        QLocale::setDefault(QLocale(QLocale::German));
        speak(QLocale(QLocale::German));
        const QString text = pages_of(content, options).join(u' ');
        QVERIFY(text.contains(comma));
        const auto left = point.match(text);
        QVERIFY2(!left.hasMatch(), qPrintable(text.mid(left.capturedStart() - 20, 60)));
    }

    void names_without_a_space_and_notes_of_pages_stay_on_the_page() {
        SheetContent content = analysed(example_named(QStringLiteral("duo")));
        content.show.inputs[0].name = std::string(120, 'A');
        content.show.performers[0].name = std::string(90, 'N');
        content.show.inputs[1].notes.clear();
        for (int k = 1; k <= 900; ++k) content.show.inputs[1].notes += "word" + std::to_string(k) + " ";
        QTemporaryDir dir;
        const QString path = dir.filePath(QStringLiteral("long.pdf"));
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        SheetOptions options;
        options.paper = QPageSize::A4;
        file.write(sheet_pdf(content, options, plan_of_sheet(content, {})));
        file.close();
        const QString text =
            app::test::run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), path, QStringLiteral("-")});
        static const QRegularExpression box(QStringLiteral(
            "<word xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\" yMax=\"([0-9.-]+)\">([^<]*)"));
        const QRectF paper(QPointF(), QPageSize(QPageSize::A4).size(QPageSize::Point));
        QSet<QString> found;
        for (auto it = box.globalMatch(text); it.hasNext();) {
            const auto word = it.next();
            const QRectF place(QPointF(word.captured(1).toDouble(), word.captured(2).toDouble()),
                               QPointF(word.captured(3).toDouble(), word.captured(4).toDouble()));
            QVERIFY2(paper.contains(place), qPrintable(word.captured(5)));
            found.insert(word.captured(5));
        }
        for (int k = 1; k <= 900; ++k)
            QVERIFY2(found.contains(QStringLiteral("word%1").arg(k)), qPrintable(QString::number(k)));
    }

    void notes_longer_than_a_page_are_told_after_the_lists() {
        SheetContent content = analysed(example_named(QStringLiteral("duo")));
        for (int k = 1; k <= 400; ++k) content.show.notes += "Sentence number " + std::to_string(k) + " of the notes. ";
        const QStringList pages = pages_of(content, {});
        QVERIFY(pages.size() > 2 && pages[0].contains(QStringLiteral("AUDIENCE")));
        const QString text = pages.join(u' ').simplified();
        int told = 0;  // all but those that the foot of a page stands in
        for (int k = 1; k <= 400; ++k) told += text.contains(QStringLiteral("number %1 of").arg(k)) ? 1 : 0;
        QVERIFY2(told > 400 - pages.size(), qPrintable(QString::number(told)));
        for (const int k : {1, 400}) QVERIFY(text.contains(QStringLiteral("number %1 of").arg(k)));
    }
};

HOWLMAP_TEST(TestSheetPages)
#include "test_sheet_pages.moc"
