// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/number_table.h"

#include <QAction>
#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QGridLayout>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/panels/numbers.h"
#include "app/panels/table_clipboard.h"
#include "app/settings/figures.h"

namespace howlmap::app {
namespace {

constexpr qint64 kMostTableBytes = 4 << 20;
constexpr int kRowsShown = 5;

/// Fields of a line: by tabs or semicolons where there are any (numbers may then have decimal commas), else by commas
/// or blanks.
QStringList fields_of(const QString& line) {
    static const QRegularExpression strong(QStringLiteral("[\\t;]")), weak(QStringLiteral("[,\\s]+"));
    return line.contains(strong) ? line.split(strong) : line.split(weak, Qt::SkipEmptyParts);
}

}  // namespace

NumberTableModel::NumberTableModel(NumberTableSource source, Document& document, QObject* parent)
    : QAbstractTableModel(parent),
      source_(std::move(source)),
      document_(document),
      rows_(source_.get(document.show())) {}

int NumberTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !rows_ ? 0 : static_cast<int>(rows_->size());
}

int NumberTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(source_.columns.size());
}

QVariant NumberTableModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::TextAlignmentRole) return int(Qt::AlignRight | Qt::AlignVCenter);
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::EditRole)) return {};
    return number_text((*rows_)[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())], 3);
}

QVariant NumberTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    return source_.columns.value(section).title;
}

Qt::ItemFlags NumberTableModel::flags(const QModelIndex&) const {
    return Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsEditable;
}

void NumberTableModel::refresh() {
    auto rows = source_.get(document_.show());
    if (rows == rows_) return;
    // A cell that changes keeps its editor and the current cell; only rows that come or go make all new.
    const bool same_shape = rows && rows_ && rows->size() == rows_->size() && !rows->empty();
    if (same_shape) {
        rows_ = std::move(rows);
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        return;
    }
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

bool NumberTableModel::put(NumberRows rows) {
    if (rows.size() > source_.most_rows) {
        Q_EMIT trouble(tr("expected at most %1 rows").arg(source_.most_rows));
        return false;
    }
    for (std::size_t r = 0; r < rows.size(); ++r)
        for (std::size_t c = 0; c < rows[r].size(); ++c) {
            const NumberColumn& column = source_.columns[static_cast<qsizetype>(c)];
            if (column.range.holds(rows[r][c])) continue;
            Q_EMIT trouble(tr("row %1, %2: found %3, expected %4 to %5")
                               .arg(r + 1)
                               .arg(column.title, number_text(rows[r][c], 3), number_text(column.range.low, 3),
                                    number_text(column.range.high, 3)));
            return false;
        }
    QString refused;
    document_.edit(source_.step_name, [&](Show& show) {
        Show tried = show;
        refused = source_.set(tried, rows);
        if (refused.isEmpty()) show = std::move(tried);
    });
    Q_EMIT trouble(refused);
    refresh();
    return refused.isEmpty();
}

bool NumberTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !rows_) return false;
    const auto number = number_of(value.toString());
    if (!number) {
        Q_EMIT trouble(tr("\"%1\" cannot be read as a number").arg(value.toString()));
        return false;
    }
    NumberRows rows = *rows_;
    rows[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())] = *number;
    return put(std::move(rows));
}

bool NumberTableModel::add_row() {
    if (!rows_) return false;
    NumberRows rows = *rows_;
    if (source_.fresh) {
        rows.push_back(source_.fresh(rows));
        return put(std::move(rows));
    }
    std::vector<double> fresh;
    for (const NumberColumn& column : source_.columns) fresh.push_back(column.fresh);
    // A new row after the last one, with a first value beyond it, keeps rising frequencies rising.
    if (!rows.empty() && fresh[0] <= rows.back()[0])
        fresh[0] = std::min(rows.back()[0] * 1.25 + 1.0, source_.columns[0].range.high);
    rows.push_back(std::move(fresh));
    return put(std::move(rows));
}

bool NumberTableModel::remove_row(int row) {
    if (!rows_ || row < 0 || row >= rowCount()) return false;
    NumberRows rows = *rows_;
    rows.erase(rows.begin() + row);
    return put(std::move(rows));
}

bool NumberTableModel::paste(const QString& text) {
    NumberRows rows;
    int line_number = 0;
    for (const QString& line : text.split(QRegularExpression(QStringLiteral("[\\r\\n]+")), Qt::SkipEmptyParts)) {
        ++line_number;
        std::vector<double> row;
        for (const QString& field : fields_of(line))
            if (const auto number = number_of(field)) row.push_back(*number);
        if (row.empty()) continue;
        if (row.size() != static_cast<std::size_t>(source_.columns.size())) {
            Q_EMIT trouble(tr("line %1: found %2 numbers, expected %3")
                               .arg(line_number)
                               .arg(row.size())
                               .arg(source_.columns.size()));
            return false;
        }
        rows.push_back(std::move(row));
    }
    if (rows.empty()) {
        Q_EMIT trouble(tr("found no numbers"));
        return false;
    }
    return put(std::move(rows));
}

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
        connect(button, &QPushButton::clicked, this, slot);
        buttons->addWidget(button, buttons->count() / 2, buttons->count() % 2);
    };
    add(tr("Add"), tr("A new row"), [this] {
        if (model_->add_row()) go_to(model_->rowCount() - 1);
    });
    add(tr("Remove"), tr("The current row"), [this] {
        const int row = view_->currentIndex().row();
        if (model_->remove_row(row)) go_to(std::min(row, model_->rowCount() - 1));
    });
    add(tr("Paste"), tr("Replaces all rows by those on the clipboard"),
        [this] { model_->paste(QGuiApplication::clipboard()->text()); });
    add(tr("Load…"), tr("Replaces all rows by those of a CSV file"), [this] { load(); });
    auto* copy = new QAction(tr("Copy cells"), view_);
    copy->setShortcut(QKeySequence::Copy);
    copy->setShortcutContext(Qt::WidgetShortcut);
    connect(copy, &QAction::triggered, this, [this] { QGuiApplication::clipboard()->setText(tab_separated(*view_)); });
    view_->addAction(copy);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(view_);
    layout->addWidget(trouble_);
    layout->addLayout(buttons);
}

void NumberTable::refresh() { model_->refresh(); }

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
