// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/sheet_dialog.h"

#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QGraphicsView>
#include <QGroupBox>
#include <QGuiApplication>
#include <QLabel>
#include <QMenu>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/file_names.h"
#include "app/settings/figures.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/report/differences.h"
#include "core/report/lists.h"
#include "core/units/translate.h"

namespace howlmap::app {
namespace {

/// A name beside the show: "duo advance.pdf" for "duo.howlmap".
QString wished_name(const Document& document) {
    const QFileInfo file(document.path());
    const QString stem = document.path().isEmpty() ? SheetDialog::tr("advance sheet")
                                                   : SheetDialog::tr("%1 advance").arg(file.completeBaseName());
    return QDir(document.path().isEmpty() ? QDir::homePath() : file.path()).filePath(stem + QStringLiteral(".pdf"));
}

Outcome write_file(const QString& name, std::string_view bytes) {
    const auto saved = save_atomically(to_path(name), bytes);
    if (saved) return {};
    return tl::make_unexpected(Trouble{SheetDialog::tr("%1 could not be written.").arg(QFileInfo(name).fileName()),
                                       name, qstr(saved.error()), SheetDialog::tr("Choose another folder.")});
}

}  // namespace

SheetQuestions SheetQuestions::by_dialog() {
    return {[](QWidget* parent, const QString& suggestion) {
                return QFileDialog::getSaveFileName(parent, SheetDialog::tr("Save the sheet"), suggestion,
                                                    SheetDialog::tr("PDF (*.pdf)"));
            },
            [](QWidget* parent) {
                return QFileDialog::getExistingDirectory(parent, SheetDialog::tr("Folder for the lists"));
            },
            [](QWidget* parent) {
                return QFileDialog::getOpenFileName(parent, SheetDialog::tr("The show as it was sent"), {},
                                                    SheetDialog::tr("Shows (*.howlmap);;All files (*)"));
            }};
}

SheetDialog::SheetDialog(Document& document, AnalysisService& analysis, QWidget* parent)
    : QDialog(parent),
      document_(document),
      analysis_(analysis),
      printer_(std::make_unique<QPrinter>(QPrinter::HighResolution)),
      message_(new QLabel) {
    setWindowTitle(tr("Advance sheet"));
    setObjectName(QStringLiteral("sheet_dialog"));
    resize(980, 720);
    message_->setObjectName(QStringLiteral("sheet_message"));
    message_->setWordWrap(true);
    message_->setTextFormat(Qt::PlainText);
    auto* middle = new QHBoxLayout;
    middle->addWidget(build_options());
    middle->addWidget(build_pages(), 1);
    auto* column = new QVBoxLayout(this);
    column->addLayout(middle, 1);
    column->addWidget(message_);
    column->addWidget(build_buttons());
    connect(&analysis_, &AnalysisService::updated, this, &SheetDialog::take_figures);
    take_figures();
}

SheetDialog::~SheetDialog() = default;

QCheckBox* SheetDialog::check(QWidget* column, const char* name, const QString& text, bool on) {
    auto* box = new QCheckBox(text);
    box->setObjectName(QString::fromLatin1(name));
    box->setChecked(on);
    connect(box, &QCheckBox::toggled, this, &SheetDialog::refresh);
    column->layout()->addWidget(box);
    return box;
}

QPushButton* SheetDialog::button(QWidget* row, const char* name, const QString& text, const QString& tip,
                                 const std::function<void()>& what) {
    auto* made = new QPushButton(text);
    made->setObjectName(QString::fromLatin1(name));
    made->setToolTip(tip);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, what);
    row->layout()->addWidget(made);
    return made;
}

QWidget* SheetDialog::build_options() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    auto* pages = new QGroupBox(tr("Pages"));
    pages->setLayout(new QVBoxLayout);
    plan_ = check(pages, "sheet_plan", tr("&Plan"), true);
    inputs_ = check(pages, "sheet_inputs", tr("&Input list"), true);
    mixes_ = check(pages, "sheet_mixes", tr("&Mixes and equalisers"), true);
    risks_ = check(pages, "sheet_risks", tr("&Risks and cautions"), true);
    one_mix_ = check(pages, "sheet_one_mix", tr("&One mix a page"), false);
    one_mix_->setToolTip(tr("For the monitor desk."));
    column->addWidget(pages);

    auto* look = new QGroupBox(tr("On the plan"));
    look->setLayout(new QVBoxLayout);
    loops_ = check(look, "sheet_loops", tr("&Loops that matter"), false);
    map_choice_ = new QComboBox;
    map_choice_->setObjectName(QStringLiteral("sheet_map"));
    map_choice_->setAccessibleName(tr("Map under the plan"));
    map_choice_->setToolTip(tr("How much gain an input has left before it rings, at every place of the stage."));
    map_choice_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    map_choice_->setMinimumContentsLength(20);
    fill_map_choice();
    connect(map_choice_, &QComboBox::activated, this, &SheetDialog::make_map);
    look->layout()->addWidget(map_choice_);
    column->addWidget(look);

    auto* paper = new QGroupBox(tr("Paper"));
    paper->setLayout(new QVBoxLayout);
    paper_ = new QComboBox;
    paper_->setObjectName(QStringLiteral("sheet_paper"));
    paper_->setAccessibleName(tr("Paper"));
    paper_->addItem(tr("A4"), QPageSize::A4);
    paper_->addItem(tr("Letter"), QPageSize::Letter);
    paper_->setCurrentIndex(paper_->findData(paper_of_locale()));
    connect(paper_, &QComboBox::currentIndexChanged, this, &SheetDialog::refresh);
    paper->layout()->addWidget(paper_);
    column->addWidget(paper);

    auto* changes = new QGroupBox(tr("Changed since"));
    changes->setLayout(new QVBoxLayout);
    older_label_ = new QLabel(tr("Not compared."));
    older_label_->setObjectName(QStringLiteral("sheet_older"));
    older_label_->setWordWrap(true);
    changes->layout()->addWidget(older_label_);
    button(changes, "sheet_compare", tr("Compare &with..."),
           tr("An older file of this show: the sheet then says what has changed since."), [this] {
               const QString file = questions.older_show(this);
               if (!file.isEmpty()) compare_with(file);
           });
    button(changes, "sheet_forget", tr("Do &not compare"), tr("Leaves the list of changes out."),
           [this] { forget_older(); });
    column->addWidget(changes);
    column->addStretch(1);
    return side;
}

QWidget* SheetDialog::build_pages() {
    printer_->setFullPage(true);
    preview_ = new QPrintPreviewWidget(printer_.get());
    preview_->setObjectName(QStringLiteral("sheet_pages"));
    preview_->setAccessibleName(tr("The pages"));
    for (auto* view : preview_->findChildren<QGraphicsView*>()) view->setAccessibleName(tr("The pages"));
    preview_->setViewMode(QPrintPreviewWidget::SinglePageView);
    preview_->fitInView();
    connect(preview_, &QPrintPreviewWidget::paintRequested, this,
            [this](QPrinter* paper) { print_sheet(*paper, content_, options(), plan()); });
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(preview_, 1);
    auto* row = new QWidget;
    row->setLayout(new QHBoxLayout);
    row->layout()->setContentsMargins(0, 0, 0, 0);
    button(row, "sheet_back", tr("Page &back"), tr("Shows the page before."),
           [this] { preview_->setCurrentPage(preview_->currentPage() - 1); });
    button(row, "sheet_on", tr("Page &on"), tr("Shows the next page."),
           [this] { preview_->setCurrentPage(preview_->currentPage() + 1); });
    button(row, "sheet_all", tr("&All pages"), tr("Shows all pages at once."),
           [this] { preview_->setAllPagesViewMode(); });
    button(row, "sheet_fit", tr("One pa&ge"), tr("Shows one page as large as fits."), [this] {
        preview_->setSinglePageViewMode();
        preview_->fitInView();
    });
    button(row, "sheet_larger", tr("Larger"), tr("Zooms in."), [this] { preview_->zoomIn(); });
    button(row, "sheet_smaller", tr("Smaller"), tr("Zooms out."), [this] { preview_->zoomOut(); });
    column->addWidget(row);
    return side;
}

QWidget* SheetDialog::build_buttons() {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, 0, 0, 0);
    writers_.append(button(row, "sheet_save", tr("&Save PDF..."), tr("Writes the pages as they are shown."),
                           [this] { save_pdf(); }));
    writers_.append(
        button(row, "sheet_print", tr("Prin&t..."), tr("Prints the pages as they are shown."), [this] { print(); }));
    writers_.append(button(row, "sheet_lists", tr("Lists as &CSV..."),
                           tr("Writes the lists as tables for a spreadsheet into a folder."),
                           [this] { save_lists(); }));
    writers_.append(
        button(row, "sheet_copy", tr("Cop&y list"), tr("Puts one list on the clipboard, for a spreadsheet."), [] {}));
    auto* menu = new QMenu(writers_.last());
    writers_.last()->setMenu(menu);
    connect(menu, &QMenu::aboutToShow, this, &SheetDialog::fill_copy_menu);
    line->addStretch(1);
    button(row, "sheet_close", tr("Close"), tr("Closes this window."), [this] { accept(); });
    return row;
}

void SheetDialog::fill_map_choice() {
    map_choice_->addItem(tr("No map"), QString());
    for (const Input& input : document_.show().inputs)
        if (!is_line(input))
            map_choice_->addItem(tr("Map of %1 %2").arg(input.channel).arg(qstr(input.name)), qstr(input.id));
}

void SheetDialog::fill_copy_menu() {
    QMenu* menu = writers_.last()->menu();
    menu->clear();
    const auto add = [&](const report::Table& table) {
        menu->addAction(qstr(table.title), this, [this, table] { copy_table(table); });
    };
    for (const auto& [file, table] : report::all_lists(content_.show, content_.ring_out())) add(table);
    if (older_) add(report::differences_since(*older_, content_.show));
}

bool SheetDialog::ready() const { return analysis_.result() && analysis_.fresh() && analysis_.counted(); }

void SheetDialog::take_figures() {
    content_.show = document_.show();
    if (const auto result = analysis_.result()) content_ = {document_.show(), *result};
    show_state();
}

void SheetDialog::show_state() {
    for (QPushButton* writer : writers_) writer->setEnabled(ready());
    message_->setText(ready() ? QString() : tr("What to count on is being worked out; the pages follow."));
    refresh();
}

SheetOptions SheetDialog::options() const {
    SheetOptions wish;
    wish.plan = plan_->isChecked();
    wish.inputs = inputs_->isChecked();
    wish.mixes = mixes_->isChecked();
    wish.risks = risks_->isChecked();
    wish.one_mix_a_page = one_mix_->isChecked();
    wish.paper = static_cast<QPageSize::PageSizeId>(paper_->currentData().toInt());
    wish.since = older_;
    wish.since_name = older_name_;
    return wish;
}

PlanBlock SheetDialog::plan() const { return plan_of_sheet(content_, {loops_->isChecked(), map_}); }

QByteArray SheetDialog::pdf() const { return sheet_pdf(content_, options(), plan()); }

void SheetDialog::refresh() {
    if (!preview_ || !paper_) return;
    printer_->setPageSize(QPageSize(options().paper));
    printer_->setDocName(qstr(content_.show.title));
    preview_->updatePreview();
}

void SheetDialog::make_map() {
    const std::string input = map_choice_->currentData().toString().toStdString();
    if (input.empty()) {
        worker_.cancel();
        map_.reset();
        return refresh();
    }
    message_->setText(tr("The map is being made."));
    worker_.restart([this, input, show = content_.show](const Job& job) -> Worker::Deliver {
        auto map = sheet_map(show, input, job);
        return [this, map = std::move(map)] {
            map_ = map ? *map : nullptr;
            message_->setText(map ? QString() : map.error());
            refresh();
        };
    });
}

void SheetDialog::told(const Outcome& outcome, const QString& done) {
    message_->setText(
        outcome ? done
                : QStringLiteral("%1 %2 %3").arg(outcome.error().what, outcome.error().detail, outcome.error().advice));
}

void SheetDialog::save_pdf() {
    QString name = questions.pdf(this, wished_name(document_));
    if (name.isEmpty()) return;
    if (QFileInfo(name).suffix().isEmpty()) name += QStringLiteral(".pdf");
    const QByteArray bytes = pdf();
    told(write_file(name, {bytes.constData(), static_cast<std::size_t>(bytes.size())}), tr("Written to %1.").arg(name));
}

void SheetDialog::save_lists() {
    const QString folder = questions.folder(this);
    if (folder.isEmpty()) return;
    Outcome outcome;
    const PointsInFigures for_machines;
    for (const auto& [file, table] : report::all_lists(content_.show, content_.ring_out()))
        if (outcome) outcome = write_file(QDir(folder).filePath(qstr(file)), report::to_csv(table));
    told(outcome, tr("Lists written to %1.").arg(folder));
}

void SheetDialog::print() {
    QPrinter paper(QPrinter::HighResolution);
    paper.setPageSize(QPageSize(options().paper));
    paper.setDocName(qstr(content_.show.title));
    QPrintDialog dialog(&paper, this);
    if (dialog.exec() != QDialog::Accepted) return;
    print_sheet(paper, content_, options(), plan());
    message_->setText(tr("Sent to the printer."));
}

void SheetDialog::compare_with(const QString& file) {
    const auto older = load_show(to_path(file));
    if (!older) {
        message_->setText(
            tr("%1 cannot be compared with. %2").arg(QFileInfo(file).fileName(), qstr(older.error().message())));
        return;
    }
    older_ = std::make_shared<const Show>(older->show);
    older_name_ = QFileInfo(file).fileName();
    older_label_->setText(older_name_);
    message_->clear();
    refresh();
}

void SheetDialog::forget_older() {
    older_.reset();
    older_name_.clear();
    older_label_->setText(tr("Not compared."));
    refresh();
}

void SheetDialog::copy_table(const report::Table& table) {
    QGuiApplication::clipboard()->setText(qstr(report::to_tsv(table)));
    message_->setText(tr("%1 is on the clipboard.").arg(qstr(table.title)));
}

}  // namespace howlmap::app
