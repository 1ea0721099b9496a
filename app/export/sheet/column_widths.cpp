// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFontMetricsF>
#include <QRegularExpression>
#include <algorithm>
#include <numeric>

#include "app/export/sheet/table_block.h"

namespace howlmap::app {
namespace {
constexpr double kNarrow = 70.0;       ///< columns up to this width need not shrink
constexpr double kWidestWord = 120.0;  ///< longer ones are broken

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
            wish.natural = std::max(wish.natural, metrics.horizontalAdvance(text) + 2.0 * kCellPad + 1.0);
            wish.least =
                std::max(wish.least, std::min(kWidestWord, longest_word(metrics, text)) + 2.0 * kCellPad + 1.0);
        }
    };
    widen(table.columns);
    for (const auto& row : table.rows) widen(row);
    return all;
}

double sum(const QList<Wish>& all, double Wish::*part) {
    return std::accumulate(all.begin(), all.end(), 0.0, [&](double s, const Wish& w) { return s + w.*part; });
}

/// Narrow columns do not shrink where there is another way: a figure stays beside its unit.
QList<Wish> with_narrow_ones_whole(const QList<Wish>& all, double total) {
    QList<Wish> whole = all;
    for (Wish& wish : whole)
        if (wish.natural <= kNarrow) wish.least = wish.natural;
    return sum(whole, &Wish::least) < total ? whole : all;
}
}  // namespace

QList<double> column_widths(const report::Table& table, double total) {
    const QList<Wish> all = with_narrow_ones_whole(wishes(table), total);
    const double natural = sum(all, &Wish::natural), least = sum(all, &Wish::least);
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

}  // namespace howlmap::app
