// SPDX-License-Identifier: GPL-3.0-or-later
// The plan that is shown, on paper, in files and on the clipboard.
#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QTemporaryDir>
#include <array>

#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_output.h"
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestOutput : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void writes_what_the_ending_says();
    void refuses_with_a_reason();
    void prints_one_page_that_suits_the_plan();
    void the_preview_paints();
    void a_map_on_the_screen_is_a_map_on_paper();
    void the_clipboard_gets_a_picture();
};

void TestOutput::writes_what_the_ending_says() {
    Stage_fixture f;
    QTemporaryDir folder;
    const std::array<std::pair<const char*, QByteArray>, 3> kinds = {std::pair{"plan.pdf", QByteArray("%PDF-")},
                                                                     std::pair{"plan.svg", QByteArray("<?xml")},
                                                                     std::pair{"plan.png", QByteArray("\x89PNG")}};
    for (const auto& [name, start] : kinds) {
        const QString path = folder.filePath(QLatin1String(name));
        QVERIFY(save_picture(f.view, path, {}).has_value());
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY2(file.readAll().startsWith(start), name);
    }
}

void TestOutput::refuses_with_a_reason() {
    Stage_fixture f;
    const Outcome ending = save_picture(f.view, QStringLiteral("plan.txt"), {});
    QVERIFY(!ending && ending.error().detail.contains(QStringLiteral(".pdf")));
    const Outcome folder = save_picture(f.view, QStringLiteral("/nowhere/at/all/plan.pdf"), {});
    QVERIFY(!folder && !folder.error().detail.isEmpty());
}

void TestOutput::prints_one_page_that_suits_the_plan() {
    Stage_fixture f;
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("print.pdf"));
    {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path);
        printer.setPageLayout(plan_page(f.document.show(), drawing_of(f.view)));
        print_onto(f.view, printer);
    }
    QVERIFY(QFileInfo(path).size() > 2000);
    QCOMPARE(plan_page(f.document.show(), drawing_of(f.view)).pageSize().id(), QPageSize::A4);
    QCOMPARE(plan_page(f.document.show(), drawing_of(f.view)).orientation(), QPageLayout::Landscape);
    Show imperial = f.document.show();
    imperial.display.units = Units::imperial;
    QCOMPARE(plan_page(imperial, {}).pageSize().id(), QPageSize::Letter);
}

void TestOutput::the_preview_paints() {
    Stage_fixture f;
    QPrinter printer;
    QPrintPreviewWidget preview(&printer);
    int asked = 0;
    connect(&preview, &QPrintPreviewWidget::paintRequested, this, [&](QPrinter* paper) {
        ++asked;
        print_onto(f.view, *paper);
    });
    preview.resize(400, 300);
    preview.show();
    QTRY_VERIFY(asked >= 1);
}

void TestOutput::a_map_on_the_screen_is_a_map_on_paper() {
    Stage_fixture f;
    QVERIFY(!drawing_of(f.view).map);
    f.view.set_overlay({OverlayKind::level, QStringLiteral("mix"), {}, 0.5, {}});
    QTRY_VERIFY_WITH_TIMEOUT(f.view.layers().maps().picture(), 30000);
    QVERIFY(drawing_of(f.view).map);
    QCOMPARE(drawing_of(f.view).map_opacity, 0.5);
    QVERIFY(!drawing_of(f.view).ink.dark);
}

void TestOutput::the_clipboard_gets_a_picture() {
    Stage_fixture f;
    copy_picture(f.view);
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    QVERIFY(mime->hasImage());
    QVERIFY(mime->data(QStringLiteral("image/svg+xml")).contains("<svg"));
}

HOWLMAP_TEST(TestOutput)

}  // namespace howlmap::app

#include "test_output.moc"
