// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/table_block.h"

#include <QTextLayout>
#include <algorithm>
#include <utility>

namespace howlmap::app {
namespace {
constexpr double kTightRise = 0.6;      ///< of rows that would miss the page by a little
constexpr double kMayStayEmpty = 0.25;  ///< part of a page that is given up to keep a list together
constexpr double kHeading = 30.0;
constexpr double kTallestRow = 0.4;  ///< part of a page; taller ones are continued
constexpr qsizetype kLinesOfPart = 16;
constexpr std::size_t kRowsTogether = 3;  ///< at least so many stay with the heading

/// A table on its way down the pages.
struct Setting {
    QList<double> widths;
    double rise;
};

double row_height(const Flow& flow, const std::vector<std::string>& cells, const Setting& set) {
    double height = 0.0;
    for (std::size_t i = 0; i < cells.size(); ++i)
        height = std::max(height, flow.text_height(QString::fromStdString(cells[i]), Type::body,
                                                   set.widths[static_cast<qsizetype>(i)] - 2.0 * kCellPad));
    return height + 2.0 * set.rise;
}

void draw_row(Flow& flow, const std::vector<std::string>& cells, const Setting& set, bool head) {
    const QRectF row = flow.take(row_height(flow, cells, set));
    if (head) flow.painter().fillRect(row, kShade);
    double x = row.left();
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double width = set.widths[static_cast<qsizetype>(i)];
        flow.text(QRectF(x + kCellPad, row.top() + set.rise, width - 2.0 * kCellPad, row.height() - 2.0 * set.rise),
                  QString::fromStdString(cells[i]), Type::body);
        x += width;
    }
    flow.painter().setPen(QPen(Qt::black, head ? 0.8 : 0.25));
    flow.painter().drawLine(row.bottomLeft(), row.bottomRight());
}

double height_of_rows(const Flow& flow, const report::Table& table, const Setting& set, std::size_t from,
                      std::size_t count) {
    double height = 0.0;
    for (std::size_t i = from; i < std::min(from + count, table.rows.size()); ++i)
        height += row_height(flow, table.rows[i], set);
    return height;
}

double height_of(const Flow& flow, const report::Table& table, const Setting& set) {
    return row_height(flow, table.columns, set) + height_of_rows(flow, table, set, 0, table.rows.size());
}

QStringList lines_of(const std::string& cell, double width) {
    const QString text = fitted_words(QString::fromStdString(cell), Type::body, width);
    QStringList lines;
    for (const QString& paragraph : text.split(u'\n')) {
        QTextLayout layout(paragraph, sheet_font(Type::body));
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            lines.append(paragraph.mid(line.textStart(), line.textLength()).trimmed());
        }
        layout.endLayout();
    }
    return lines;
}

/// A row in parts of a few lines each.
std::vector<std::vector<std::string>> parts_of(const std::vector<std::string>& cells, const Setting& set) {
    std::vector<std::vector<std::string>> parts;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const QStringList lines = lines_of(cells[i], set.widths[static_cast<qsizetype>(i)] - 2.0 * kCellPad);
        for (qsizetype from = 0, part = 0; from < lines.size(); from += kLinesOfPart, ++part) {
            if (static_cast<std::size_t>(part) == parts.size()) parts.emplace_back(cells.size());
            parts[static_cast<std::size_t>(part)][i] = lines.mid(from, kLinesOfPart).join(u'\n').toStdString();
        }
    }
    return parts;
}

report::Table with_tall_rows_in_parts(const Flow& flow, const report::Table& table, const Setting& set) {
    report::Table out{table.title, table.columns, {}};
    for (const auto& row : table.rows) {
        if (row_height(flow, row, set) <= kTallestRow * flow.body_height())
            out.rows.push_back(row);
        else
            for (auto& part : parts_of(row, set)) out.rows.push_back(std::move(part));
    }
    return out;
}

void draw_rows(Flow& flow, const report::Table& whole, const Setting& set) {
    const report::Table table = with_tall_rows_in_parts(flow, whole, set);
    draw_row(flow, table.columns, set, true);
    const std::size_t count = table.rows.size();
    for (std::size_t i = 0; i < count; ++i) {
        // The last row takes the one before it along.
        if (flow.room_left() < height_of_rows(flow, table, set, i, i + 2 == count ? 2 : 1) && !flow.at_top()) {
            flow.break_page();
            draw_row(flow, table.columns, set, true);
        }
        draw_row(flow, table.rows[i], set, false);
    }
    flow.skip(6.0);
}

}  // namespace

void draw_table(Flow& flow, const report::Table& table) {
    if (table.columns.empty()) return;
    const Setting set{column_widths(table, flow.width()), flow.spacing().row_rise};
    flow.need(std::min(0.5 * flow.body_height(),
                       row_height(flow, table.columns, set) + height_of_rows(flow, table, set, 0, 2)));
    draw_rows(flow, table, set);
}

double list_height(const Flow& flow, const report::Table& table) {
    return kHeading + height_of(flow, table, {column_widths(table, flow.width()), kTightRise});
}

void draw_list(Flow& flow, const QString& heading, const report::Table& table) {
    if (table.rows.empty()) return;
    Setting set{column_widths(table, flow.width()), flow.spacing().row_rise};
    const auto fits = [&] { return kHeading + height_of(flow, table, set) <= flow.room_left(); };
    if (!fits()) {
        const double usual = std::exchange(set.rise, kTightRise);
        if (!fits()) {
            set.rise = usual;
            const bool one_page = kHeading + height_of(flow, table, set) <= flow.body_height();
            if (one_page && flow.room_left() < kMayStayEmpty * flow.body_height()) flow.break_page();
        }
    }
    flow.heading(heading, std::min(0.5 * flow.body_height(), row_height(flow, table.columns, set) +
                                                                 height_of_rows(flow, table, set, 0, kRowsTogether)));
    draw_rows(flow, table, set);
}

}  // namespace howlmap::app
