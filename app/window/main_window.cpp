// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/main_window.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QDockWidget>
#include <QFileInfo>
#include <QLabel>
#include <QMimeData>
#include <QStatusBar>
#include <QVBoxLayout>
#include <QWhatsThis>

#include "app/canvas/plan_view.h"
#include "app/document/broken_work.h"
#include "app/panels/loops/loops_panel.h"
#include "app/settings/icons.h"
#include "app/window/about.h"
#include "app/window/action_table.h"
#include "app/window/dock_layout.h"
#include "app/window/file_actions.h"
#include "app/window/first_start.h"
#include "app/window/focus_ring.h"
#include "app/window/help_viewer.h"
#include "app/window/lesson_actions.h"
#include "app/window/menus.h"
#include "app/window/preferences_dialog.h"
#include "app/window/recent_files.h"
#include "app/window/recovery_dialog.h"
#include "app/window/reporter.h"
#include "app/window/sentence_label.h"
#include "app/window/sheet_dialog.h"
#include "app/window/status_figures.h"
#include "app/window/undo_keys.h"
#include "core/loop/blocks/cap_table.h"

namespace howlmap::app {
namespace {

constexpr auto kFirstExample = ":/examples/folk-band-six.howlmap";
constexpr int kLongestRestMs = 20000;

QStringList files_of(const QMimeData* data) {
    QStringList files;
    for (const QUrl& url : data->urls())
        if (url.isLocalFile()) files.append(url.toLocalFile());
    return files;
}

}  // namespace

MainWindow::MainWindow()
    : selection_(nullptr),
      analysis_(document_),
      spotlight_(nullptr),
      response_(document_, analysis_, spotlight_),
      session_(document_),
      autosave_(document_, 1000 * Preferences::load().autosave_rest_s, kLongestRestMs),
      memory_([this] { return analysis_.busy(); }),
      actions_(new ActionTable(this)),
      recent_(new RecentFiles(this)),
      files_(new FileActions(*this, document_, session_)) {
    setObjectName(QStringLiteral("main_window"));
    setWindowIcon(icon(QStringLiteral("org.howlmap.Howlmap")));
    setAcceptDrops(true);
    resize(1280, 800);
    build_centre();
    build_status_bar();
    workspace_ =
        std::make_unique<Workspace>(Workspace{document_, selection_, analysis_, spotlight_, response_, *plan_,
                                              [this](const QString& sentence) { say(sentence); },
                                              [this](const Trouble& trouble) { report_trouble(this, trouble); }});
    docks_ = new DockLayout(*this, *workspace_);
    lesson_ = new LessonActions(
        *workspace_, [this](const QString& page) { open_help(page); }, this);
    connect_file_actions();
    connect_edit_actions();
    connect_view_actions();
    connect_help_actions();
    connect_views();
    new UndoKeys(this);
    new FocusRing(this);
    build_menus(*this, {*actions_, *recent_, *files_, *docks_, *plan_});
    docks_->restore();
    refresh_title();
}

MainWindow::~MainWindow() {
    // A field that loses the focus tells its panel, which must be there to hear it.
    if (QWidget* focus = focusWidget()) focus->clearFocus();
    // Views hold references to the document: they go first.
    delete lesson_;
    qDeleteAll(findChildren<QDockWidget*>(Qt::FindDirectChildrenOnly));
    delete takeCentralWidget();
}

void MainWindow::build_centre() {
    auto* centre = new QWidget;
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    plan_ = new PlanView(document_, selection_, analysis_, centre);
    plan_->setObjectName(QStringLiteral("plan"));
    cautions_ = new CautionStrip(centre);
    tour_ = new TourStrip(centre);
    column->addWidget(cautions_);
    column->addWidget(tour_);
    column->addWidget(plan_, 1);
    setCentralWidget(centre);
}

void MainWindow::build_status_bar() {
    message_ = new SentenceLabel;
    message_->setObjectName(QStringLiteral("message"));
    message_->setAccessibleName(tr("Last message"));
    message_->setTextFormat(Qt::PlainText);
    message_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    statusBar()->addWidget(message_, 1);
    statusBar()->addPermanentWidget(new StatusFigures(document_, analysis_, this));
}

void MainWindow::connect_file_actions() {
    actions_->on("file.new", [this] { files_->new_show(); });
    actions_->on("file.open", [this] { files_->open(); });
    actions_->on("file.save", [this] { files_->save(); });
    actions_->on("file.save_as", [this] { files_->save_as(); });
    actions_->on("file.revert", [this] { files_->revert(); });
    actions_->on("file.advance", [this] { SheetDialog(document_, analysis_, this).exec(); });
    actions_->on("file.close", [this] { files_->new_show(); });
    actions_->on("file.quit", [this] { close(); });
    connect(recent_, &RecentFiles::chosen, files_, [this](const QString& path) { files_->open(path); });
    connect(&session_, &FileSession::opened, recent_, &RecentFiles::add);
    connect(&session_, &FileSession::saved, this, [this] {
        autosave_.discard();
        say(tr("Saved %1.").arg(QFileInfo(document_.path()).fileName()));
    });
    connect(&session_, &FileSession::opened, this, [this] {
        if (document_.read_only()) say(tr("Read-only. %1").arg(session_.read_only_reason()));
    });
    connect(&autosave_, &Autosave::failed, this,
            [this](const QString& reason) { say(tr("No copy could be kept aside: %1").arg(reason)); });
}

void MainWindow::connect_edit_actions() {
    const auto follow = [this](const char* id, auto changed, const QString& alone, const QString& named,
                               const QString& sentence) {
        QAction* action = actions_->at(id);
        action->setIconText(action->iconText());  // a button of the tool bar keeps its width; the tip names the step
        connect(&document_.undo_stack(), changed, action, [=](const QString& step) {
            action->setText(step.isEmpty() ? alone : named.arg(step));
            explain(action, sentence);
        });
    };
    follow("edit.undo", &QUndoStack::undoTextChanged, tr("&Undo"), tr("&Undo %1"),
           actions_->at("edit.undo")->statusTip());
    follow("edit.redo", &QUndoStack::redoTextChanged, tr("&Redo"), tr("&Redo %1"),
           actions_->at("edit.redo")->statusTip());
    connect(&document_.undo_stack(), &QUndoStack::canUndoChanged,
            actions_->on("edit.undo",
                         [this] {
                             document_.undo();
                             say({});
                         }),
            &QAction::setEnabled);
    connect(&document_.undo_stack(), &QUndoStack::canRedoChanged,
            actions_->on("edit.redo",
                         [this] {
                             document_.redo();
                             say({});
                         }),
            &QAction::setEnabled);
    actions_->at("edit.undo")->setEnabled(false);
    actions_->at("edit.redo")->setEnabled(false);
    actions_->on("edit.preferences", [this] { PreferencesDialog(this).exec(); });
}

void MainWindow::connect_view_actions() {
    QAction* alone = actions_->on("view.plan_alone",
                                  [this] { docks_->set_plan_alone(actions_->at("view.plan_alone")->isChecked()); });
    actions_->on("view.reset", [this, alone] {
        docks_->reset();
        alone->setChecked(false);
    });
    actions_->on("view.full_screen", [this] { setWindowState(windowState() ^ Qt::WindowFullScreen); });
}

void MainWindow::connect_help_actions() {
    actions_->on("help.contents", [this] { open_help(); });
    actions_->on("help.whats_this", [] { QWhatsThis::enterWhatsThisMode(); });
    actions_->on("help.tour", [this] { tour_->restart(); });
    actions_->on("help.cautions", [this] { cautions_->call_back(); });
    actions_->on("help.about", [this] { show_about(this); });
    actions_->on("lesson.open", [this] { lesson_->open_lesson(); });
    actions_->on("lesson.show", [this] { lesson_->show_selected(); });
    actions_->on("lesson.hear", [this] { lesson_->hear_stage(); });
    connect(findChild<LoopsPanel*>(), &LoopsPanel::teach, lesson_, [this](const Ring& ring) {
        lesson_->show_pair(ring.strongest_input, ring.strongest_loudspeaker, ring.strongest_mix);
    });
    connect(tour_, &TourStrip::step_changed, this, &MainWindow::tour_step);
}

void MainWindow::connect_views() {
    connect(&document_, &Document::path_changed, this, &MainWindow::refresh_title);
    connect(&document_, &Document::replaced, this, &MainWindow::refresh_title);
    connect(&document_, &Document::replaced, this, [this] {
        selection_.clear();
        spotlight_.set_ring({});
        spotlight_.set_preview({});
    });
    connect(&document_, &Document::modified_changed, this, &QWidget::setWindowModified);
    connect(&spotlight_, &Spotlight::ring_changed, plan_, [this] { plan_->set_highlight(spotlight_.ring()); });
    connect(&spotlight_, &Spotlight::preview_changed, plan_, [this] {
        const auto& preview = spotlight_.preview();
        plan_->set_ghost(preview ? std::optional(*preview->show) : std::nullopt);
    });
    connect(&document_, &Document::replaced, &memory_, &MemoryKeeper::stir);
    connect(&document_, &Document::changed, &memory_, &MemoryKeeper::stir);
    connect(&analysis_, &AnalysisService::updated, &memory_, &MemoryKeeper::stir);
    connect(plan_, &PlanView::overlay_changed, &memory_, &MemoryKeeper::stir);
    connect(&memory_, &MemoryKeeper::resting, this, &shrink_cap_tables);
    connect(plan_, &PlanView::message, this, &MainWindow::say);
    on_broken_work(this, [this](const QString& reason) {
        say(tr("A calculation broke off by an error of the program; what it would have shown is missing. (%1)")
                .arg(reason));
    });
    connect(plan_, &PlanView::trouble, this, [this](const Trouble& trouble) { workspace_->report(trouble); });
    connect(plan_, &PlanView::pointer_reading, statusBar(),
            [this](const QString& text) { statusBar()->showMessage(text); });
}

void MainWindow::say(const QString& sentence) {
    message_->setText(sentence);
    message_->setToolTip(sentence);
}

void MainWindow::refresh_title() {
    QString name = document_.path().isEmpty() ? QString::fromStdString(document_.show().title)
                                              : QFileInfo(document_.path()).completeBaseName();
    if (name.isEmpty()) name = tr("New show");
    setWindowTitle(document_.read_only() ? tr("%1 (read-only)[*] - Howlmap").arg(name)
                                         : tr("%1[*] - Howlmap").arg(name));
    setWindowModified(document_.modified());
    actions_->at("file.revert")->setEnabled(!document_.path().isEmpty());
}

void MainWindow::open_help(const QString& page) {
    if (!help_) help_ = new HelpViewer(this);
    if (!page.isEmpty()) return help_->open(page);
    const QWidget* focus = QApplication::focusWidget();
    const QString panel = docks_->panel_of(focus);
    help_->open(!panel.isEmpty() ? panel : focus == plan_ ? QStringLiteral("plan") : QStringLiteral("index"));
}

void MainWindow::tour_step(int step) {
    if (step == 1) docks_->bring_up(QStringLiteral("loops"));
    if (step == 2) docks_->bring_up(QStringLiteral("cures"));
}

bool MainWindow::offer_recovery() {
    const auto copies = recoverable();
    if (copies.isEmpty()) return false;
    RecoveryDialog dialog(copies, this);
    dialog.exec();
    if (!dialog.chosen()) return false;
    auto show = read_recoverable(*dialog.chosen());
    if (!show) return report_trouble(this, show.error()), false;
    if (!dialog.chosen()->path.isEmpty()) session_.open(dialog.chosen()->path);
    if (document_.path().isEmpty())
        session_.start_new(std::move(*show));
    else
        document_.edit(tr("Restore unsaved changes"), [&](Show& now) { now = std::move(*show); });
    document_.set_unsaved();
    autosave_.write_now();
    remove_recoverable(*dialog.chosen());
    return true;
}

void MainWindow::start(const QStringList& shows) {
    const bool first = first_start();
    files_->new_show();
    if (offer_recovery()) return;
    if (!shows.isEmpty()) return files_->open_all(shows);
    if (first) {
        files_->open_example(QString::fromLatin1(kFirstExample));
        return;
    }
    const QString last = recent_->paths().value(0);
    if (QFileInfo::exists(last)) files_->open(last);
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!files_->may_leave()) return event->ignore();
    autosave_.discard();
    docks_->save();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!files_of(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    files_->open_all(files_of(event->mimeData()));
}

}  // namespace howlmap::app
