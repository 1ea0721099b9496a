// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/mixes/mixes_panel.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "app/panels/common/cell_table.h"
#include "app/panels/mixes/sends_model.h"
#include "app/panels/steady_delegate.h"
#include "app/panels/table_clipboard.h"
#include "app/settings/number_box.h"
#include "core/show/edits.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

QDoubleSpinBox* level_box(QWidget* parent, const QString& suffix, const QString& name) {
    auto* box = new NumberBox(parent);
    box->setRange(-60.0, 160.0);
    box->setDecimals(1);
    box->setSingleStep(0.5);
    box->setSuffix(suffix);
    box->setAccessibleName(name);
    box->setKeyboardTracking(false);
    return box;
}

int free_mix_number(const Show& show) {
    int number = 1;
    while (std::any_of(show.mixes.begin(), show.mixes.end(), [&](const Mix& mix) { return mix.number == number; }))
        ++number;
    return number;
}

}  // namespace

MixesPanel::MixesPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      model_(new SendsModel(document, this)),
      table_(new QTableView(this)),
      empty_(new QLabel(this)) {
    build();
    model_->set_awake(false);
    connect(table_->selectionModel(), &QItemSelectionModel::currentChanged, this, &MixesPanel::show_cell);
    connect(model_, &QAbstractItemModel::dataChanged, this, &MixesPanel::show_cell);
    connect(model_, &QAbstractItemModel::modelReset, this, &MixesPanel::show_cell);
    connect(model_, &SendsModel::trouble, this, &MixesPanel::message);
    connect(level_, &QDoubleSpinBox::valueChanged, this, &MixesPanel::apply_level);
    connect(ear_, &QDoubleSpinBox::valueChanged, this, &MixesPanel::apply_ear);
    show_cell();
}

void MixesPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    model_->set_awake(true);
}

void MixesPanel::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    model_->set_awake(false);
}

void MixesPanel::build() {
    setObjectName(QStringLiteral("mixes_panel"));
    setFocusProxy(table_);
    empty_->setText(tr("No mixes yet: place a wedge beside a player, or add a mix here."));
    table_->setModel(model_);
    table_->setItemDelegate(new SteadyDelegate(table_));
    table_->setTabKeyNavigation(false);
    table_->setAccessibleName(tr("Sends, inputs by mixes"));
    build_header();
    add_cell_actions(*table_,
                     {{tr("Copy cells"), tr("Copies the marked cells for a spreadsheet; without any the whole table."),
                       QKeySequence::Copy, [this] { copy_cells(); }},
                      {tr("Paste cells"), tr("Puts levels from a spreadsheet here, from the marked cell on."),
                       QKeySequence::Paste, [this] { paste_cells(); }},
                      {tr("Take out send"), tr("The mix no longer gets this input."), QKeySequence::Delete,
                       [this] { model_->setData(table_->currentIndex(), QString(), Qt::EditRole); }}});
    lay_out_table(*this, *empty_, *table_, build_fields());
}

void MixesPanel::build_header() {
    QHeaderView* header = table_->horizontalHeader();
    header->setSectionsMovable(true);
    header->setSectionsClickable(true);
    header->setDefaultSectionSize(104);
    connect(header, &QHeaderView::sectionMoved, this, [this, header](int, int from, int to) {
        // The model reorders itself; the header must not keep an order of its own on top of that.
        const QSignalBlocker blocker(header);
        header->moveSection(to, from);
        model_->move_mix(from, to);
    });
    connect(header, &QHeaderView::sectionClicked, this,
            [this](int column) { selection_.set({model_->mix_at(column)}); });
    connect(table_->verticalHeader(), &QHeaderView::sectionClicked, this,
            [this](int row) { selection_.set({model_->input_at(row)}); });
}

QWidget* MixesPanel::build_fields() {
    auto* row = new QWidget(this);
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    cell_name_ = new QLabel(row);
    ear_name_ = new QLabel(row);
    level_ = level_box(row, tr(" dB at 1 m"), tr("Level of the send at 1 m"));
    ear_ = level_box(row, tr(" dBA"), tr("Level of the send at the ear"));
    ear_->setToolTip(tr("Sets the send so that it reaches this level at the ear. An estimate, not a measurement."));
    auto* add = new QPushButton(tr("Add mix"), row);
    add->setToolTip(tr("A new mix; say in the Inspector which loudspeakers play it."));
    auto* remove = new QPushButton(tr("Remove mix"), row);
    remove->setToolTip(tr("Removes the mix of the marked cell with all its sends."));
    connect(add, &QPushButton::clicked, this, &MixesPanel::add_mix);
    connect(remove, &QPushButton::clicked, this, &MixesPanel::remove_mix);
    for (QWidget* widget : {static_cast<QWidget*>(cell_name_), static_cast<QWidget*>(level_),
                            static_cast<QWidget*>(ear_name_), static_cast<QWidget*>(ear_)})
        layout->addWidget(widget);
    layout->addStretch(1);
    layout->addWidget(add);
    layout->addWidget(remove);
    return row;
}

void MixesPanel::show_cell() {
    showing_ = true;
    empty_->setVisible(model_->columnCount() == 0);
    const QModelIndex cell = table_->currentIndex();
    const auto level = cell.isValid() ? model_->level(cell) : std::nullopt;
    const auto ear = cell.isValid() ? model_->ear_level(cell) : std::nullopt;
    const QString input =
        cell.isValid() ? model_->headerData(cell.row(), Qt::Vertical, Qt::DisplayRole).toString() : QString();
    const QString mix =
        cell.isValid() ? model_->headerData(cell.column(), Qt::Horizontal, Qt::DisplayRole).toString() : QString();
    cell_name_->setText(cell.isValid() ? tr("%1 in %2").arg(input, mix) : tr("Mark a cell to set its send"));
    level_->setEnabled(level.has_value());
    if (level) level_->setValue(*level);
    const QString who = cell.isValid() ? model_->listener(cell.column()) : QString();
    ear_name_->setText(who.isEmpty() ? tr("at the ear") : tr("at the ear of %1").arg(who));
    ear_->setEnabled(ear.has_value());
    if (ear) ear_->setValue(*ear);
    showing_ = false;
}

void MixesPanel::apply_level() {
    if (!showing_ && table_->currentIndex().isValid())
        model_->setData(table_->currentIndex(), level_->value(), Qt::EditRole);
}

void MixesPanel::apply_ear() {
    if (showing_ || !table_->currentIndex().isValid()) return;
    if (!model_->set_for_ear(table_->currentIndex(), ear_->value())) show_cell();  // what holds stays in the field
}

void MixesPanel::add_mix() {
    QString id;
    document_.edit(tr("Add mix"), [&](Show& show) {
        Mix mix;
        mix.number = free_mix_number(show);
        mix.id = fresh_id(show, "mix-" + std::to_string(mix.number));
        mix.name = tr("Mix %1").arg(mix.number).toStdString();
        id = QString::fromStdString(mix.id);
        show.mixes.push_back(mix);
    });
    selection_.set({id});
}

void MixesPanel::remove_mix() {
    const std::string id = model_->mix_at(table_->currentIndex().column()).toStdString();
    if (id.empty()) {
        Q_EMIT message(tr("Mark a cell of the mix that is to go."));
        return;
    }
    document_.edit(tr("Remove mix"), [&](Show& show) {
        std::erase_if(show.mixes, [&](const Mix& mix) { return mix.id == id; });
        for (Performer& performer : show.performers)
            if (performer.mix == id) performer.mix.clear();
        for (SoundcheckEntry& entry : show.soundcheck)
            if (entry.mix == id) entry.mix.clear();
    });
}

void MixesPanel::copy_cells() { QGuiApplication::clipboard()->setText(tab_separated(*table_)); }

void MixesPanel::paste_cells() {
    const QStringList troubles = model_->paste(table_->currentIndex(), QGuiApplication::clipboard()->text());
    if (!troubles.isEmpty()) Q_EMIT message(troubles.join(QStringLiteral("; ")));
}

}  // namespace howlmap::app
