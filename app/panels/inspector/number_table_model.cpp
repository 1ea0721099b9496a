// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/number_table_model.h"

#include <QRegularExpression>
#include <algorithm>
#include <utility>

#include "app/export/length_text.h"
#include "app/panels/numbers.h"
#include "app/settings/figures.h"
#include "core/units/lengths.h"

namespace howlmap::app {
namespace {

bool has_feet(const QString& line) {
    static const QRegularExpression mark(QStringLiteral("\\d\\s*['\"\u2032\u2033]"));
    return line.contains(mark);
}

/// Fields of a line: by tabs or semicolons where there are any (numbers may then have decimal commas), else by commas
/// or blanks; within feet and inches there are blanks that part nothing.
QStringList fields_of(const QString& line) {
    static const QRegularExpression strong(QStringLiteral("[\\t;]")), weak(QStringLiteral("[,\\s]+")),
        feet(QStringLiteral(",|(?<=[\"\u2033])\\s+"));
    if (line.contains(strong)) return line.split(strong);
    return line.split(has_feet(line) ? feet : weak, Qt::SkipEmptyParts);
}

}  // namespace

NumberTableModel::NumberTableModel(NumberTableSource source, Document& document, QObject* parent)
    : QAbstractTableModel(parent),
      source_(std::move(source)),
      document_(document),
      rows_(source_.get(document.show())) {}

int NumberTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || !rows_ ? 0 : static_cast<int>(rows_->size());
}

int NumberTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(source_.columns.size()) + (source_.name_title.isEmpty() ? 0 : 1);
}

QString NumberTableModel::text_of(int column, double value) const {
    return source_.columns[column].length && units() == Units::imperial ? length_text(value, units())
                                                                        : number_text(value, 3);
}

std::optional<double> NumberTableModel::value_of(int column, const QString& text) const {
    if (!source_.columns[column].length) return number_of(text);
    const auto length =
        parse_length(text.toStdString(), units() == Units::imperial ? LengthUnit::feet : LengthUnit::metres);
    return length ? std::optional(*length) : std::nullopt;
}

QVariant NumberTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const int column = index.column();
    if (role == Qt::TextAlignmentRole)
        return int((is_name(column) ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
    const NumberRow& row = (*rows_)[static_cast<std::size_t>(index.row())];
    return is_name(column) ? row.name : text_of(column, row[static_cast<std::size_t>(column)]);
}

QVariant NumberTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal) return {};
    if (is_name(section)) return source_.name_title;
    const NumberColumn column = source_.columns.value(section);
    return column.length && units() == Units::metric ? tr("%1, m").arg(column.title) : column.title;
}

Qt::ItemFlags NumberTableModel::flags(const QModelIndex&) const {
    return Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsEditable;
}

void NumberTableModel::refresh() {
    auto rows = source_.get(document_.show());
    if (rows == rows_) return;
    // A cell that changes keeps its editor and the current cell; only rows that come or go make all new.
    const bool same_shape = rows && rows_ && rows->size() == rows_->size() && !rows->empty();
    if (same_shape) {
        rows_ = std::move(rows);
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        return;
    }
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

/// Where a number lies out of its range; empty when all are well.
QString NumberTableModel::range_trouble(const NumberRows& rows) const {
    for (std::size_t r = 0; r < rows.size(); ++r)
        for (int c = 0; c < source_.columns.size(); ++c) {
            const NumberColumn& column = source_.columns[c];
            const double value = rows[r][static_cast<std::size_t>(c)];
            if (!column.range.holds(value))
                return tr("row %1, %2: found %3, expected %4 to %5")
                    .arg(r + 1)
                    .arg(column.title, text_of(c, value), text_of(c, column.range.low), text_of(c, column.range.high));
        }
    return {};
}

bool NumberTableModel::put(NumberRows rows) {
    QString refused =
        rows.size() > source_.most_rows ? tr("expected at most %1 rows").arg(source_.most_rows) : range_trouble(rows);
    if (refused.isEmpty())
        document_.edit(source_.step_name, [&](Show& show) {
            Show tried = show;
            refused = source_.set(tried, rows);
            if (refused.isEmpty()) show = std::move(tried);
        });
    Q_EMIT trouble(refused);
    refresh();
    return refused.isEmpty();
}

bool NumberTableModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !rows_) return false;
    const QString text = value.toString();
    if (text == data(index, role).toString()) return true;  // what is shown is rounded: leaving a cell changes nothing
    NumberRows rows = *rows_;
    NumberRow& row = rows[static_cast<std::size_t>(index.row())];
    if (is_name(index.column())) {
        row.name = text.trimmed();
        return put(std::move(rows));
    }
    const auto number = value_of(index.column(), text);
    if (!number) {
        Q_EMIT trouble(source_.columns[index.column()].length ? tr("\"%1\" cannot be read as a length").arg(text)
                                                              : tr("\"%1\" cannot be read as a number").arg(text));
        return false;
    }
    row[static_cast<std::size_t>(index.column())] = *number;
    return put(std::move(rows));
}

bool NumberTableModel::add_row() {
    if (!rows_) return false;
    NumberRows rows = *rows_;
    if (source_.fresh) {
        rows.push_back(source_.fresh(rows));
        return put(std::move(rows));
    }
    NumberRow fresh;
    for (const NumberColumn& column : source_.columns) fresh.numbers.push_back(column.fresh);
    // A new row after the last one, with a first value beyond it, keeps rising frequencies rising.
    if (!rows.empty() && fresh[0] <= rows.back()[0])
        fresh[0] = std::min(rows.back()[0] * 1.25 + 1.0, source_.columns[0].range.high);
    rows.push_back(std::move(fresh));
    return put(std::move(rows));
}

bool NumberTableModel::remove_row(int row) {
    if (!rows_ || row < 0 || row >= rowCount()) return false;
    NumberRows rows = *rows_;
    rows.erase(rows.begin() + row);
    return put(std::move(rows));
}

/// Numbers until there is one for each column; what comes behind them is the name.
tl::expected<NumberRow, QString> NumberTableModel::row_of(const QString& line, int line_number) const {
    NumberRow row;
    QStringList name;
    const auto expected = static_cast<std::size_t>(source_.columns.size());
    const bool named = !source_.name_title.isEmpty();
    for (const QString& field : fields_of(line)) {
        const int column = static_cast<int>(std::min(row.size(), expected - 1));
        if (named && row.size() == expected)
            name.append(field.trimmed());
        else if (const auto number = value_of(column, field))
            row.numbers.push_back(*number);
    }
    row.name = name.join(QLatin1Char(' ')).trimmed();
    if (row.size() == expected || (row.size() == 0 && !has_feet(line))) return row;
    return tl::unexpected(tr("line %1: found %2 numbers, expected %3").arg(line_number).arg(row.size()).arg(expected));
}

bool NumberTableModel::paste(const QString& text) {
    NumberRows rows;
    int line_number = 0;
    for (const QString& line : text.split(QRegularExpression(QStringLiteral("\\r\\n|\\r|\\n")))) {
        auto row = row_of(line, ++line_number);
        if (!row) {
            Q_EMIT trouble(row.error());
            return false;
        }
        if (row->size() > 0) rows.push_back(std::move(*row));
    }
    if (rows.empty()) {
        Q_EMIT trouble(tr("found no numbers"));
        return false;
    }
    return put(std::move(rows));
}

}  // namespace howlmap::app
