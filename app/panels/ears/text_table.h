// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>
#include <QStringList>

namespace howlmap::app {

/// A table of texts that somebody else worked out: the first column to the left, figures to the right.
class TextTable : public QAbstractTableModel {
    Q_OBJECT
  public:
    TextTable(const QStringList& titles, QObject* parent);
    void set_rows(QList<QStringList> rows);
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QStringList titles_;
    QList<QStringList> rows_;
};

}  // namespace howlmap::app
