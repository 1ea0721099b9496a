// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/table.h"

#include <algorithm>

namespace howlmap::report {
namespace {

std::string csv_field(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"') quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

std::string tsv_field(std::string text) {
    std::replace_if(
        text.begin(), text.end(), [](char c) { return c == '\t' || c == '\r' || c == '\n'; }, ' ');
    return text;
}

template <class Field>
std::string joined(const Table& table, const char* separator, const char* line_end, Field field) {
    std::string text;
    const auto add = [&](const std::vector<std::string>& cells) {
        for (std::size_t i = 0; i < cells.size(); ++i) text += (i ? separator : "") + field(cells[i]);
        text += line_end;
    };
    add(table.columns);
    for (const auto& row : table.rows) add(row);
    return text;
}

}  // namespace

std::string to_csv(const Table& table) { return joined(table, ",", "\r\n", csv_field); }

std::string to_tsv(const Table& table) { return joined(table, "\t", "\n", tsv_field); }

}  // namespace howlmap::report
