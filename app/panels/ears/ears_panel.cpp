// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/ears_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "app/document/analysis_service.h"
#include "app/document/document.h"
#include "app/document/selection.h"
#include "app/panels/choice_delegate.h"
#include "app/panels/ears/ears_model.h"
#include "app/panels/ears/ears_words.h"
#include "app/panels/ears/text_table.h"
#include "app/settings/number_box.h"
#include "app/settings/theme.h"

namespace howlmap::app {
namespace {

/// Margin as drawn, for solvers that try many sends.
std::optional<double> margin_as_drawn(const Show& show) {
    AnalysisOptions options;
    options.tolerance = options.rings = options.listening = false;
    const auto result = analyse(show, options);
    return result ? result->margin_db : std::nullopt;
}

QTableView* table(QAbstractItemModel* model, const char* id, const QString& name) {
    auto* view = new QTableView;
    view->setObjectName(QString::fromLatin1(id));
    view->setModel(model);
    view->setAccessibleName(name);
    view->setFont(tabular(view->font()));
    view->verticalHeader()->hide();
    view->verticalHeader()->setDefaultSectionSize(view->fontMetrics().height() + 6);
    view->verticalHeader()->setMinimumSectionSize(view->fontMetrics().height() + 4);
    view->setSelectionBehavior(QAbstractItemView::SelectRows);
    view->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view->horizontalHeader()->setStretchLastSection(true);
    view->horizontalHeader()->setHighlightSections(false);
    view->setWordWrap(false);
    view->setTabKeyNavigation(false);
    return view;
}

QDoubleSpinBox* spin(const QString& name, double low, double high, int digits, double value, const QString& unit) {
    auto* box = new NumberBox;
    box->setAccessibleName(name);
    box->setToolTip(name);
    box->setRange(low, high);
    box->setDecimals(digits);
    box->setValue(value);
    box->setSuffix(unit);
    return box;
}

QWidget* line_of(std::initializer_list<QWidget*> widgets) {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    for (QWidget* widget : widgets) layout->addWidget(widget);
    layout->addStretch(1);
    return row;
}

/// A sentence that may be longer than the room under its table.
QScrollArea* scrolling(QLabel* sentence, const QString& name) {
    auto* area = new QScrollArea;
    area->setAccessibleName(name);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    sentence->setAlignment(Qt::AlignTop);
    area->setWidget(sentence);
    return area;
}

}  // namespace

EarsPanel::EarsPanel(const Workspace& workspace, QWidget* parent)
    : QWidget(parent),
      workspace_(workspace),
      players_model_(new PlayersModel(workspace.document, this)),
      house_model_(new TextTable({tr("Place"), tr("Stage wash"), tr("Against target")}, this)),
      loads_model_(new TextTable({tr("Loudspeaker"), tr("Asked for at 1 m"), tr("Can do"), tr("Left")}, this)),
      bands_model_(new TextTable({tr("Band"), tr("Own"), tr("Others"), tr("Hear margin")}, this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 4, 4, 2);
    column->setSpacing(2);
    auto* halves = new QSplitter(Qt::Horizontal);
    halves->addWidget(build_left());
    halves->addWidget(build_right());
    halves->setStretchFactor(0, 3);
    halves->setStretchFactor(1, 2);
    halves->setSizes({560, 360});
    column->addWidget(halves, 1);
    auto* caution =
        new QLabel(tr("Levels and minutes are estimates for planning, not a measurement of hearing safety."));
    caution->setWordWrap(true);
    column->addWidget(caution);
    setFocusProxy(players_);
    connect(&workspace_.analysis, &AnalysisService::updated, this, &EarsPanel::show_figures);
    connect(players_model_, &PlayersModel::refused, this, [this](const QString& why) { workspace_.say(why); });
    connect(&workspace_.document, &Document::replaced, this, &EarsPanel::show_figures);
    connect(&workspace_.document, &Document::changed, this, [this] {
        if (isVisible()) players_model_->show_result(workspace_.document.show(), workspace_.analysis.result());
    });
    connect(players_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& row) {
        if (players_->hasFocus()) workspace_.selection.set({players_model_->id_at(row.row())});
        show_figures();
    });
    connect(&workspace_.selection, &Selection::changed, this, &EarsPanel::mark_selected);
}

void EarsPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    show_figures();
    mark_selected();
}

QWidget* EarsPanel::build_left() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    players_ = table(players_model_, "players", tr("Players: own, others, hear margin, minutes"));
    players_->setItemDelegateForColumn(PlayersModel::hears,
                                       new ChoiceDelegate(&PlayersModel::ways_of_hearing, players_));
    sentence_ = new QLabel;
    sentence_->setObjectName(QStringLiteral("masked"));
    sentence_->setWordWrap(true);
    column->addWidget(players_, 1);
    column->addWidget(sentence_);
    column->addWidget(build_wish());
    column->addWidget(build_quiet());
    return side;
}

QPushButton* EarsPanel::button(const char* name, const QString& text, const QString& tip, void (EarsPanel::*slot)()) {
    auto* made = new QPushButton(text);
    made->setObjectName(QString::fromLatin1(name));
    made->setToolTip(tip);
    connect(made, &QPushButton::clicked, this, slot);
    return made;
}

QWidget* EarsPanel::build_wish() {
    wish_kind_ = new QComboBox;
    wish_kind_->addItem(tr("hear margin"), int(WishKind::hear_margin));
    wish_kind_->addItem(tr("own level at the ear"), int(WishKind::own_level));
    wish_kind_->addItem(tr("everything at the ear"), int(WishKind::ear_level));
    wish_kind_->setAccessibleName(tr("What is wished for"));
    connect(wish_kind_, &QComboBox::currentIndexChanged, this, [this] {
        const bool margin = wish_kind_->currentData().toInt() == int(WishKind::hear_margin);
        wish_value_->setSuffix(margin ? tr(" dB") : tr(" dBA"));
        wish_value_->setValue(margin ? 3.0 : 95.0);
    });
    wish_value_ = spin(tr("How much is wished for"), -60.0, 160.0, 1, 3.0, tr(" dB"));
    return line_of({new QLabel(tr("Wish:")), wish_kind_, wish_value_,
                    button("solve_one", tr("This player"), tr("Solves the marked player's own sends for the wish"),
                           &EarsPanel::solve_wish),
                    button("solve_all", tr("All players"), tr("The same wish for everybody, solved together"),
                           &EarsPanel::solve_everybody)});
}

QWidget* EarsPanel::build_quiet() {
    set_minutes_ = spin(tr("Length of the set"), 1.0, 1440.0, 0, 90.0, tr(" min set"));
    connect(set_minutes_, &QDoubleSpinBox::valueChanged, players_model_, &PlayersModel::set_minutes);
    return line_of({button("quietest", tr("Quietest stage"),
                           tr("The lowest sends at which everybody has the hear margin of the wish; what is nobody's "
                              "own falls by 6 dB"),
                           &EarsPanel::find_quietest),
                    button("spiral", tr("What louder costs"),
                           tr("What 3 dB more of a neighbour or of backline costs everybody"), &EarsPanel::tell_spiral),
                    set_minutes_});
}

QWidget* EarsPanel::build_right() {
    tabs_ = new QTabWidget;
    tabs_->setObjectName(QStringLiteral("ears_tabs"));
    tabs_->setDocumentMode(true);
    tabs_->addTab(build_house(), tr("House"));
    tabs_->addTab(table(loads_model_, "loads", tr("Loudspeakers against what they can do")), tr("Loudspeakers"));
    tabs_->addTab(table(bands_model_, "ear_bands", tr("Third-octaves at the ear of the marked player")), tr("Bands"));
    tabs_->addTab(build_answer(), tr("Answer"));
    return tabs_;
}

QWidget* EarsPanel::build_house() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 2, 0, 0);
    column->setSpacing(2);
    target_ = spin(tr("Front-of-house target"), 40.0, 130.0, 0, 95.0, tr(" dBA"));
    target_->setKeyboardTracking(false);
    connect(target_, &QDoubleSpinBox::valueChanged, this, [this](double dba) {
        workspace_.document.edit(tr("Set the front-of-house target"),
                                 [dba](Show& show) { show.system.house_target_dba = dba; });
    });
    house_ = table(house_model_, "house", tr("Stage wash in the house"));
    connect(house_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, &EarsPanel::show_house_words);
    house_sentence_ = new QLabel;
    house_sentence_->setObjectName(QStringLiteral("house_words"));
    house_sentence_->setWordWrap(true);
    column->addWidget(house_, 1);
    column->addWidget(scrolling(house_sentence_, tr("What makes the wash at the marked place, and what helps")), 1);
    column->addWidget(line_of({new QLabel(tr("Front-of-house target:")), target_}));
    return side;
}

QWidget* EarsPanel::build_answer() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(0, 2, 0, 0);
    column->setSpacing(2);
    answer_ = new QPlainTextEdit;
    answer_->setObjectName(QStringLiteral("ears_answer"));
    answer_->setReadOnly(true);
    answer_->setTabChangesFocus(true);
    answer_->setAccessibleName(tr("What was found"));
    answer_->setPlainText(
        tr("Wish for something at the left, or ask for the quietest stage: what it takes stands here."));
    apply_ =
        button("apply_sends", tr("Apply"), tr("Sets the sends that were found, as one step"), &EarsPanel::apply_found);
    apply_->setEnabled(false);
    column->addWidget(answer_, 1);
    column->addWidget(line_of({apply_}));
    return side;
}

QString EarsPanel::answer() const { return answer_->toPlainText(); }

void EarsPanel::set_wish(WishKind kind, double value_db) {
    wish_kind_->setCurrentIndex(wish_kind_->findData(int(kind)));
    wish_value_->setValue(value_db);
}

std::string EarsPanel::marked_player() const {
    return players_model_->id_at(players_->currentIndex().row()).toStdString();
}

void EarsPanel::mark_selected() {
    const int row = players_model_->row_of(workspace_.selection.ids().value(0));
    if (row >= 0) players_->setCurrentIndex(players_model_->index(row, 0));
}

void EarsPanel::show_figures() {
    if (!isVisible()) return;
    const Show& show = workspace_.document.show();
    const auto result = workspace_.analysis.result();
    players_model_->show_result(show, result);
    {
        const QSignalBlocker block(target_);
        target_->setValue(show.system.house_target_dba);
    }
    if (!players_->currentIndex().isValid() && players_model_->rowCount() > 0)
        players_->setCurrentIndex(players_model_->index(0, 0));
    words_worker_.run([this, show, result, player = marked_player()](const Job&) -> Worker::Deliver {
        EarSpectrum marked;
        for (EarSpectrum& spectrum : ear_spectra(show))
            if (spectrum.performer == player) marked = std::move(spectrum);
        return
            [this, marked, house = house_rows(show, result.get()), words = wash_words(show), loads = load_rows(show)] {
                const int place = std::max(0, house_->currentIndex().row());
                house_words_ = words;
                house_model_->set_rows(house);
                house_->setCurrentIndex(house_model_->index(std::min(place, house_model_->rowCount() - 1), 0));
                show_house_words();
                loads_model_->set_rows(loads);
                bands_model_->set_rows(band_rows(marked));
                sentence_->setText(marked.performer.empty() ? QString() : masked_words(marked));
            };
    });
}

void EarsPanel::show_house_words() {
    house_sentence_->setText(house_model_->rowCount() == 0
                                 ? tr("Put a listener from Parts into the house to see what the stage spills there.")
                                 : house_words_.value(house_->currentIndex().row()));
}

Wish EarsPanel::wish_for(const std::string& performer) const {
    return {performer, static_cast<WishKind>(wish_kind_->currentData().toInt()), wish_value_->value()};
}

void EarsPanel::tell(const QString& words) {
    answer_->setPlainText(words);
    tabs_->setCurrentIndex(tabs_->count() - 1);
}

void EarsPanel::solve_wish() {
    if (const std::string id = marked_player(); !id.empty()) solve({wish_for(id)});
}

void EarsPanel::solve_everybody() {
    std::vector<Wish> wishes;
    for (const Performer& performer : workspace_.document.show().performers) wishes.push_back(wish_for(performer.id));
    solve(std::move(wishes));
}

void EarsPanel::solve(std::vector<Wish> wishes) {
    tell(tr("Solving…"));
    worker_.restart([this, wishes = std::move(wishes), show = workspace_.document.show(),
                     revision = workspace_.document.revision()](const Job&) -> Worker::Deliver {
        SolveOptions options;
        options.margin = margin_as_drawn;
        options.target_margin_db = show.system.target_margin_db;
        return [this, revision, solution = solve_sends(show, wishes, options)] {
            tell(solution_words(workspace_.document.show(), solution));
            offer(solution.after, revision, tr("Set sends for a wish"));
        };
    });
}

void EarsPanel::find_quietest() {
    tell(tr("Looking for the quietest stage…"));
    const double wanted = wish_kind_->currentData().toInt() == int(WishKind::hear_margin) ? wish_value_->value() : 0.0;
    worker_.restart([this, wanted, show = workspace_.document.show(),
                     revision = workspace_.document.revision()](const Job&) -> Worker::Deliver {
        QuietStageOptions options;
        options.hear_margin_db = wanted;
        options.margin = margin_as_drawn;
        return [this, revision, quiet = quietest_stage(show, options)] {
            tell(quiet_words(workspace_.document.show(), quiet));
            offer(quiet.possible ? quiet.after : workspace_.document.show(), revision, tr("Set the quietest stage"));
        };
    });
}

void EarsPanel::tell_spiral() {
    tell(tr("Working out what 3 dB more costs…"));
    worker_.restart([this, show = workspace_.document.show()](const Job&) -> Worker::Deliver {
        return [this, words = louder_words(show, cost_of_louder(show, margin_as_drawn))] { tell(words); };
    });
}

/// What was found for the show as it was at `revision`.
void EarsPanel::offer(const Show& after, quint64 revision, const QString& step) {
    const bool differs = !(after == workspace_.document.show());
    found_ = differs ? std::optional<Show>(after) : std::nullopt;
    found_step_ = step;
    found_revision_ = revision;
    apply_->setEnabled(differs);
}

void EarsPanel::apply_found() {
    if (!found_) return;
    if (found_revision_ != workspace_.document.revision()) {
        workspace_.say(tr("The show has changed since: solve again."));
    } else {
        workspace_.document.edit(found_step_, [this](Show& show) { show.mixes = found_->mixes; });
    }
    found_.reset();
    apply_->setEnabled(false);
}

}  // namespace howlmap::app
