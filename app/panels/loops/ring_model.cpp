// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/loops/ring_model.h"

#include <cmath>

#include "app/export/risk_scale.h"
#include "app/panels/common/card.h"
#include "app/settings/figures.h"
#include "core/report/check_text.h"

namespace howlmap::app {

void RingModel::set(std::vector<Row> rows, const Show& show) {
    const bool same_size = rows.size() == rows_.size();
    if (!same_size) beginResetModel();
    rows_ = std::move(rows);
    show_ = show;
    if (!same_size) return endResetModel();
    if (!rows_.empty()) Q_EMIT dataChanged(index(0), index(static_cast<int>(rows_.size()) - 1));
}

const RingModel::Row* RingModel::at(int row) const {
    return row >= 0 && row < rowCount() ? &rows_[static_cast<std::size_t>(row)] : nullptr;
}

int RingModel::row_near(double hz) const {
    int nearest = -1;
    double distance = 1.0 / 12.0;
    for (int i = 0; i < rowCount(); ++i) {
        const double octaves = std::abs(std::log2(at(i)->ring.hz / hz));
        if (octaves > distance) continue;
        distance = octaves;
        nearest = i;
    }
    return nearest;
}

int RingModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QString RingModel::words(const Row& row) const {
    return tr("%1 → %2").arg(name_text(show_, row.ring.strongest_loudspeaker),
                             name_text(show_, row.ring.strongest_input));
}

QVariant RingModel::data(const QModelIndex& index, int role) const {
    const Row* row = at(index.row());
    if (!row) return {};
    const QString drawn = tr("as drawn %1").arg(margin_text(row->ring.margin_db));
    const QString band = tr("band %1").arg(band_text(row->ring.band_hz));
    const QString counted = row->count_on_db ? margin_text(row->count_on_db) : QStringLiteral("–");
    switch (role) {
        case Qt::DisplayRole:
            return QStringLiteral("%1   %2").arg(hz_text(row->ring.hz), note_text(row->ring));
        case kCountOn:
            return counted;
        case kAsDrawn:
            return drawn;
        case kWords:
            return words(*row);
        case kAside:
            return band;
        case kRisk:
            return RiskScale(show_.system.target_margin_db, false).risk(row->count_on_db.value_or(row->ring.margin_db));
        case Qt::ToolTipRole:
            return qstr(report::ring_words(show_, row->ring));
        case Qt::AccessibleTextRole:
            return tr("%1, %2, %3, to count on %4, %5, %6")
                .arg(hz_text(row->ring.hz), note_text(row->ring), band, counted, drawn, words(*row));
        default:
            return {};
    }
}

}  // namespace howlmap::app
