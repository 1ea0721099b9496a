// SPDX-License-Identifier: GPL-3.0-or-later
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "app/export/sheet/advance_sheet.h"
#include "app/export/sheet/sheet_plan.h"
#include "app/export/sheet/table_block.h"
#include "core/file/read.h"
#include "core/units/bands.h"
#include "tests/app/export/sheet/written_pages.h"
#include "tests/support/registry.h"

using namespace howlmap;
using namespace howlmap::app;
using namespace howlmap::app::test;

namespace {

/// `stretch` lengthens every text by 40 per cent, as a translation may.
std::string word(const char* text, int number, bool stretch) {
    std::string out = std::string(text) + " " + std::to_string(number);
    if (stretch) out += " " + out.substr(0, out.size() * 2 / 5);
    return out;
}

SheetContent content_of(int inputs, int mixes, bool stretch) {
    SheetContent content;
    Show& show = content.show;
    show.title = "Evening of the paper boats";
    show.venue = "Invented Hall";
    show.act = "The Paper Boats";
    show.date = "2031-05-14";
    show.contact.name = "Ada Example";
    show.contact.phone = "000 111";
    for (int i = 1; i <= inputs; ++i) {
        Input input;
        input.id = "in" + std::to_string(i);
        input.channel = i;
        input.name = word("source", i, stretch);
        input.stand = "short boom";
        input.notes = word("note for the patch of", i, stretch);
        show.inputs.push_back(input);
    }
    for (int m = 1; m <= mixes; ++m) {
        Loudspeaker wedge;
        wedge.id = "w" + std::to_string(m);
        wedge.name = word("floor", m, stretch);
        show.loudspeakers.push_back(wedge);
        Performer player;
        player.id = "p" + std::to_string(m);
        player.name = word("Player", m, stretch);
        player.mix = "m" + std::to_string(m);
        show.performers.push_back(player);
        Mix mix;
        mix.id = player.mix;
        mix.number = m;
        mix.name = word("mix of", m, stretch);
        mix.loudspeakers = {wedge.id};
        for (int i = 1; i <= inputs && i <= 6; ++i)
            mix.sends.push_back({"in" + std::to_string(i), 100.0 - 2.5 * i, {}});
        for (int band = 0; band < kThirdOctaves; ++band)  // figures in every place, wide ones side by side
            mix.graphic_eq[band] = m % 3 == 0 ? -12.0 : m % 3 == 1 ? 12.0 : -10.5 + 0.5 * (band % 7);
        show.mixes.push_back(mix);
    }
    AnalysisResult& result = content.result;
    result.margin_db = 4.2;
    result.verdict = Verdict::tight;
    Ring ring;
    ring.hz = 512.0;
    ring.note = "C5";
    if (inputs && mixes) {
        ring.strongest_input = "in1";
        ring.strongest_loudspeaker = "w1";
        ring.strongest_mix = "m1";
    }
    result.rings = {ring};
    result.tolerance = ToleranceFigures{1000, 1, 2.1, 4.0, 6.0, {}};
    for (const auto& [band, probability] : {std::pair{500.0, 0.4}, {315.0, 0.3}, {1250.0, 0.2}, {200.0, 0.1}})
        result.tolerance->first_ring.push_back(
            {band, probability, band, ring.strongest_input, ring.strongest_loudspeaker, ring.strongest_mix, {}});
    return content;
}

/// Everything on a stage of 12 by 8 m: 48 inputs in four rows, players behind them, wedges in front.
SheetContent on_stage(SheetContent content) {
    Show& show = content.show;
    show.stage.outline = {{-6.0, 0.0}, {6.0, 0.0}, {6.0, 8.0}, {-6.0, 8.0}};
    for (std::size_t i = 0; i < show.inputs.size(); ++i) {
        show.inputs[i].has_position = true;
        show.inputs[i].position = {-5.5 + static_cast<double>(i % 12), 1.6 + 1.5 * static_cast<double>(i / 12), 1.5};
    }
    for (std::size_t m = 0; m < show.performers.size(); ++m) {
        const double x = -5.6 + 0.75 * static_cast<double>(m);
        show.performers[m].position = {x, 7.5};
        show.loudspeakers[m].position = {x, 0.5, 0.2};
        show.loudspeakers[m].kind = LoudspeakerKind::wedge;
    }
    return content;
}

/// A plan that takes all the room there is.
PlanBlock placeholder() {
    return {[](QSizeF room) { return room.height(); },
            [](QPainter& painter, const QRectF& rect) { painter.drawRect(rect); },
            {}};
}

}  // namespace

class TestSheet : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void initTestCase() {
        if (QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty())
            QSKIP("poppler-utils is not installed");
    }

    void every_text_can_be_found_and_no_page_is_too_many() {
        QTemporaryDir dir;
        const SheetContent content = content_of(8, 5, false);
        const QString text = without_breaks(text_of(content, {}, dir));
        for (const Input& input : content.show.inputs) {
            QVERIFY2(text.contains(QString::fromStdString(input.name)), input.name.c_str());
            QVERIFY2(text.contains(QString::fromStdString(input.notes)), input.notes.c_str());
        }
        for (const Mix& mix : content.show.mixes) QVERIFY(text.contains(QString::fromStdString(mix.name)));
        for (const Performer& player : content.show.performers)
            QVERIFY(text.contains(QString::fromStdString(player.name)));
        QVERIFY(text.contains(QStringLiteral("count on 2.1 dB")));
        QVERIFY(text.contains(QStringLiteral("not a measurement of hearing safety")));
        QVERIFY(text.contains(QStringLiteral("page 1 of 4")) || text.contains(QStringLiteral("page 1 of 3")));
    }

    void nothing_leaves_the_page_or_overlaps_in_a_large_show_with_long_texts() {
        QTemporaryDir dir;
        const QString path = dir.filePath(QStringLiteral("big.pdf"));
        write(sheet_pdf(content_of(48, 16, true), {}, placeholder()), path);
        const QString boxes = run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), path, QStringLiteral("-")});
        check_boxes(boxes);
    }

    void nothing_overlaps_on_a_full_plan_with_long_texts_data() {
        QTest::addColumn<int>("paper");
        QTest::addColumn<int>("units");
        QTest::newRow("A4, metres") << int(QPageSize::A4) << int(Units::metric);
        QTest::newRow("Letter, feet") << int(QPageSize::Letter) << int(Units::imperial);
    }
    /// 48 inputs, 16 mixes and players on a drawn stage, every text 40 per cent longer: each can still be found.
    void nothing_overlaps_on_a_full_plan_with_long_texts() {
        QFETCH(int, paper);
        QFETCH(int, units);
        QTemporaryDir dir;
        SheetContent content = on_stage(content_of(48, 16, true));
        content.show.display.units = static_cast<Units>(units);
        SheetOptions options;
        options.paper = static_cast<QPageSize::PageSizeId>(paper);
        const QString path = dir.filePath(QStringLiteral("full.pdf"));
        write(sheet_pdf(content, options, plan_of_sheet(content, {})), path);
        check_boxes(run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), path, QStringLiteral("-")}));
        const QString text =
            without_breaks(run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")}));
        const auto found = [&](const std::string& words) {
            for (const QString& word : QString::fromStdString(words).split(u' '))
                QVERIFY2(text.contains(word), words.c_str());
        };
        for (const Input& input : content.show.inputs) found(input.name), found(input.notes);
        for (const Mix& mix : content.show.mixes) found(mix.name);
        for (const Performer& player : content.show.performers) found(player.name);
    }

    void the_same_content_gives_the_same_bytes_but_for_dates() {
        const SheetContent content = on_stage(content_of(12, 4, false));
        const auto once = [&] {
            QByteArray bytes = sheet_pdf(content, {}, plan_of_sheet(content, {}));
            const auto at = bytes.indexOf("/CreationDate");
            return bytes.replace(at, bytes.indexOf('\n', at) - at, "");
        };
        QCOMPARE(once(), once());
    }

    void the_file_is_sound_and_its_fonts_are_inside() {
        QTemporaryDir dir;
        const QString path = dir.filePath(QStringLiteral("sheet.pdf"));
        write(sheet_pdf(content_of(6, 3, false), {}, placeholder()), path);
        if (!QStandardPaths::findExecutable(QStringLiteral("qpdf")).isEmpty())
            QVERIFY(
                run(QStringLiteral("qpdf"), {QStringLiteral("--check"), path}).contains(QStringLiteral("No syntax")));
        const QStringList fonts = run(QStringLiteral("pdffonts"), {path}).split(QLatin1Char('\n')).mid(2);
        QVERIFY(!fonts.isEmpty());
        for (const QString& line : fonts)
            if (!line.trimmed().isEmpty()) QVERIFY2(line.contains(QStringLiteral(" yes ")), qPrintable(line));
    }

    void examples_can_be_sent_as_they_are_data() {
        QTest::addColumn<int>("most_pages");
        for (const char* name : {"classroom", "duo", "duo-in-ears", "fiddle-and-wedge", "folk-band-six"})
            QTest::newRow(name) << 4;
        QTest::newRow("sixteen-inputs") << 8;
    }
    /// With their real plans: every input, mix, player and note can be found, nothing leaves the page.
    void examples_can_be_sent_as_they_are() {
        QFETCH(int, most_pages);
        QFile file(QStringLiteral(":/examples/%1.howlmap").arg(QLatin1StringView(QTest::currentDataTag())));
        QVERIFY(file.open(QIODevice::ReadOnly));
        auto read = read_show(file.readAll().toStdString());
        QVERIFY(read);
        SheetContent content{read->show, {}};
        content.show.performers.front().notes = "hears with the left ear only";
        content.show.loudspeakers.front().notes = "brings its own stand";
        AnalysisOptions quick;
        quick.tolerance = quick.listening = false;
        content.result = *analyse(content.show, quick);
        QTemporaryDir dir;
        const QString path = dir.filePath(QStringLiteral("example.pdf"));
        write(sheet_pdf(content, {}, plan_of_sheet(content, {})), path);
        if (!QStandardPaths::findExecutable(QStringLiteral("qpdf")).isEmpty())
            QVERIFY(
                run(QStringLiteral("qpdf"), {QStringLiteral("--check"), path}).contains(QStringLiteral("No syntax")));
        const QString text =
            without_breaks(run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")}));
        const auto names = [&](const auto& items) {
            for (const auto& item : items)
                QVERIFY2(text.contains(QString::fromStdString(item.name)), item.name.c_str());
        };
        names(content.show.inputs);
        names(content.show.mixes);
        names(content.show.performers);
        QVERIFY(text.contains(QStringLiteral("left ear only")) && text.contains(QStringLiteral("its own stand")));
        const auto pages = QRegularExpression(QStringLiteral("page 1 of (\\d+)")).match(text);
        QVERIFY(pages.hasMatch() && pages.captured(1).toInt() <= most_pages);
        check_boxes(run(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), path, QStringLiteral("-")}), 1);
    }

    void a_metre_is_what_the_bar_says_data() {
        QTest::addColumn<int>("units");
        QTest::newRow("metric") << static_cast<int>(Units::metric);
        QTest::newRow("feet") << static_cast<int>(Units::imperial);
    }
    /// Measured on the page: the edges of an 8 m stage against the scale bar and against the printed scale, within
    /// 0.2 mm.
    void a_metre_is_what_the_bar_says() {
        QFETCH(int, units);
        constexpr double kStage = 8.0, kDpi = 300.0, kMm = 25.4 / kDpi;
        QTemporaryDir dir;
        SheetContent content;
        content.show.display.units = static_cast<Units>(units);
        content.show.stage.outline = {{-4.0, 0.0}, {4.0, 0.0}, {4.0, 5.0}, {-4.0, 5.0}};
        SheetOptions options;
        options.inputs = options.mixes = options.risks = false;
        const QString path = dir.filePath(QStringLiteral("scale.pdf"));
        write(sheet_pdf(content, options, plan_of_sheet(content, {})), path);
        const QString text = run(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
        const auto scale = QRegularExpression(QStringLiteral("1 : (\\d+)")).match(text);
        const auto bar = QRegularExpression(QStringLiteral("(\\d+(?:\\.\\d+)?)\\s*(m|ft)\\b")).match(text);
        QVERIFY2(scale.hasMatch() && bar.hasMatch(), qPrintable(text));
        const double bar_m = bar.captured(1).toDouble() * (bar.captured(2) == QStringLiteral("ft") ? 0.3048 : 1.0);
        run(QStringLiteral("pdftoppm"),
            {QStringLiteral("-r"), QStringLiteral("300"), QStringLiteral("-gray"), QStringLiteral("-png"),
             QStringLiteral("-singlefile"), path, dir.filePath(QStringLiteral("page"))});
        const QImage page(dir.filePath(QStringLiteral("page.png")));
        QVERIFY(!page.isNull());
        const auto [stage_px, bar_px] = widths_on(page);
        QVERIFY2(std::abs(stage_px * kMm - 1000.0 * kStage / scale.captured(1).toDouble()) < 0.2,
                 qPrintable(QString::number(stage_px * kMm)));
        QVERIFY2(std::abs(bar_px * kMm - bar_m / kStage * stage_px * kMm) < 0.2,
                 qPrintable(QStringLiteral("%1 px bar, %2 px stage").arg(bar_px).arg(stage_px)));
    }

    void options_choose_pages() {
        QTemporaryDir dir;
        SheetOptions options;
        options.plan = options.mixes = options.risks = false;
        const QString text = text_of(content_of(4, 2, false), options, dir);
        QVERIFY(text.contains(QStringLiteral("Input list")));
        QVERIFY(!text.contains(QStringLiteral("Mixes and starting equalisers")));
        options = {};
        const QString whole = without_breaks(text_of(content_of(4, 2, false), options, dir));
        QVERIFY2(whole.contains(QStringLiteral("no shadows of people and stands")), qPrintable(whole));
        options.one_mix_a_page = true;
        options.plan = options.inputs = options.risks = false;
        const QString desk = text_of(content_of(4, 3, false), options, dir);
        QVERIFY(desk.contains(QStringLiteral("page 4 of 4")));  // three mixes, and the list for all of them
        QVERIFY(desk.indexOf(QStringLiteral("page 3 of 4")) < desk.indexOf(QStringLiteral("Ring-out list")));
        QCOMPARE(desk.count(QStringLiteral("Set at the desk")), 3);
        QCOMPARE(desk.count(QStringLiteral("Most likely to ring through this mix")), 1);
        options.inputs = true;  // then the first mix begins a page of its own too
        QVERIFY(text_of(content_of(4, 3, false), options, dir).contains(QStringLiteral("page 5 of 5")));
    }

    void an_equaliser_at_zero_is_a_line_and_the_bands_to_expect_are_named() {
        QTemporaryDir dir;
        SheetOptions options;
        options.plan = options.inputs = options.risks = false;
        SheetContent content = content_of(4, 2, false);
        const QString drawn = without_breaks(text_of(content, options, dir));
        QVERIFY(!drawn.contains(QStringLiteral("equaliser flat")));
        QVERIFY(drawn.contains(QStringLiteral("1k25")));  // a label below its fader
        for (Mix& mix : content.show.mixes) mix.graphic_eq.clear();
        const QString text = without_breaks(text_of(content, options, dir));
        QCOMPARE(text.count(QStringLiteral("equaliser flat")), 2);
        QCOMPARE(text.count(QStringLiteral("equaliser flat; may ring at 500 Hz (1), 315 Hz (2), 1.25 kHz (3)")), 1);
        QVERIFY(!text.contains(QStringLiteral("1k25")));
    }

    void the_risks_are_told_before_the_lists() {
        QTemporaryDir dir;
        const QString text = without_breaks(text_of(content_of(4, 2, false), {}, dir));
        const auto risks = text.indexOf(QStringLiteral("Risks: "));
        QVERIFY(risks >= 0 && risks < text.indexOf(QStringLiteral("Input list")));
    }

    void changes_since_an_older_version_have_their_own_list() {
        QTemporaryDir dir;
        SheetContent content = content_of(4, 2, false);
        SheetOptions options;
        options.since = std::make_shared<const Show>(content.show);
        options.since_name = QStringLiteral("may.howlmap");
        content.show.loudspeakers[0].position.x += 1.0;
        const QString text = without_breaks(text_of(content, options, dir));
        QVERIFY(text.contains(QStringLiteral("Changed since may.howlmap")));
        QVERIFY2(text.contains(QStringLiteral("position floor 1")), qPrintable(text));
    }

    void columns_fill_the_width_and_respect_words() {
        const report::Table table{"", {"a", "b"}, {{"x", "some rather long text that has to wrap somewhere"}}};
        const QList<double> narrow = column_widths(table, 90.0);
        QCOMPARE(narrow[0] + narrow[1], 90.0);
        const QList<double> wide = column_widths(table, 900.0);
        QCOMPARE(wide[0] + wide[1], 900.0);
        QVERIFY(wide[1] > wide[0]);
        const report::Table figures{"", {"a", "b"}, {{"4.24 kHz", QStringLiteral("word ").repeated(99).toStdString()}}};
        const report::Table alone{"", {"a", "b"}, {{"4.24 kHz", ""}}};
        QCOMPARE(column_widths(figures, 300.0)[0], column_widths(alone, 300.0)[0]);  // a figure stays beside its unit
    }

  private:
    static QString text_of(const SheetContent& content, const SheetOptions& options, const QTemporaryDir& dir) {
        const QString path = dir.filePath(QStringLiteral("text.pdf"));
        write(sheet_pdf(content, options, placeholder()), path);
        return run(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
    }
};

HOWLMAP_TEST(TestSheet)
#include "test_sheet.moc"
