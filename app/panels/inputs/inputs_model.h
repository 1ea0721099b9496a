// SPDX-License-Identifier: GPL-3.0-or-later
// The input list as a table over the open show. Rows are inputs in channel order; the show is read afresh for every
// cell.
#pragma once
#include <QAbstractTableModel>
#include <QStringList>

#include "app/document/document.h"

namespace howlmap::app {

struct PastedRows;

class InputsModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { channel, name, transducer, player, stand, phantom, di, polarity, notes, column_count };

    explicit InputsModel(Document& document, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    /// Rows are dragged to another place: channel numbers stay where they are, the inputs move under them.
    Qt::DropActions supportedDropActions() const override { return Qt::MoveAction; }
    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;
    bool dropMimeData(const QMimeData* data, Qt::DropAction action, int row, int column,
                      const QModelIndex& parent) override;
    /// One step; returns whether anything moved.
    bool move_row(int from, int to);

    /// Id of the input in a row, empty outside.
    QString id_at(int row) const;
    int row_of(const QString& id) const;
    /// Puts tab separated text into the cells from `top_left` on, as one step; under a row of titles into the columns
    /// that it names, and with channels among them into the rows of those. Rows that are not there become new line
    /// inputs. Cells that cannot be read are left as they were; returns a sentence for each of them.
    QStringList paste(const QModelIndex& top_left, const QString& text);

  private:
    void refresh();
    QStringList ids_for(const PastedRows& pasted, int first_row) const;

    Document& document_;
    QStringList ids_;  ///< in channel order
};

/// Sets one cell of the input list from text; what it reads already is left as it is. Returns an empty string, or a
/// sentence that says what was expected.
QString set_input_cell(Show& show, Input& input, InputsModel::Column column, const QString& text);
/// The text of one cell, as it is copied and edited.
QString input_cell(const Show& show, const Input& input, InputsModel::Column column);

}  // namespace howlmap::app
