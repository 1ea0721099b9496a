// SPDX-License-Identifier: GPL-3.0-or-later
// Lists for the sheet, the clipboard and spreadsheets: plain text cells, row by row.
#pragma once
#include <string>
#include <vector>

namespace howlmap::report {

struct Table {
    std::string title;
    std::vector<std::string> columns;
    std::vector<std::vector<std::string>> rows;  ///< each as long as columns
};

/// RFC 4180: header line, CRLF, fields quoted where they hold a comma, a quote or a line break.
std::string to_csv(const Table& table);
/// Tab separated for the clipboard; tabs and line breaks inside a cell become spaces.
std::string to_tsv(const Table& table);

}  // namespace howlmap::report
