// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/ears/ears_model.h"

#include <cmath>
#include <utility>

#include "app/document/document.h"
#include "app/panels/ears/ears_words.h"
#include "app/panels/numbers.h"
#include "app/settings/figures.h"
#include "core/listening/exposure.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/show/limits.h"

namespace howlmap::app {
namespace {

const QString kNone = QStringLiteral("\u2013");

}  // namespace

PlayersModel::PlayersModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {}

QStringList PlayersModel::ways_of_hearing() { return {tr("loudspeakers"), tr("in-ears"), tr("no monitor")}; }

void PlayersModel::show_result(const Show& show, const std::shared_ptr<const AnalysisResult>& result) {
    std::vector<Row> rows;
    for (const Performer& performer : show.performers) {
        Row row{QString::fromStdString(performer.id),
                QString::fromStdString(report::name_of(performer)),
                performer.hears,
                performer.seal_db,
                performer.own_acoustic_dba,
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
        case seal:
            return row.hears == Hears::in_ear ? tr("%1 dB").arg(number_text(row.seal_db, 1)) : kNone;
        case acoustic:
            return dba_text(row.acoustic_dba);
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
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::EditRole && index.column() == seal) return number_text(row.seal_db, 1);
    if (role == Qt::EditRole && index.column() == acoustic)
        return row.acoustic_dba ? number_text(*row.acoustic_dba, 1) : QString();
    if (role != Qt::DisplayRole && role != Qt::EditRole) return {};
    return text_of(row, static_cast<Column>(index.column()));
}

QString PlayersModel::tip_of(Column column) {
    switch (column) {
        case hears:
            return tr("How this player hears; choose with a double click or F2");
        case seal:
            return tr("How much the in-ears keep out; type it after a double click or F2");
        case acoustic:
            return tr("Her instrument or voice itself at her ear in loud playing; type it, empty for none");
        case own:
            return tr("Her own sound at her ears: what her sends play and the instrument itself");
        case others:
            return tr("Everything else at her ears");
        case hear_margin:
            return tr("Own less others: at 0 dB she is just as loud at her ears as all others together");
        case ear:
            return tr("Own and others together at her ears");
        case niosh:
        case osha:
            return tr(
                "How long she may stay at that in a day; an estimate for planning, not a measurement of hearing "
                "safety");
        case dose:
            return tr(
                "What the set takes of the NIOSH dose of a day; an estimate for planning, not a measurement of "
                "hearing safety");
        default:
            return {};
    }
}

QVariant PlayersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::ToolTipRole) return tip_of(static_cast<Column>(section));
    if (role != Qt::DisplayRole) return {};
    const QStringList titles{tr("Player"), tr("Hears by"), tr("Own"),  tr("Others"), tr("Hear margin"), tr("At ear"),
                             tr("NIOSH"),  tr("OSHA"),     tr("Dose"), tr("Seal"),   tr("Own acoustic")};
    return titles.value(section);
}

Qt::ItemFlags PlayersModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags usual = QAbstractTableModel::flags(index);
    const bool sealed = index.isValid() && rows_[static_cast<std::size_t>(index.row())].hears == Hears::in_ear;
    const bool editable = index.column() == hears || index.column() == acoustic || (index.column() == seal && sealed);
    return editable ? usual | Qt::ItemIsEditable : usual;
}

bool PlayersModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable)) return false;
    const Row row = rows_[static_cast<std::size_t>(index.row())];
    const QString text = value.toString().trimmed();
    return index.column() == hears  ? set_hears(row, text)
           : index.column() == seal ? set_seal(row, text)
                                    : set_acoustic(row, text);
}

bool PlayersModel::set_hears(const Row& row, const QString& text) {
    const auto way = ways_of_hearing().indexOf(text);
    if (way < 0) return false;
    return edit(row, tr("Change how %1 hears").arg(row.name),
                [way](Performer& performer) { performer.hears = static_cast<Hears>(way); });
}

bool PlayersModel::set_seal(const Row& row, const QString& text) {
    const auto db = number_of(text);
    if (!db || !limits::kGain.holds(*db)) {
        Q_EMIT refused(
            tr("\"%1\": expected decibels from %2 to %3").arg(text).arg(limits::kGain.low).arg(limits::kGain.high));
        return false;
    }
    return edit(row, tr("Change the seal of %1").arg(row.name),
                [db](Performer& performer) { performer.seal_db = *db; });
}

bool PlayersModel::set_acoustic(const Row& row, const QString& text) {
    const auto dba = number_of(text);
    if (!text.isEmpty() && (!dba || !limits::kLevel.holds(*dba))) {
        Q_EMIT refused(tr("\"%1\": expected dBA from %2 to %3, or nothing")
                           .arg(text)
                           .arg(limits::kLevel.low)
                           .arg(limits::kLevel.high));
        return false;
    }
    return edit(row, tr("Change the acoustic sound of %1").arg(row.name),
                [&](Performer& performer) { performer.own_acoustic_dba = text.isEmpty() ? std::nullopt : dba; });
}

bool PlayersModel::edit(const Row& row, const QString& step, const std::function<void(Performer&)>& what) {
    return document_.edit(step, [&](Show& show) {
        if (Performer* performer = find_by_id(show.performers, row.id.toStdString())) what(*performer);
    });
}

}  // namespace howlmap::app
