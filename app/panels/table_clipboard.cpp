// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/table_clipboard.h"

#include <QItemSelectionModel>
#include <QStringList>
#include <QTableView>

namespace howlmap::app {
namespace {

QString cell(QString text) {
    return text.replace(QLatin1Char('\t'), QLatin1Char(' ')).replace(QLatin1Char('\n'), QLatin1Char(' '));
}

QString row_text(const QAbstractItemModel& model, int row, int first, int last) {
    QStringList cells;
    for (int column = first; column <= last; ++column)
        cells.append(cell(model.index(row, column).data(Qt::EditRole).toString()));
    return cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
}

}  // namespace

QString tab_separated(const QTableView& table) {
    const QAbstractItemModel& model = *table.model();
    const QItemSelection marked = table.selectionModel()->selection();
    int top = 0, bottom = model.rowCount() - 1, left = 0, right = model.columnCount() - 1;
    QString text;
    if (marked.isEmpty()) {
        QStringList titles;
        for (int c = left; c <= right; ++c) titles.append(cell(model.headerData(c, Qt::Horizontal).toString()));
        text = titles.join(QLatin1Char('\t')) + QLatin1Char('\n');
    } else {
        std::swap(top, bottom);
        std::swap(left, right);
        for (const QItemSelectionRange& range : marked) {
            top = std::min(top, range.top());
            bottom = std::max(bottom, range.bottom());
            left = std::min(left, range.left());
            right = std::max(right, range.right());
        }
    }
    for (int row = top; row <= bottom; ++row) text += row_text(model, row, left, right);
    return text;
}

}  // namespace howlmap::app
