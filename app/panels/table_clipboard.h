// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>

class QTableView;

namespace howlmap::app {

/// The marked rectangle of a table as tab separated text (row by row, gaps as empty cells); with nothing marked the
/// whole table under its column titles. Cells give their edit text.
QString tab_separated(const QTableView& table);

}  // namespace howlmap::app
