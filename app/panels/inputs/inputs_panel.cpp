// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inputs/inputs_panel.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>

#include "app/panels/choice_delegate.h"
#include "app/panels/common/cell_table.h"
#include "app/panels/inputs/inputs_model.h"
#include "app/panels/steady_delegate.h"
#include "app/panels/table_clipboard.h"
#include "core/report/words.h"
#include "core/show/edits.h"

namespace howlmap::app {
namespace {

QStringList transducer_choices() {
    QStringList choices;
    for (int i = 0; i <= static_cast<int>(PatternName::figure_8); ++i) {
        Input input;
        input.transducer = Microphone{static_cast<PatternName>(i), false, {}, {}};
        choices.append(QString::fromStdString(report::transducer_words(input)));
    }
    Input pickup, line;
    pickup.transducer = Pickup{};
    line.transducer = Line{};
    choices.append(QString::fromStdString(report::transducer_words(pickup)));
    choices.append(QString::fromStdString(report::transducer_words(line)));
    return choices;
}

QStringList player_choices(const Show& show) {
    QStringList choices{QString()};
    for (const Performer& player : show.performers) choices.append(QString::fromStdString(report::name_of(player)));
    return choices;
}

}  // namespace

InputsPanel::InputsPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      model_(new InputsModel(document, this)),
      table_(new QTableView(this)),
      empty_(new QLabel(this)) {
    build();
    connect(&selection_, &Selection::changed, this, &InputsPanel::follow_selection);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &InputsPanel::offer_selection);
    const auto show_empty = [this] { empty_->setVisible(model_->rowCount() == 0); };
    connect(model_, &QAbstractItemModel::modelReset, this, show_empty);
    // Another show has other names; widths that were pulled by hand last as long as the show.
    connect(&document_, &Document::replaced, table_, [this] { table_->resizeColumnsToContents(); });
    show_empty();
}

void InputsPanel::build() {
    setObjectName(QStringLiteral("inputs_panel"));
    setFocusProxy(table_);
    empty_->setText(
        tr("No inputs yet: drag a microphone or an instrument from Parts, or paste a list from a spreadsheet."));
    table_->setModel(model_);
    table_->setItemDelegate(new SteadyDelegate(table_));
    table_->setAccessibleName(tr("Input list"));
    table_->setDragDropMode(QAbstractItemView::InternalMove);
    table_->setDragDropOverwriteMode(false);
    table_->setTabKeyNavigation(false);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setItemDelegateForColumn(InputsModel::transducer, new ChoiceDelegate(transducer_choices, table_));
    table_->setItemDelegateForColumn(InputsModel::player,
                                     new ChoiceDelegate([this] { return player_choices(document_.show()); }, table_));
    table_->setItemDelegateForColumn(InputsModel::polarity,
                                     new ChoiceDelegate(
                                         [] {
                                             return QStringList{InputsModel::tr("normal"), InputsModel::tr("inverted")};
                                         },
                                         table_));
    table_->resizeColumnsToContents();

    add_cell_actions(
        *table_, {{tr("Copy cells"), tr("Copies the marked cells for a spreadsheet; without any the whole list."),
                   QKeySequence::Copy, [this] { copy_cells(); }},
                  {tr("Paste cells"), tr("Puts cells from a spreadsheet here, from the marked cell on."),
                   QKeySequence::Paste, [this] { paste_cells(); }},
                  {tr("Move up"), tr("Takes this input to the channel before."), QKeySequence(Qt::ALT | Qt::Key_Up),
                   [this] { move_up(); }},
                  {tr("Move down"), tr("Takes this input to the next channel."), QKeySequence(Qt::ALT | Qt::Key_Down),
                   [this] { move_down(); }},
                  {tr("Remove inputs"), tr("Takes the marked inputs and their sends out of the show."),
                   QKeySequence::Delete, [this] { remove_inputs(); }}});
    lay_out_table(*this, *empty_, *table_);
}

void InputsPanel::copy_cells() { QGuiApplication::clipboard()->setText(tab_separated(*table_)); }

void InputsPanel::paste_cells() {
    const QStringList troubles = model_->paste(table_->currentIndex(), QGuiApplication::clipboard()->text());
    if (!troubles.isEmpty()) say(tr("Some cells were left as they were. %1").arg(troubles.join(QStringLiteral("; "))));
}

void InputsPanel::move_up() { move_by(-1); }

void InputsPanel::move_down() { move_by(1); }

/// Those of the marked cells. A line input need not stand on the plan: here is where it can be taken out.
void InputsPanel::remove_inputs() {
    Ids ids;
    for (const QModelIndex& index : table_->selectionModel()->selectedIndexes())
        if (const std::string id = model_->id_at(index.row()).toStdString(); !has(ids, id)) ids.push_back(id);
    if (ids.empty()) return say(tr("Mark a cell of the input that is to go."));
    if (!document_.edit(tr("Remove inputs"), [&](Show& show) { remove_objects(show, ids); }))
        say(tr("Nothing removed: what is marked is locked."));
}

void InputsPanel::move_by(int rows) {
    const QModelIndex current = table_->currentIndex();
    const QString id = model_->id_at(current.row());
    const int to = current.row() + rows;
    if (id.isEmpty() || to < 0 || to >= model_->rowCount() || !model_->move_row(current.row(), to)) return;
    table_->setCurrentIndex(model_->index(model_->row_of(id), current.column()));
}

void InputsPanel::follow_selection() {
    if (following_) return;
    following_ = true;
    table_->selectionModel()->clearSelection();
    for (const QString& id : selection_.ids()) {
        const int row = model_->row_of(id);
        if (row < 0) continue;
        table_->selectionModel()->select(model_->index(row, 0),
                                         QItemSelectionModel::Select | QItemSelectionModel::Rows);
        table_->scrollTo(model_->index(row, 0));
    }
    following_ = false;
}

void InputsPanel::offer_selection() {
    if (following_ || !table_->hasFocus()) return;
    following_ = true;
    QStringList ids;
    for (const QModelIndex& index : table_->selectionModel()->selectedIndexes()) {
        const QString id = model_->id_at(index.row());
        if (!ids.contains(id)) ids.append(id);
    }
    selection_.set(ids);
    following_ = false;
}

void InputsPanel::say(const QString& text) { Q_EMIT message(text); }

}  // namespace howlmap::app
