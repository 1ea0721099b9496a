// SPDX-License-Identifier: GPL-3.0-or-later
// The plan that is shown, on paper, in files and on the clipboard.
#include <QCheckBox>
#include <QClipboard>
#include <QGuiApplication>
#include <QImage>
#include <QImageReader>
#include <QLineEdit>
#include <QMimeData>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QProgressDialog>
#include <QPushButton>
#include <QSpinBox>
#include <QTemporaryDir>
#include <array>
#include <functional>

#include "app/canvas/overlay/plan_layers.h"
#include "app/canvas/plan_file_dialog.h"
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
    void the_dialog_asks_how_and_remembers();
    void another_kind_takes_its_own_ending();
    void writing_a_large_picture_can_be_cancelled();
    void what_is_being_written_outlives_the_window();
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

namespace {
/// Writes the plan by its dialog, which `fill` fills in and accepts.
void write_by_dialog(PlanView& view, const std::function<void(PlanFileDialog&)>& fill) {
    QTimer::singleShot(0, &view, [&] {
        auto* dialog = qobject_cast<PlanFileDialog*>(QApplication::activeModalWidget());
        QVERIFY(dialog);
        fill(*dialog);
        QMetaObject::invokeMethod(dialog, "accept");
    });
    QSignalSpy said(&view, &PlanView::message);
    export_picture(view);
    QTRY_COMPARE_WITH_TIMEOUT(said.count(), 2, 20000);  // that it begins, that it is done
}
template <class T>
T& child(PlanFileDialog& dialog, const char* name) {
    return *dialog.findChild<T*>(QString::fromLatin1(name));
}
void name_it(PlanFileDialog& dialog, const QString& name) { child<QLineEdit>(dialog, "fileNameEdit").setText(name); }
}  // namespace

void TestOutput::the_dialog_asks_how_and_remembers() {
    Stage_fixture f;
    QTemporaryDir folder;
    const QString paper = folder.filePath(QStringLiteral("paper.png")),
                  bare = folder.filePath(QStringLiteral("bare.png"));
    write_by_dialog(f.view, [&](PlanFileDialog& dialog) {
        QVERIFY(!child<QWidget>(dialog, "plan_dpi").isEnabled());  // a PDF has none
        QVERIFY(!child<QWidget>(dialog, "plan_transparent").isEnabled());
        name_it(dialog, paper);
        QVERIFY(child<QWidget>(dialog, "plan_dpi").isEnabled());
        QVERIFY(!child<QWidget>(dialog, "plan_width").isEnabled());
        child<QDoubleSpinBox>(dialog, "plan_dpi").setValue(100.0);
    });
    const QImage page(paper);
    QCOMPARE(page.size(), QSize(1169, 827));  // A4, ISO 216: 297 mm by 210 mm at 100 dots an inch
    QCOMPARE(page.dotsPerMeterX(), 3937);     // 100 / 0.0254
    QCOMPARE(page.pixelColor(0, 0).alpha(), 255);
    write_by_dialog(f.view, [&](PlanFileDialog& dialog) {
        QCOMPARE(child<QDoubleSpinBox>(dialog, "plan_dpi").value(), 100.0);
        QCOMPARE(dialog.selectedNameFilter(), QStringLiteral("PNG picture (*.png)"));
        name_it(dialog, bare);
        child<QCheckBox>(dialog, "plan_sized").setChecked(true);
        child<QSpinBox>(dialog, "plan_width").setValue(640);
        child<QSpinBox>(dialog, "plan_height").setValue(480);
        child<QCheckBox>(dialog, "plan_transparent").setChecked(true);
    });
    const QImage picture(bare);
    QCOMPARE(picture.size(), QSize(640, 480));
    QCOMPARE(picture.pixelColor(0, 0).alpha(), 0);
    write_by_dialog(f.view, [&](PlanFileDialog& dialog) {
        QCOMPARE(child<QSpinBox>(dialog, "plan_width").value(), 640);
        QVERIFY(child<QCheckBox>(dialog, "plan_transparent").isChecked());
        name_it(dialog, folder.filePath(QStringLiteral("plan.pdf")));
    });
    QVERIFY(QFileInfo::exists(folder.filePath(QStringLiteral("plan.pdf"))));
}

void TestOutput::another_kind_takes_its_own_ending() {
    PlanFileDialog dialog(QDir::tempPath() + QStringLiteral("/stage"));
    QVERIFY(dialog.file_name().endsWith(QStringLiteral("/stage.pdf")));
    dialog.selectNameFilter(QStringLiteral("SVG drawing (*.svg)"));
    Q_EMIT dialog.filterSelected(QStringLiteral("SVG drawing (*.svg)"));
    QVERIFY2(dialog.file_name().endsWith(QStringLiteral("/stage.svg")), qPrintable(dialog.file_name()));
    QCOMPARE(dialog.wish().format, PlanFormat::svg);
    QVERIFY(dialog.findChild<QWidget*>(QStringLiteral("plan_transparent"))->isEnabled());
    QVERIFY(!dialog.findChild<QWidget*>(QStringLiteral("plan_dpi"))->isEnabled());
}

void TestOutput::writing_a_large_picture_can_be_cancelled() {
    Stage_fixture f;
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("large.png"));
    PlanFile large;
    large.size = QSize(10000, 10000);
    QSignalSpy said(&f.view, &PlanView::message);
    start_writing(f.view, file, large);
    const QPointer dialog = f.view.findChild<QProgressDialog*>(QStringLiteral("plan_writing"));
    QVERIFY(dialog && !dialog->isVisible());  // what is written in a moment asks nothing
    QTRY_VERIFY2_WITH_TIMEOUT(dialog && dialog->isVisible(), "written before it could be cancelled", 20000);
    QTest::mouseClick(dialog->findChild<QPushButton*>(), Qt::LeftButton);
    QTRY_COMPARE_WITH_TIMEOUT(said.count(), 2, 20000);
    QCOMPARE(said[1][0].toString(), QStringLiteral("%1 was not written").arg(file));
    QVERIFY(QDir(folder.path()).isEmpty());
    QTRY_VERIFY(!dialog);
}

void TestOutput::what_is_being_written_outlives_the_window() {
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("large.png"));
    {
        Stage_fixture f;
        PlanFile large;
        large.size = QSize(10000, 10000);
        start_writing(f.view, file, large);
        const auto* dialog = f.view.findChild<QProgressDialog*>(QStringLiteral("plan_writing"));
        QTRY_VERIFY2_WITH_TIMEOUT(dialog->isVisible(), "written before the window could go", 20000);
        QApplication::closeAllWindows();  // as when the program ends
    }
    QCOMPARE(QImageReader(file).size(), QSize(10000, 10000));
}

HOWLMAP_TEST(TestOutput)

}  // namespace howlmap::app

#include "test_output.moc"
