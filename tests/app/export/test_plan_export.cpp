// SPDX-License-Identifier: GPL-3.0-or-later
// The plan on paper: searchable, to scale, whole; judged by tools of others where they are installed.
#include <QFile>
#include <QImage>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QtTest>
#include <cmath>

#include "app/export/plan_export.h"
#include "app/export/scale_bar.h"
#include "app/settings/theme.h"
#include "core/analysis/analysis.h"
#include "core/file/read.h"
#include "tests/support/registry.h"
#include "tests/support/run_to_end.h"

namespace howlmap::app {
namespace {

Show example(const char* name) {
    QFile file(QStringLiteral(":/examples/%1.howlmap").arg(QLatin1String(name)));
    if (!file.open(QIODevice::ReadOnly)) return {};
    const auto read = read_show(file.readAll().toStdString());
    return read ? read->show : Show{};
}

PlanDrawing drawing() {
    PlanDrawing wish;
    wish.font = QFont(QStringLiteral("DejaVu Sans"));
    return wish;
}

/// Runs a tool on a file that holds the bytes; skips quietly (empty) where the tool is missing.
struct Tool {
    bool there = false;
    int status = -1;
    QByteArray out;
};
Tool run(const char* program, const QByteArray& bytes, const QString& name, const QStringList& before,
         const QStringList& after = {}) {
    Tool tool;
    const QString path = QStandardPaths::findExecutable(QLatin1String(program));
    if (path.isEmpty()) return tool;
    tool.there = true;
    QTemporaryDir folder;
    QFile file(folder.filePath(name));
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size()) return tool;
    file.close();
    const test::Ended ended = test::run_to_end(path, before + QStringList{file.fileName()} + after);
    tool.status = ended.status;
    tool.out = ended.out;
    return tool;
}

QStringList names_of(const Show& show) {
    QStringList names;
    for (const ObjectLook& look : looks_of(show))
        if (!look.label.isEmpty()) names.append(look.label);
    return names;
}

/// Root mean square of the difference of two pictures of one size, as a part of the range.
double rms_apart(const QImage& a, const QImage& b) {
    double sum = 0.0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QRgb p = a.pixel(x, y), q = b.pixel(x, y);
            for (const int d : {qRed(p) - qRed(q), qGreen(p) - qGreen(q), qBlue(p) - qBlue(q)}) sum += d * d;
        }
    return std::sqrt(sum / (3.0 * a.width() * a.height())) / 255.0;
}

QString joined_words(const QByteArray& text) { return QString::fromUtf8(text).simplified(); }
}  // namespace

class TestPlanExport : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void pdf_text_names_every_object();
    void pdf_is_sound_and_fonts_are_embedded();
    void pdf_is_to_scale();
    void svg_is_well_formed_and_keeps_text();
    void svg_looks_like_png_data();
    void svg_looks_like_png();
    void a_crowd_keeps_its_names();
    void png_has_size_and_resolution();
    void png_can_be_transparent();
    void the_largest_round_scale_that_fits_is_taken();
    void the_same_show_gives_the_same_bytes();
    void endings();
};

void TestPlanExport::pdf_text_names_every_object() {
    const Show show = example("folk-band-six");
    QVERIFY(!show.loudspeakers.empty());
    const Tool tool = run("pdftotext", plan_bytes(show, drawing(), {}), QStringLiteral("plan.pdf"),
                          {QStringLiteral("-raw")}, {QStringLiteral("-")});
    if (!tool.there) QSKIP("pdftotext is not installed");
    QCOMPARE(tool.status, 0);
    const QString words = joined_words(tool.out);
    for (const QString& name : names_of(show))
        QVERIFY2(words.contains(name.simplified()), qPrintable(name + QStringLiteral(" in ") + words));
    QVERIFY(words.contains(QString::fromStdString(show.title)));
    QVERIFY(words.contains(QStringLiteral("AUDIENCE")));
}

void TestPlanExport::pdf_is_sound_and_fonts_are_embedded() {
    const QByteArray pdf = plan_bytes(example("duo"), drawing(), {});
    const Tool check = run("qpdf", pdf, QStringLiteral("plan.pdf"), {QStringLiteral("--check")});
    if (!check.there) QSKIP("qpdf is not installed");
    QCOMPARE(check.status, 0);
    const Tool fonts = run("pdffonts", pdf, QStringLiteral("plan.pdf"), {});
    if (!fonts.there) QSKIP("pdffonts is not installed");
    const QList<QByteArray> lines = fonts.out.split('\n');
    int seen = 0;
    for (qsizetype i = 2; i < lines.size(); ++i) {
        if (lines[i].trimmed().isEmpty()) continue;
        ++seen;
        QVERIFY2(lines[i].contains(" yes "), lines[i].constData());
    }
    QVERIFY(seen > 0);
}

/// Two marks a known distance apart, found again in the PDF by the boxes of their words.
void TestPlanExport::pdf_is_to_scale() {
    Show show;
    for (const double x : {-3.0, 3.0}) {
        Mark mark;
        mark.id = x < 0 ? "a" : "b";
        mark.kind = "note";
        mark.text = x < 0 ? "WEST" : "EAST";
        mark.position = {x, 2.0};
        show.marks.push_back(mark);
    }
    const PlanPainter plan(show, drawing());
    const double scale = plan.scale_for(QSizeF(277.0 / 25.4 * 96.0, 190.0 / 25.4 * 96.0));
    const Tool tool = run("pdftotext", plan_bytes(show, drawing(), {}), QStringLiteral("plan.pdf"),
                          {QStringLiteral("-bbox")}, {QStringLiteral("-")});
    if (!tool.there) QSKIP("pdftotext is not installed");
    const auto left_of = [&](const char* word) {
        const QRegularExpression form(QStringLiteral("xMin=\"([0-9.]+)\"[^>]*>%1<").arg(QLatin1String(word)));
        return form.match(QString::fromUtf8(tool.out)).captured(1).toDouble();
    };
    const double apart_mm = (left_of("EAST") - left_of("WEST")) / 72.0 * 25.4;
    QVERIFY2(std::abs(apart_mm - 6000.0 / scale) < 0.2 * 6.0,
             qPrintable(QStringLiteral("%1 mm at 1 : %2").arg(apart_mm).arg(scale)));
    QVERIFY(tool.out.contains(QByteArray::number(scale)));
}

void TestPlanExport::svg_is_well_formed_and_keeps_text() {
    const Show show = example("folk-band-six");
    PlanFile file;
    file.format = PlanFormat::svg;
    const QByteArray svg = plan_bytes(show, drawing(), file);
    QVERIFY(svg.contains("<text"));
    for (const QString& name : names_of(show)) QVERIFY2(svg.contains(name.toHtmlEscaped().toUtf8()), qPrintable(name));
    const Tool lint = run("xmllint", svg, QStringLiteral("plan.svg"), {QStringLiteral("--noout")});
    if (lint.there) QCOMPARE(lint.status, 0);
    const Tool render = run("rsvg-convert", svg, QStringLiteral("plan.svg"), {});
    if (render.there) QVERIFY(render.status == 0 && !QImage::fromData(render.out).isNull());
}

void TestPlanExport::svg_looks_like_png_data() {
    QTest::addColumn<QByteArray>("name");
    QTest::addColumn<bool>("dark");
    for (const char* name : {"duo", "folk-band-six", "sixteen-inputs"})
        for (const bool dark : {false, true})
            QTest::newRow(qPrintable(QLatin1StringView(name) + (dark ? QStringLiteral(" dark") : QString())))
                << QByteArray(name) << dark;
}

/// Loop lines, a map and everything else, drawn by others from the SVG as by the program itself: root mean square of
/// the difference below 5 % of the range. A picture without its objects, its map or its words is further away.
void TestPlanExport::svg_looks_like_png() {
    QFETCH(const QByteArray, name);
    QFETCH(const bool, dark);
    const Show show = example(name.constData());
    PlanDrawing all = drawing();
    if (dark) all.ink = Ink::from(dark_palette());
    all.analysis = std::make_shared<AnalysisResult>(*analyse(show, {.tolerance = false, .earlier = {}}));
    MapRequest request;
    request.kind = MapKind::feedback;
    request.id = all.analysis->rings.front().strongest_input;
    request.options.step = 0.25;
    const auto grid = std::make_shared<const MapGrid>(*make_map(show, request));
    all.map = std::make_shared<const MapPicture>(picture_of(grid, look_of(show, request, all.ink)));
    PlanFile file;
    file.dpi = 96.0;
    file.format = PlanFormat::png;
    const QImage png = QImage::fromData(plan_bytes(show, all, file)).convertToFormat(QImage::Format_RGB32);
    file.format = PlanFormat::svg;
    const Tool tool = run("rsvg-convert", plan_bytes(show, all, file), QStringLiteral("plan.svg"),
                          {QStringLiteral("--width"), QString::number(png.width()), QStringLiteral("--height"),
                           QString::number(png.height())});
    if (!tool.there) QSKIP("rsvg-convert is not installed");
    QCOMPARE(tool.status, 0);
    const QImage svg = QImage::fromData(tool.out).convertToFormat(QImage::Format_RGB32);
    QCOMPARE(svg.size(), png.size());
    const double apart = rms_apart(svg, png);
    QVERIFY2(apart < 0.05, qPrintable(QString::number(apart)));
    all.map.reset();
    file.format = PlanFormat::png;
    const QImage bare = QImage::fromData(plan_bytes(show, all, file)).convertToFormat(QImage::Format_RGB32);
    QVERIFY2(rms_apart(bare, svg) > 2.0 * apart, qPrintable(QString::number(rms_apart(bare, svg))));
}

/// More names than are searched a place for one against all others: each is still there.
void TestPlanExport::a_crowd_keeps_its_names() {
    Show show;
    for (int i = 0; i < 150; ++i) {
        Mark mark;
        mark.id = "m" + std::to_string(i), mark.text = "mark " + std::to_string(i) + " of many";
        mark.position = {-3.9 + 0.5 * (i % 15), 0.2 + 0.45 * (i / 15)};
        show.marks.push_back(mark);
    }
    PlanFile file;
    file.format = PlanFormat::svg;
    const QByteArray svg = plan_bytes(show, drawing(), file);
    for (const Mark& mark : show.marks) QVERIFY2(svg.contains(mark.text.c_str()), mark.text.c_str());
}

void TestPlanExport::png_has_size_and_resolution() {
    PlanFile file;
    file.format = PlanFormat::png;
    file.size = QSize(900, 700);
    file.dpi = 200.0;
    const QImage image = QImage::fromData(plan_bytes(example("duo"), drawing(), file));
    QCOMPARE(image.size(), QSize(900, 700));
    QCOMPARE(qRound(image.dotsPerMeterX() * 0.0254), 200);
    int inked = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) inked += qGray(image.pixel(x, y)) < 100 ? 1 : 0;
    QVERIFY(inked > 2000);
}

void TestPlanExport::png_can_be_transparent() {
    PlanFile file;
    file.format = PlanFormat::png;
    file.size = QSize(600, 500);
    QCOMPARE(qAlpha(QImage::fromData(plan_bytes(example("duo"), drawing(), file)).pixel(1, 1)), 255);
    file.transparent = true;
    QCOMPARE(qAlpha(QImage::fromData(plan_bytes(example("duo"), drawing(), file)).pixel(1, 1)), 0);
}

void TestPlanExport::the_largest_round_scale_that_fits_is_taken() {
    const Show show;  // a stage of 8 by 5 m
    const PlanPainter plan(show, drawing());
    const double scale = plan.scale_for({1047.0, 718.0});
    QCOMPARE(scale, 40.0);
    QVERIFY(std::abs(PlanPainter::pixels_per_metre(50.0) - 75.59) < 0.01);
    QCOMPARE(scale_bar_length(PlanPainter::pixels_per_metre(50.0), Units::metric), 2.0);
    QVERIFY(std::abs(scale_bar_length(100.0, Units::imperial) - 5 * 0.3048) < 1e-12);
}

void TestPlanExport::the_same_show_gives_the_same_bytes() {
    PlanFile file;
    for (const PlanFormat format : {PlanFormat::png, PlanFormat::svg}) {
        file.format = format;
        file.dpi = 60.0;
        QVERIFY(plan_bytes(example("duo"), drawing(), file) == plan_bytes(example("duo"), drawing(), file));
    }
}

void TestPlanExport::endings() {
    QVERIFY(plan_format_of(QStringLiteral("a.PNG")) == PlanFormat::png);
    QVERIFY(plan_format_of(QStringLiteral("x/y.svg")) == PlanFormat::svg);
    QVERIFY(plan_format_of(QStringLiteral("plan.pdf")) == PlanFormat::pdf);
    QVERIFY(!plan_format_of(QStringLiteral("plan.txt")));
    QVERIFY(!plan_format_of(QStringLiteral("pdf")));
}

HOWLMAP_TEST(TestPlanExport)

}  // namespace howlmap::app

#include "test_plan_export.moc"
