// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/sheet/flow.h"
#include "core/report/table.h"

namespace howlmap::app {

/// Draws a table down the pages: cells wrap, rows stay whole, the head is repeated on each page.
/// Columns are as wide as their texts ask, shrunk towards their longest word where the page is too narrow.
void draw_table(Flow& flow, const report::Table& table);

/// Height of the whole table on one page.
double table_height(const Flow& flow, const report::Table& table);

/// Column widths for a total width: natural ones where they fit, else shrunk, never below the longest word unless there
/// is no other way.
QList<double> column_widths(const report::Table& table, double total);

}  // namespace howlmap::app
