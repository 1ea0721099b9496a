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
    /// `fresh`: the cures are for `show`; others stand there in grey and are told in the words of theirs.
    void set(std::vector<std::shared_ptr<const Cure>> cures, const Show& show, bool fresh);
    /// The show that the cures are for.
    const Show& show() const { return show_; }
    std::shared_ptr<const Cure> at(int row) const;
    int row_of(const std::string& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

  private:
    std::vector<std::shared_ptr<const Cure>> cures_;
    Show show_;
    bool fresh_ = true;
};

}  // namespace howlmap::app
