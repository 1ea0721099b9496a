// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/export/sheet/flow.h"
#include "core/report/table.h"

namespace howlmap::app {

inline constexpr double kCellPad = 3.0;  ///< left and right of a cell, points

/// Draws a table down the pages: cells wrap, rows stay whole, the head is repeated on each page, no row stands alone.
/// Columns are as wide as their texts ask, shrunk towards their longest word where the page is too narrow.
void draw_table(Flow& flow, const report::Table& table);
/// With its heading. A list is kept on one page where that leaves less than a part of the page before it empty: nobody
/// likes to patch from two sheets at once.
void draw_list(Flow& flow, const QString& heading, const report::Table& table);

/// How high that is at least, heading included, on one page.
double list_height(const Flow& flow, const report::Table& table);

/// Column widths for a total width: natural ones where they fit, else shrunk, never below the longest word unless there
/// is no other way.
QList<double> column_widths(const report::Table& table, double total);

}  // namespace howlmap::app
