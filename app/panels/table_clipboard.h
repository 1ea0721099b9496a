// SPDX-License-Identifier: GPL-3.0-or-later
// Tables and spreadsheets: tab separated text, a line a row. As spreadsheets do it, a cell that holds a tab, a line
// break or begins with a quotation mark stands in quotation marks, those within doubled (common practice, as in RFC
// 4180 for commas).
#pragma once
#include <QList>
#include <QString>
#include <QStringList>

class QAbstractItemModel;
class QTableView;

namespace howlmap::app {

/// The marked rectangle of a table (row by row, gaps as empty cells); with nothing marked the whole table under its
/// column titles and, where they are seen, beside its row titles. Cells give their edit text.
QString tab_separated(const QTableView& table);

/// The cells of such text, row by row. Empty lines at the end are none.
QList<QStringList> cells_of(const QString& text);

/// What is pasted and where it belongs.
struct PastedRows {
    QList<QStringList> rows;
    QList<int> columns;      ///< of the table for each cell of a row; -1: none
    bool titled = false;     ///< the columns come from a first row of titles, which is not among the rows
    int cell_of_title = -1;  ///< where the title of a row stands, if there is one
};

/// A first row of which at least so many cells are column titles and none is anything else tells the columns; without
/// one they are counted from `first_column` on.
PastedRows pasted_rows(const QAbstractItemModel& model, const QString& text, int first_column, int least_titles);

}  // namespace howlmap::app
