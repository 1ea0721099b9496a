// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/ears_model.h"

#include <cmath>
#include <utility>

#include "app/document/document.h"
#include "app/panels/ears/ears_words.h"
#include "app/panels/numbers.h"
#include "core/listening/exposure.h"
#include "core/report/words.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

const QString kNone = QStringLiteral("\u2013");

}  // namespace

PlayersModel::PlayersModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {}

QStringList PlayersModel::ways_of_hearing() { return {tr("loudspeakers"), tr("in-ears"), tr("no monitor")}; }

void PlayersModel::show_result(const Show& show, std::shared_ptr<const AnalysisResult> result) {
    std::vector<Row> rows;
    for (const Performer& performer : show.performers) {
        Row row{QString::fromStdString(performer.id),
                QString::fromStdString(report::name_of(performer)),
                performer.hears,
                {}};
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
        case hears:
            return ways_of_hearing().value(static_cast<int>(row.hears));
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
        return int(Qt::AlignVCenter | (index.column() <= hears ? Qt::AlignLeft : Qt::AlignRight));
    if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
    return text_of(rows_[static_cast<std::size_t>(index.row())], static_cast<Column>(index.column()));
}

QVariant PlayersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::ToolTipRole && section >= niosh)
        return tr("An estimate for planning, not a measurement of hearing safety");
    if (role == Qt::ToolTipRole && section == hears)
        return tr("How this player hears; choose with a double click or F2");
    if (role != Qt::DisplayRole) return {};
    const QStringList titles{tr("Player"), tr("Hears by"), tr("Own"),  tr("Others"),     tr("Hear margin"),
                             tr("At ear"), tr("NIOSH"),    tr("OSHA"), tr("Dose of set")};
    return titles.value(section);
}

Qt::ItemFlags PlayersModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags usual = QAbstractTableModel::flags(index);
    return index.column() == hears ? usual | Qt::ItemIsEditable : usual;
}

bool PlayersModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const auto way = ways_of_hearing().indexOf(value.toString());
    if (role != Qt::EditRole || index.column() != hears || way < 0) return false;
    const Row row = rows_[static_cast<std::size_t>(index.row())];
    return document_.edit(tr("Change how %1 hears").arg(row.name), [&](Show& show) {
        if (Performer* performer = find_by_id(show.performers, row.id.toStdString()))
            performer->hears = static_cast<Hears>(way);
    });
}

}  // namespace howlmap::app
