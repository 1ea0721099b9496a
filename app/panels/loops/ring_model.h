// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractListModel>
#include <optional>
#include <vector>

#include "core/loop/figures.h"
#include "core/show/show.h"

namespace howlmap::app {

/// The rings of a result, worst first, as cards.
class RingModel : public QAbstractListModel {
    Q_OBJECT
  public:
    using QAbstractListModel::QAbstractListModel;

    struct Row {
        Ring ring;
        std::optional<double> count_on_db;
    };
    void set(std::vector<Row> rows, const Show& show);
    const Row* at(int row) const;
    /// The row whose frequency lies within a twelfth of an octave of a ring that was looked at before, or -1.
    int row_near(double hz) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    QString words(const Row& row) const;

    std::vector<Row> rows_;
    Show show_;
};

}  // namespace howlmap::app
