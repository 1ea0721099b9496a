// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/text_table.h"

#include <utility>

namespace howlmap::app {

TextTable::TextTable(const QStringList& titles, QObject* parent) : QAbstractTableModel(parent), titles_(titles) {}

void TextTable::set_rows(QList<QStringList> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

int TextTable::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int TextTable::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(titles_.size());
}

QVariant TextTable::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (index.column() == 0 ? Qt::AlignLeft : Qt::AlignRight));
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    return rows_[index.row()].value(index.column());
}

QVariant TextTable::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return titles_.value(section);
}

}  // namespace howlmap::app
