// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of numbers that belong to an object: filters, modes, response points, bands, corners.
#pragma once
#include <QList>
#include <QString>
#include <functional>
#include <optional>
#include <vector>

#include "core/show/limits.h"
#include "core/show/show.h"

namespace howlmap::app {

struct NumberColumn {
    QString title;
    Range range;
    double fresh = 0.0;   ///< value in a new row
    bool length = false;  ///< metres, shown and typed in the show's units
};

struct NumberRow {
    std::vector<double> numbers;
    QString name;   ///< in tables whose rows have one
    int from = -1;  ///< index of the item that this row was read from; -1: a new one

    NumberRow() = default;
    NumberRow(std::initializer_list<double> given) : numbers(given) {}
    double operator[](std::size_t column) const { return numbers[column]; }
    double& operator[](std::size_t column) { return numbers[column]; }
    std::size_t size() const { return numbers.size(); }
    friend bool operator==(const NumberRow&, const NumberRow&) = default;
};
using NumberRows = std::vector<NumberRow>;

/// Where the rows live. `set` gets rows whose numbers are all in range; what it cannot take (corners that cross,
/// frequencies that do not rise) it refuses with a sentence.
struct NumberTableSource {
    QString title, step_name;
    QList<NumberColumn> columns;
    std::function<std::optional<NumberRows>(const Show&)> get;  ///< none: the table does not apply
    std::function<QString(Show&, const NumberRows&)> set;
    /// The row that "Add" puts at the end; without it the fresh value of each column, the first one rising.
    std::function<NumberRow(const NumberRows&)> fresh = {};
    std::size_t most_rows = 64;
    QString name_title = {};  ///< of a last column of words; empty: the rows have no name
};

/// Rows of a list of items, by `read`: (const Item&) -> NumberRow.
template <class Item, class Read>
NumberRows rows_of(const std::vector<Item>& items, Read read) {
    NumberRows rows;
    for (const Item& item : items) {
        rows.push_back(read(item));
        rows.back().from = static_cast<int>(rows.size()) - 1;
    }
    return rows;
}

/// The reverse, by `fill`: (Item&, const NumberRow&). What an item holds beside its row goes with it.
template <class Item, class Fill>
void assign_rows(std::vector<Item>& items, const NumberRows& rows, Fill fill) {
    std::vector<Item> next;
    for (const NumberRow& row : rows) {
        next.push_back(row.from >= 0 ? items[static_cast<std::size_t>(row.from)] : Item());
        fill(next.back(), row);
    }
    items = std::move(next);
}

}  // namespace howlmap::app
