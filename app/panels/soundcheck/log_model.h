// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractTableModel>

#include "app/document/document.h"

namespace howlmap::app {

/// The show's log of the soundcheck, editable; every cell that is typed is one undoable step.
class LogModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { time, hz, band, input, mix, action, gain, note, column_count };
    explicit LogModel(Document& document, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    void add();                                 ///< a row at the end, with the time of day
    void remove(const QModelIndexList& cells);  ///< the rows of these cells, as one step
    QStringList input_names() const;
    QStringList mix_names() const;

  Q_SIGNALS:
    void refused(const QString& why);  ///< what was typed cannot be

  private:
    void refresh();
    Document& document_;
    int rows_ = 0;
};

}  // namespace howlmap::app
