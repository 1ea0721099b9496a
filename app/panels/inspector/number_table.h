// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of numbers that belong to an object: filters, modes, response points, corners.
#pragma once
#include <QAbstractTableModel>
#include <QList>
#include <QWidget>
#include <functional>
#include <vector>

#include "app/document/document.h"
#include "core/show/limits.h"

class QLabel;
class QTableView;

namespace howlmap::app {

struct NumberColumn {
    QString title;
    Range range;
    double fresh = 0.0;  ///< value in a new row
};

using NumberRows = std::vector<std::vector<double>>;

/// Where the rows live. `set` gets rows whose numbers are all in range; what it cannot take (corners that cross,
/// frequencies that do not rise) it refuses with a sentence.
struct NumberTableSource {
    QString title, step_name;
    QList<NumberColumn> columns;
    std::function<std::optional<NumberRows>(const Show&)> get;  ///< none: the table does not apply
    std::function<QString(Show&, const NumberRows&)> set;
    /// The row that "Add" puts at the end; without it the fresh value of each column, the first one rising.
    std::function<std::vector<double>(const NumberRows&)> fresh = {};
    std::size_t most_rows = 64;
};

class NumberTableModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    NumberTableModel(NumberTableSource source, Document& document, QObject* parent);
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    void refresh();
    bool applies() const { return rows_.has_value(); }
    bool add_row();
    bool remove_row(int row);
    /// Replaces everything by tab, comma or semicolon separated numbers; lines that hold no number at all are passed
    /// over (titles).
    bool paste(const QString& text);
    const NumberTableSource& source() const { return source_; }

  Q_SIGNALS:
    void trouble(const QString& text);

  private:
    bool put(NumberRows rows);

    NumberTableSource source_;
    Document& document_;
    std::optional<NumberRows> rows_;
};

/// The table with its buttons: add, remove, paste, load.
class NumberTable : public QWidget {
    Q_OBJECT
  public:
    NumberTable(NumberTableSource source, Document& document, QWidget* parent = nullptr);
    NumberTableModel& model() { return *model_; }
    void refresh();

  private:
    void load();
    void go_to(int row);

    NumberTableModel* model_;
    QTableView* view_;
    QLabel* trouble_;
};

}  // namespace howlmap::app
