// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/table_block.h"

#include <QFontMetricsF>
#include <QRegularExpression>
#include <algorithm>
#include <numeric>

namespace howlmap::app {
namespace {
constexpr double kPad = 3.0;   ///< left and right of a cell
constexpr double kRise = 1.8;  ///< above and below

struct Wish {
    double natural = 0.0, least = 0.0;
};

double longest_word(const QFontMetricsF& metrics, const QString& text) {
    double widest = 0.0;
    for (const QString& word : text.split(QRegularExpression(QStringLiteral("\\s+"))))
        widest = std::max(widest, metrics.horizontalAdvance(word));
    return widest;
}

QList<Wish> wishes(const report::Table& table) {
    const QFontMetricsF metrics(sheet_font(Type::body));
    QList<Wish> all(static_cast<qsizetype>(table.columns.size()));
    const auto widen = [&](const std::vector<std::string>& cells) {
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const QString text = QString::fromStdString(cells[i]);
            Wish& wish = all[static_cast<qsizetype>(i)];
            wish.natural = std::max(wish.natural, metrics.horizontalAdvance(text) + 2.0 * kPad + 1.0);
            wish.least = std::max(wish.least, longest_word(metrics, text) + 2.0 * kPad + 1.0);
        }
    };
    widen(table.columns);
    for (const auto& row : table.rows) widen(row);
    return all;
}

double row_height(const Flow& flow, const std::vector<std::string>& cells, const QList<double>& widths) {
    double height = 0.0;
    for (std::size_t i = 0; i < cells.size(); ++i)
        height = std::max(height, flow.text_height(QString::fromStdString(cells[i]), Type::body,
                                                   widths[static_cast<qsizetype>(i)] - 2.0 * kPad));
    return height + 2.0 * kRise;
}

void draw_row(Flow& flow, const std::vector<std::string>& cells, const QList<double>& widths, bool head) {
    const QRectF row = flow.take(row_height(flow, cells, widths));
    if (head) flow.painter().fillRect(row, QColor(0xe6, 0xe6, 0xe6));
    double x = row.left();
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double width = widths[static_cast<qsizetype>(i)];
        flow.text(QRectF(x + kPad, row.top() + kRise, width - 2.0 * kPad, row.height() - 2.0 * kRise),
                  QString::fromStdString(cells[i]), Type::body);
        x += width;
    }
    flow.painter().setPen(QPen(Qt::black, head ? 0.8 : 0.25));
    flow.painter().drawLine(row.bottomLeft(), row.bottomRight());
}

}  // namespace

QList<double> column_widths(const report::Table& table, double total) {
    const QList<Wish> all = wishes(table);
    const auto sum = [&](double Wish::*part) {
        return std::accumulate(all.begin(), all.end(), 0.0, [&](double s, const Wish& w) { return s + w.*part; });
    };
    const double natural = sum(&Wish::natural), least = sum(&Wish::least);
    QList<double> widths;
    if (natural <= total) {
        for (const Wish& wish : all) widths.append(wish.natural);
        widths.last() += total - natural;
    } else if (least < total) {
        const double share = (total - least) / (natural - least);
        for (const Wish& wish : all) widths.append(wish.least + share * (wish.natural - wish.least));
    } else {
        for (const Wish& wish : all) widths.append(wish.least * total / least);
    }
    return widths;
}

double table_height(const Flow& flow, const report::Table& table) {
    const QList<double> widths = column_widths(table, flow.width());
    double height = row_height(flow, table.columns, widths);
    for (const auto& row : table.rows) height += row_height(flow, row, widths);
    return height;
}

void draw_table(Flow& flow, const report::Table& table) {
    if (table.columns.empty()) return;
    const QList<double> widths = column_widths(table, flow.width());
    const double head = row_height(flow, table.columns, widths);
    flow.need(head + (table.rows.empty() ? 0.0 : row_height(flow, table.rows.front(), widths)));
    draw_row(flow, table.columns, widths, true);
    for (const auto& row : table.rows) {
        if (flow.room_left() < row_height(flow, row, widths)) {
            flow.break_page();
            draw_row(flow, table.columns, widths, true);
        }
        draw_row(flow, row, widths, false);
    }
    flow.skip(6.0);
}

}  // namespace howlmap::app
