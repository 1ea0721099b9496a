// SPDX-License-Identifier: GPL-3.0-or-later
// What the panels that are one large table share: the actions on its cells, and the hint above it while it is empty.
#pragma once
#include <QKeySequence>
#include <QString>
#include <functional>
#include <vector>

class QLabel;
class QTableView;
class QWidget;

namespace howlmap::app {

struct CellAction {
    QString text, sentence;  ///< the sentence says more in the status bar
    QKeySequence keys;       ///< while the table has the focus
    std::function<void()> run;
};

/// Actions for the keyboard and the context menu of a table.
void add_cell_actions(QTableView& table, const std::vector<CellAction>& actions);
/// Hint, table and, if given, a row of fields, one below the other.
void lay_out_table(QWidget& panel, QLabel& hint, QTableView& table, QWidget* fields = nullptr);

}  // namespace howlmap::app
