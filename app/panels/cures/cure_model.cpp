// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/cures/cure_model.h"

#include <algorithm>

#include "app/panels/common/card.h"
#include "app/panels/cures/cure_text.h"
#include "app/settings/figures.h"

namespace howlmap::app {

void CureModel::set(std::vector<std::shared_ptr<const Cure>> cures, const Show& show) {
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
    const QString counted = gain_or_dash(cure->count_on_gain_db),
                  drawn = tr("as drawn %1").arg(gain_or_dash(cure->margin_gain_db));
    switch (role) {
        case Qt::DisplayRole:
            return cure_title(show_, *cure);
        case kCountOn:
            return counted;
        case kAsDrawn:
            return drawn;
        case kWords:
            return tr("tone %1 dB · %2").arg(decimal_text(cure->tone_cost_db, 1)).arg(qstr(cure->instruction));
        case Qt::ToolTipRole:
            return qstr(cure->instruction);
        case Qt::AccessibleTextRole:
            return tr("%1, to count on %2, %3, %4")
                .arg(cure_title(show_, *cure), counted, drawn, qstr(cure->instruction));
        default:
            return {};
    }
}

}  // namespace howlmap::app
