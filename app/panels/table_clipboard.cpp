// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/table_clipboard.h"

#include <QHeaderView>
#include <QItemSelectionModel>
#include <QTableView>
#include <algorithm>

namespace howlmap::app {
namespace {

constexpr QChar kTab(u'\t'), kQuote(u'"');

bool is_break(QChar c) { return c == u'\n' || c == u'\r'; }

QString cell(QString text) {
    if (!text.startsWith(kQuote) && !text.contains(kTab) && std::none_of(text.begin(), text.end(), is_break))
        return text;
    return kQuote + text.replace(kQuote, QStringLiteral("\"\"")) + kQuote;
}

QString line_of(const QStringList& cells) {
    QStringList written;
    for (const QString& text : cells) written.append(cell(text));
    return written.join(kTab) + QLatin1Char('\n');
}

QString row_text(const QAbstractItemModel& model, int row, int first, int last, bool titled) {
    QStringList cells;
    if (titled) cells.append(model.headerData(row, Qt::Vertical).toString());
    for (int column = first; column <= last; ++column)
        cells.append(model.index(row, column).data(Qt::EditRole).toString());
    return line_of(cells);
}

QString whole_table(const QAbstractItemModel& model, bool row_titles) {
    QStringList titles;
    if (row_titles) titles.append(QString());
    for (int c = 0; c < model.columnCount(); ++c) titles.append(model.headerData(c, Qt::Horizontal).toString());
    QString text = line_of(titles);
    for (int row = 0; row < model.rowCount(); ++row)
        text += row_text(model, row, 0, model.columnCount() - 1, row_titles);
    return text;
}

/// The end of the cell in quotation marks that begins here, behind its closing mark; -1 where it is not one. Marks
/// around a word that needs none belong to the word: not every spreadsheet doubles them.
qsizetype end_of_quoted(const QString& text, qsizetype begin) {
    if (begin >= text.size() || text[begin] != kQuote) return -1;
    bool needed = false;
    for (qsizetype at = begin + 1; at < text.size(); ++at) {
        if (text[at] != kQuote) {
            needed = needed || text[at] == kTab || is_break(text[at]);
        } else if (at + 1 < text.size() && text[at + 1] == kQuote) {
            needed = true;
            ++at;
        } else {
            const bool closes = at + 1 == text.size() || text[at + 1] == kTab || is_break(text[at + 1]);
            return closes && needed ? at + 1 : -1;
        }
    }
    return -1;
}

QString take_cell(const QString& text, qsizetype& at) {
    const qsizetype begin = at, quoted = end_of_quoted(text, at);
    if (quoted >= 0) {
        at = quoted;
        return text.mid(begin + 1, quoted - begin - 2).replace(QStringLiteral("\"\""), kQuote);
    }
    while (at < text.size() && text[at] != kTab && !is_break(text[at])) ++at;
    return text.mid(begin, at - begin);
}

/// The column of each title of a row; nothing where it is not a row of titles.
QList<int> columns_by_title(const QAbstractItemModel& model, const QStringList& cells, int least_titles) {
    QStringList titles;
    for (int c = 0; c < model.columnCount(); ++c) titles.append(model.headerData(c, Qt::Horizontal).toString());
    QList<int> columns;
    int found = 0;
    for (const QString& text : cells) {
        columns.append(static_cast<int>(text.isEmpty() ? -1 : titles.indexOf(text)));
        if (!text.isEmpty() && columns.last() < 0) return {};
        found += text.isEmpty() ? 0 : 1;
    }
    return found >= least_titles ? columns : QList<int>();
}

}  // namespace

QString tab_separated(const QTableView& table) {
    const QAbstractItemModel& model = *table.model();
    const QItemSelection marked = table.selectionModel()->selection();
    if (marked.isEmpty()) return whole_table(model, !table.verticalHeader()->isHidden());
    int top = model.rowCount() - 1, bottom = 0, left = model.columnCount() - 1, right = 0;
    for (const QItemSelectionRange& range : marked) {
        top = std::min(top, range.top());
        bottom = std::max(bottom, range.bottom());
        left = std::min(left, range.left());
        right = std::max(right, range.right());
    }
    QString text;
    for (int row = top; row <= bottom; ++row) text += row_text(model, row, left, right, false);
    return text;
}

QList<QStringList> cells_of(const QString& text) {
    QList<QStringList> rows;
    QStringList row;
    for (qsizetype at = 0; at < text.size(); ++at) {
        row.append(take_cell(text, at));
        if (at < text.size() && text[at] == kTab) {
            if (at + 1 == text.size()) row.append(QString());
            continue;
        }
        if (at + 1 < text.size() && text[at] == u'\r' && text[at + 1] == u'\n') ++at;
        rows.append(std::exchange(row, {}));
    }
    if (!row.isEmpty()) rows.append(row);
    while (!rows.isEmpty() && rows.last() == QStringList{QString()}) rows.removeLast();
    return rows;
}

PastedRows pasted_rows(const QAbstractItemModel& model, const QString& text, int first_column, int least_titles) {
    PastedRows pasted;
    pasted.rows = cells_of(text);
    if (pasted.rows.isEmpty()) return pasted;
    pasted.columns = columns_by_title(model, pasted.rows.first(), least_titles);
    pasted.titled = !pasted.columns.isEmpty();
    if (pasted.titled) {
        if (pasted.rows.takeFirst().first().isEmpty()) pasted.cell_of_title = 0;
        return pasted;
    }
    qsizetype widest = 0;
    for (const QStringList& row : pasted.rows) widest = std::max(widest, row.size());
    for (int c = 0; c < widest; ++c)
        pasted.columns.append(first_column + c < model.columnCount() ? first_column + c : -1);
    return pasted;
}

}  // namespace howlmap::app
