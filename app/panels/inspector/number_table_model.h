// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <tl/expected.hpp>

#include "app/document/document.h"
#include "app/panels/inspector/number_rows.h"

namespace howlmap::app {

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
    /// Replaces everything by tab, comma or semicolon separated numbers, with the name behind them where rows have one;
    /// lines that hold no number at all are passed over (titles).
    bool paste(const QString& text);
    const NumberTableSource& source() const { return source_; }

  Q_SIGNALS:
    void trouble(const QString& text);

  private:
    bool put(NumberRows rows);
    QString range_trouble(const NumberRows& rows) const;
    std::optional<double> value_of(int column, const QString& text) const;
    QString text_of(int column, double value) const;
    bool is_name(int column) const { return column == source_.columns.size(); }
    tl::expected<NumberRow, QString> row_of(const QString& line, int line_number) const;
    Units units() const { return document_.show().display.units; }

    NumberTableSource source_;
    Document& document_;
    std::optional<NumberRows> rows_;
};

}  // namespace howlmap::app
