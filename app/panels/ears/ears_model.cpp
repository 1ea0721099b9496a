// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/ears_model.h"

#include <QCoreApplication>
#include <cmath>
#include <utility>

#include "app/panels/numbers.h"
#include "core/listening/exposure.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Ears", text); }
const QString kNone = QStringLiteral("\u2013");
constexpr double kDay = 24.0 * 60.0;

}  // namespace

QString dba_text(std::optional<double> level) { return level ? tr("%1 dBA").arg(number_text(*level, 0)) : kNone; }

QString db_text(std::optional<double> gain) {
    if (!gain) return kNone;
    return tr("%1%2 dB").arg(*gain > 0.05 ? QStringLiteral("+") : QString(), number_text(*gain, 1));
}

QString minutes_text(std::optional<double> minutes) {
    if (!minutes) return kNone;
    if (*minutes > kDay) return tr("over 24 h");
    if (*minutes >= 120.0) return tr("%1 h").arg(number_text(*minutes / 60.0, 1));
    return *minutes < 1.0 ? tr("under 1 min") : tr("%1 min").arg(number_text(*minutes, 0));
}

void PlayersModel::show_result(const Show& show, std::shared_ptr<const AnalysisResult> result) {
    std::vector<Row> rows;
    for (const Performer& performer : show.performers) {
        Row row{QString::fromStdString(performer.id), QString::fromStdString(report::name_of(performer)), {}};
        if (result)
            if (const PerformerFigure* figure = find_by_id(result->performers, performer.id)) row.figure = *figure;
        rows.push_back(std::move(row));
    }
    const bool same = rows.size() == rows_.size();
    if (!same) beginResetModel();
    rows_ = std::move(rows);
    if (!same)
        endResetModel();
    else if (!rows_.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, column_count - 1));
}

void PlayersModel::set_minutes(double minutes) {
    minutes_ = minutes;
    if (!rows_.empty()) Q_EMIT dataChanged(index(0, dose), index(rowCount() - 1, dose));
}

QString PlayersModel::id_at(int row) const {
    return row >= 0 && row < rowCount() ? rows_[static_cast<std::size_t>(row)].id : QString();
}

int PlayersModel::row_of(const QString& id) const {
    for (int row = 0; row < rowCount(); ++row)
        if (id_at(row) == id) return row;
    return -1;
}

int PlayersModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int PlayersModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : column_count; }

QString PlayersModel::text_of(const Row& row, Column column) const {
    const PerformerFigure& f = row.figure;
    switch (column) {
        case player:
            return row.name;
        case own:
            return dba_text(f.own_dba);
        case others:
            return dba_text(f.others_dba);
        case hear_margin:
            return db_text(f.hear_margin_db);
        case ear:
            return dba_text(f.ear_dba);
        case niosh:
            return minutes_text(f.niosh_minutes);
        case osha:
            return minutes_text(f.osha_minutes);
        case dose:
            return f.ear_dba ? tr("%1 %").arg(number_text(niosh_dose_pct(*f.ear_dba, minutes_), 0)) : kNone;
        case column_count:
            break;
    }
    return {};
}

QVariant PlayersModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (index.column() == player ? Qt::AlignLeft : Qt::AlignRight));
    if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
    return text_of(rows_[static_cast<std::size_t>(index.row())], static_cast<Column>(index.column()));
}

QVariant PlayersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::ToolTipRole)
        return section >= niosh ? tr("An estimate for planning, not a measurement of hearing safety") : QVariant();
    if (role != Qt::DisplayRole) return {};
    const QStringList titles{tr("Player"),     tr("Own"),          tr("Others"),      tr("Hear margin"),
                             tr("At the ear"), tr("NIOSH allows"), tr("OSHA allows"), tr("Dose of the set")};
    return titles.value(section);
}

void HouseModel::show_rows(std::vector<Row> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

int HouseModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int HouseModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 4; }

QVariant HouseModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::EditRole && role != Qt::ToolTipRole)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    switch (index.column()) {
        case 0:
            return row.name;
        case 1:
            return dba_text(row.figure.wash_dba);
        case 2:
            return db_text(row.figure.against_target_db);
        default:
            return row.makers;
    }
}

QVariant HouseModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    return QStringList{tr("Place in the house"), tr("Stage wash"), tr("Against target"), tr("Made by")}.value(section);
}

}  // namespace howlmap::app
