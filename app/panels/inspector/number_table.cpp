// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/number_table.h"

#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QGridLayout>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/common/cell_table.h"
#include "app/panels/table_clipboard.h"

namespace howlmap::app {
namespace {

constexpr qint64 kMostTableBytes = 4 << 20;
constexpr int kRowsShown = 5;

}  // namespace

NumberTable::NumberTable(NumberTableSource source, Document& document, QWidget* parent)
    : QWidget(parent),
      model_(new NumberTableModel(std::move(source), document, this)),
      view_(new QTableView(this)),
      trouble_(new QLabel(this)) {
    view_->setModel(model_);
    view_->setAccessibleName(model_->source().title);
    view_->verticalHeader()->hide();
    view_->setTabKeyNavigation(false);
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    view_->setFixedHeight(view_->fontMetrics().height() * 2 * kRowsShown);
    trouble_->setWordWrap(true);
    trouble_->hide();
    connect(model_, &NumberTableModel::trouble, this, [this](const QString& text) {
        trouble_->setText(text);
        trouble_->setVisible(!text.isEmpty());
    });
    auto* buttons = new QGridLayout;  // two by two: four in a row are too wide for most languages
    const auto add = [&](const QString& text, const QString& tip, auto slot) {
        auto* button = new QPushButton(text, this);
        button->setToolTip(tip);
        button->setStatusTip(tip);
        connect(button, &QPushButton::clicked, this, slot);
        buttons->addWidget(button, buttons->count() / 2, buttons->count() % 2);
    };
    add(tr("Add"), tr("Adds a row at the end."), [this] {
        if (model_->add_row()) go_to(model_->rowCount() - 1);
    });
    add(tr("Remove"), tr("Takes the current row out."), [this] { remove(); });
    add(tr("Paste"), tr("Replaces all rows by those on the clipboard."),
        [this] { model_->paste(QGuiApplication::clipboard()->text()); });
    add(tr("Load…"), tr("Replaces all rows by those of a CSV file."), [this] { load(); });
    add_cell_actions(
        *view_, {{tr("Copy cells"), tr("Copies the marked cells for a spreadsheet; without any the whole table."),
                  QKeySequence::Copy, [this] { QGuiApplication::clipboard()->setText(tab_separated(*view_)); }},
                 {tr("Paste rows"), tr("Replaces all rows by those on the clipboard."), QKeySequence::Paste,
                  [this] { model_->paste(QGuiApplication::clipboard()->text()); }},
                 {tr("Remove row"), tr("Takes the current row out."), QKeySequence::Delete, [this] { remove(); }}});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(view_);
    layout->addWidget(trouble_);
    layout->addLayout(buttons);
}

void NumberTable::refresh() { model_->refresh(); }

void NumberTable::remove() {
    const int row = view_->currentIndex().row();
    if (model_->remove_row(row)) go_to(std::min(row, model_->rowCount() - 1));
}

/// The keyboard goes on in this row.
void NumberTable::go_to(int row) {
    view_->setCurrentIndex(model_->index(row, 0));
    view_->setFocus();
}

void NumberTable::load() {
    const QString name =
        QFileDialog::getOpenFileName(this, tr("Load a table"), {}, tr("Tables (*.csv *.txt *.tsv);;All files (*)"));
    if (name.isEmpty()) return;
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kMostTableBytes) {
        trouble_->setText(tr("%1 cannot be read").arg(name));
        trouble_->show();
        return;
    }
    model_->paste(QString::fromUtf8(file.readAll()));
}

}  // namespace howlmap::app
