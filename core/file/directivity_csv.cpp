// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/directivity_csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include "core/show/limits.h"

namespace howlmap {
namespace {

constexpr std::size_t kMostCells = 512;

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\r' || c == '"'; };
    while (!text.empty() && blank(text.front())) text.remove_prefix(1);
    while (!text.empty() && blank(text.back())) text.remove_suffix(1);
    return text;
}

std::vector<std::string_view> split(std::string_view line, char separator) {
    std::vector<std::string_view> cells;
    for (;;) {
        const auto at = line.find(separator);
        cells.push_back(trimmed(line.substr(0, at)));
        if (at == std::string_view::npos) return cells;
        line.remove_prefix(at + 1);
    }
}

std::optional<double> number(std::string_view cell, bool decimal_comma) {
    std::string text(cell);
    if (decimal_comma) std::replace(text.begin(), text.end(), ',', '.');
    const char* begin = text.data() + (!text.empty() && text[0] == '+' ? 1 : 0);
    double value = 0.0;
    const auto [end, error] = std::from_chars(begin, text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || text.empty() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

struct TextLine {
    std::size_t number;
    std::vector<std::string_view> cells;
    bool decimal_comma;
};

std::vector<TextLine> lines_of(std::string_view text) {
    std::vector<TextLine> lines;
    std::size_t count = 0;
    while (!text.empty()) {
        const auto end = text.find('\n');
        const std::string_view raw = text.substr(0, end), line = trimmed(raw);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        ++count;
        if (line.empty() || line.front() == '#') continue;
        const char separator = raw.find('\t') != std::string_view::npos  ? '\t'
                               : raw.find(';') != std::string_view::npos ? ';'
                                                                         : ',';
        lines.push_back({count, split(raw, separator), separator != ','});
    }
    return lines;
}

FileError error_at(const TextLine& line, std::size_t cell, std::string expected) {
    const std::string found = cell < line.cells.size() ? fmt::format("\"{}\"", line.cells[cell]) : "nothing";
    return {fmt::format("line {}, cell {}", line.number, cell + 1), found, std::move(expected)};
}

tl::expected<std::vector<double>, FileError> numbers(const TextLine& line, std::size_t count, Range range) {
    if (line.cells.size() != count)
        return tl::unexpected(FileError{fmt::format("line {}", line.number), fmt::format("{} cells", line.cells.size()),
                                        fmt::format("{} cells", count)});
    std::vector<double> values;
    for (std::size_t i = 1; i < count; ++i) {
        const auto value = number(line.cells[i], line.decimal_comma);
        if (!value || !range.holds(*value))
            return tl::unexpected(error_at(line, i, fmt::format("a number from {} to {}", range.low, range.high)));
        values.push_back(*value);
    }
    return values;
}

}  // namespace

tl::expected<DirectivityTable, FileError> read_directivity_csv(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    const std::vector<TextLine> lines = lines_of(text);
    if (lines.size() < 2 || lines.size() > kMostCells + 1)
        return tl::unexpected(FileError{"the table", fmt::format("{} lines", lines.size()),
                                        fmt::format("a line of angles and 1 to {} lines of frequencies", kMostCells)});
    const std::size_t count = lines.front().cells.size();
    if (count < 2 || count > kMostCells + 1)
        return tl::unexpected(FileError{fmt::format("line {}", lines.front().number), fmt::format("{} cells", count),
                                        fmt::format("2 to {} cells", kMostCells + 1)});
    DirectivityTable table;
    auto angles = numbers(lines.front(), count, limits::kTableAngle);
    if (!angles) return tl::unexpected(angles.error());
    table.angles_deg = std::move(*angles);
    for (std::size_t i = 1; i < table.angles_deg.size(); ++i)
        if (table.angles_deg[i] <= table.angles_deg[i - 1])
            return tl::unexpected(error_at(lines.front(), i + 1, "rising angles"));
    for (std::size_t r = 1; r < lines.size(); ++r) {
        const auto hz = number(lines[r].cells[0], lines[r].decimal_comma);
        if (!hz || !limits::kHz.holds(*hz) || (!table.hz.empty() && *hz <= table.hz.back()))
            return tl::unexpected(error_at(lines[r], 0, "a frequency in Hz above the one before"));
        auto gains = numbers(lines[r], count, limits::kGain);
        if (!gains) return tl::unexpected(gains.error());
        table.hz.push_back(*hz);
        table.db.push_back(std::move(*gains));
    }
    return table;
}

std::string write_directivity_csv(const DirectivityTable& table) {
    std::string text = "Hz";
    for (const double angle : table.angles_deg) text += fmt::format(",{}", angle);
    text += '\n';
    for (std::size_t r = 0; r < table.hz.size(); ++r) {
        text += fmt::format("{}", table.hz[r]);
        for (const double db : table.db[r]) text += fmt::format(",{}", db);
        text += '\n';
    }
    return text;
}

}  // namespace howlmap
