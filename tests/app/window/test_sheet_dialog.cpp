// SPDX-License-Identifier: GPL-3.0-or-later
// File > Advance sheet: what is ticked is what the pages show, and what is saved is what they showed.
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QLocale>
#include <QMenu>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QSignalSpy>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/window/sheet_dialog.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/units/translate.h"
#include "tests/support/registry.h"

namespace howlmap::app {

class TestSheetDialog : public QObject {
    Q_OBJECT
    QTemporaryDir folder_;
    Document document_;
    AnalysisService analysis_{document_};
    std::unique_ptr<SheetDialog> dialog_;

    template <class T>
    T* part(const char* name) const {
        return dialog_->findChild<T*>(QString::fromLatin1(name));
    }
    QString told() const { return part<QLabel>("sheet_message")->text(); }
    QString path(const char* name) const { return folder_.filePath(QString::fromLatin1(name)); }
    static QByteArray bytes_of(const QString& name) {
        QFile file(name);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    static QByteArray without_date(QByteArray pdf) {
        const auto at = pdf.indexOf("/CreationDate");
        return pdf.replace(at, pdf.indexOf('\n', at) - at, "");
    }

  private Q_SLOTS:
    void initTestCase() {
        QFile file(QStringLiteral(":/examples/duo.howlmap"));
        QVERIFY(file.open(QIODevice::ReadOnly));
        auto read = read_show(file.readAll().toStdString());
        QVERIFY(read);
        read->show.tolerance.draws = 20;
        document_.replace(read->show, {}, false);
    }
    void init() {
        dialog_ = std::make_unique<SheetDialog>(document_, analysis_);
        dialog_->show();
        QTRY_VERIFY_WITH_TIMEOUT(dialog_->ready() && part<QPushButton>("sheet_save")->isEnabled(), 60000);
    }
    void cleanup() { dialog_.reset(); }

    void nothing_is_written_before_the_figures_are_there() {
        document_.edit(QStringLiteral("louder"), [](Show& show) { show.mixes[0].sends[0].level_db += 1.0; });
        SheetDialog dialog(document_, analysis_);
        auto* save = dialog.findChild<QPushButton*>(QStringLiteral("sheet_save"));
        QVERIFY(!dialog.ready() && !save->isEnabled());
        QTRY_VERIFY_WITH_TIMEOUT(dialog.ready() && save->isEnabled(), 60000);
        document_.undo();
    }

    void the_preview_shows_what_is_ticked() {
        const int whole = dialog_->preview().pageCount();
        QVERIFY(whole >= 2);
        part<QCheckBox>("sheet_one_mix")->click();
        QTRY_VERIFY(dialog_->preview().pageCount() > whole);
        for (const char* name : {"sheet_mixes", "sheet_risks", "sheet_inputs"}) part<QCheckBox>(name)->click();
        QTRY_COMPARE(dialog_->preview().pageCount(), 1);
        QVERIFY(dialog_->options().plan && !dialog_->options().inputs && !dialog_->options().mixes);
        auto* paper = part<QComboBox>("sheet_paper");
        paper->setCurrentIndex(paper->findData(QPageSize::Letter));
        QCOMPARE(dialog_->options().paper, QPageSize::Letter);
        part<QPushButton>("sheet_on")->click();  // there is no next page: nothing happens
        QCOMPARE(dialog_->preview().currentPage(), 1);
    }

    void what_is_saved_is_what_was_shown() {
        dialog_->questions.pdf = [this](QWidget*, const QString&) { return path("out"); };
        part<QPushButton>("sheet_save")->click();
        QVERIFY2(told().contains(QStringLiteral("out.pdf")), qPrintable(told()));
        QCOMPARE(without_date(bytes_of(path("out.pdf"))), without_date(dialog_->pdf()));
        dialog_->questions.pdf = [this](QWidget*, const QString&) { return path("no/such/folder.pdf"); };
        part<QPushButton>("sheet_save")->click();
        QVERIFY(told().contains(QStringLiteral("could not be written")));
    }

    void lists_for_a_spreadsheet_have_points_in_every_language() {
        set_decimal_mark(',');
        document_.edit(QStringLiteral("half"), [](Show& show) { show.mixes[0].sends[0].level_db = 96.5; });
        QTRY_VERIFY_WITH_TIMEOUT(dialog_->ready(), 60000);
        dialog_->questions.folder = [this](QWidget*) { return folder_.path(); };
        part<QPushButton>("sheet_lists")->click();
        set_decimal_mark('.');
        const QByteArray sends = bytes_of(path("sends.csv"));
        QVERIFY2(sends.contains(",96.5") && !sends.contains("96,5"), sends);
        QVERIFY(bytes_of(path("inputs.csv")).contains(document_.show().inputs[0].name.c_str()));
        QVERIFY(!bytes_of(path("ring-out.csv")).isEmpty());
        document_.undo();
    }

    void every_list_can_be_copied() {
        QMenu* menu = part<QPushButton>("sheet_copy")->menu();
        Q_EMIT menu->aboutToShow();
        QVERIFY(menu->actions().size() >= 4);
        for (QAction* action : menu->actions()) {
            action->trigger();
            QVERIFY2(QGuiApplication::clipboard()->text().contains(u'\t'), qPrintable(action->text()));
        }
    }

    void an_older_version_gives_a_list_of_changes() {
        Show older = document_.show();
        older.loudspeakers[0].position.x -= 0.5;
        QFile file(path("older.howlmap"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(write_show(older)));
        file.close();
        dialog_->questions.older_show = [this](QWidget*) { return path("older.howlmap"); };
        part<QPushButton>("sheet_compare")->click();
        QVERIFY(dialog_->options().since && dialog_->options().since_name == QStringLiteral("older.howlmap"));
        part<QPushButton>("sheet_forget")->click();
        QVERIFY(!dialog_->options().since);
        dialog_->questions.older_show = [this](QWidget*) { return path("absent.howlmap"); };
        part<QPushButton>("sheet_compare")->click();
        QVERIFY(told().contains(QStringLiteral("absent.howlmap")) && !dialog_->options().since);
    }

    void a_map_comes_under_the_plan_when_it_is_there() {
        const QByteArray without = without_date(dialog_->pdf());
        auto* choice = part<QComboBox>("sheet_map");
        choice->setCurrentIndex(1);
        Q_EMIT choice->activated(1);
        QTRY_VERIFY_WITH_TIMEOUT(without_date(dialog_->pdf()) != without && told().isEmpty(), 60000);
        choice->setCurrentIndex(0);
        Q_EMIT choice->activated(0);
        QCOMPARE(without_date(dialog_->pdf()), without);
    }

    void paper_gets_the_same_pages_as_the_file() {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path("printed.pdf"));
        printer.setPageSize(QPageSize(QPageSize::A4));
        SheetOptions options = dialog_->options();
        options.paper = QPageSize::A4;
        const SheetContent content{document_.show(), *analysis_.result()};
        print_sheet(printer, content, options, plan_of_sheet(content, {}));
        const QByteArray printed = bytes_of(path("printed.pdf")),
                         saved = sheet_pdf(content, options, plan_of_sheet(content, {}));
        QVERIFY(printed.count("/Type /Page\n") > 1);
        QCOMPARE(printed.count("/Type /Page\n"), saved.count("/Type /Page\n"));
    }
};

HOWLMAP_TEST(TestSheetDialog)
}  // namespace howlmap::app
#include "test_sheet_dialog.moc"
