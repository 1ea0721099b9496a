// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractListModel>
#include <memory>
#include <vector>

#include "core/cures/cures.h"

namespace howlmap::app {

/// Cures, best first, as cards.
class CureModel : public QAbstractListModel {
    Q_OBJECT
  public:
    using QAbstractListModel::QAbstractListModel;
    void set(std::vector<std::shared_ptr<const Cure>> cures, const Show& show);
    std::shared_ptr<const Cure> at(int row) const;
    int row_of(const std::string& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    std::vector<std::shared_ptr<const Cure>> cures_;
    Show show_;
};

}  // namespace howlmap::app
