// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/cures/cure_model.h"

#include <algorithm>
#include <utility>

#include "app/panels/common/card.h"
#include "app/panels/cures/cure_text.h"
#include "app/settings/figures.h"

namespace howlmap::app {

void CureModel::set(std::vector<std::shared_ptr<const Cure>> cures, const Show& show, bool fresh) {
    if (std::exchange(fresh_, fresh) != fresh && !cures_.empty()) Q_EMIT dataChanged(index(0), index(rowCount() - 1));
    if (cures == cures_) return;
    beginResetModel();
    cures_ = std::move(cures);
    show_ = show;
    endResetModel();
}

std::shared_ptr<const Cure> CureModel::at(int row) const {
    return row >= 0 && row < rowCount() ? cures_[static_cast<std::size_t>(row)] : nullptr;
}

int CureModel::row_of(const std::string& id) const {
    const auto found = std::ranges::find_if(cures_, [&](const auto& cure) { return cure->id == id; });
    return found == cures_.end() ? -1 : static_cast<int>(found - cures_.begin());
}

int CureModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(cures_.size());
}

QVariant CureModel::data(const QModelIndex& index, int role) const {
    const auto cure = at(index.row());
    if (!cure) return {};
    const QString counted = gained_text(cure->count_on_gain_db, cure->margins_after.margin_p05_db),
                  drawn = tr("as drawn %1").arg(gained_text(cure->margin_gain_db, cure->margins_after.margin_db)),
                  cost = tr("trouble %1 · tone %2 dB")
                             .arg(decimal_text(cure->trouble, 1), decimal_text(cure->tone_cost_db, 1));
    switch (role) {
        case Qt::DisplayRole:
            return cure_title(show_, *cure);
        case kCountOn:
            return counted;
        case kAsDrawn:
            return drawn;
        case kWords:
            return cost;
        case Qt::ToolTipRole:
            return qstr(cure->instruction);
        case Qt::AccessibleTextRole:
            return tr("%1, to count on %2, %3, %4, %5")
                .arg(cure_title(show_, *cure), counted, drawn, cost, qstr(cure->instruction));
        default:
            return {};
    }
}

/// Those of another show cannot be chosen; the list itself stays, and with it the focus.
Qt::ItemFlags CureModel::flags(const QModelIndex& index) const {
    return fresh_ ? QAbstractListModel::flags(index) : Qt::ItemFlags(Qt::ItemNeverHasChildren);
}

}  // namespace howlmap::app
