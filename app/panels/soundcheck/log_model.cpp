// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/log_model.h"

#include <set>

#include "app/panels/numbers.h"
#include "app/panels/soundcheck/log_edits.h"
#include "app/settings/figures.h"
#include "core/report/words.h"
#include "core/show/limits.h"
#include "core/units/bands.h"

namespace howlmap::app {
namespace {

template <class List>
QStringList names_in(const List& list) {
    QStringList names{QString()};
    for (const auto& item : list) names.append(qstr(report::name_of(item)));
    return names;
}

/// Id of the item with this name (or id), the empty text for nobody; none if there is no such item.
template <class List>
std::optional<std::string> id_named(const List& list, const QString& name) {
    if (name.trimmed().isEmpty()) return std::string();
    for (const auto& item : list)
        if (qstr(report::name_of(item)) == name.trimmed() || qstr(item.id) == name.trimmed()) return item.id;
    return std::nullopt;
}

double band_of_hz(double hz) { return kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(hz))]; }

bool set_number(const QString& text, const Range& range, double& value) {
    const auto number = number_of(text);
    if (!number || *number < range.low || *number > range.high) return false;
    value = *number;
    return true;
}

bool set_cell(const Show& show, SoundcheckEntry& entry, int column, const QString& text) {
    switch (column) {
        case LogModel::time:
            entry.time = text.toStdString();
            return true;
        case LogModel::hz:
            if (!set_number(text, limits::kHz, entry.hz)) return false;
            entry.band = band_of_hz(entry.hz);
            return true;
        case LogModel::band: {
            double hz = 0.0;
            if (!set_number(text, limits::kHz, hz)) return false;
            entry.band = band_of_hz(hz);
            return true;
        }
        case LogModel::input:
            if (const auto id = id_named(show.inputs, text)) return entry.input = *id, true;
            return false;
        case LogModel::mix:
            if (const auto id = id_named(show.mixes, text)) return entry.mix = *id, true;
            return false;
        case LogModel::action:
            entry.action = text.toStdString();
            return true;
        case LogModel::gain:
            return set_number(text, limits::kGain, entry.gain_db);
        default:
            entry.note = text.toStdString();
            return true;
    }
}

}  // namespace

LogModel::LogModel(Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document), rows_(static_cast<int>(document.show().soundcheck.size())) {
    connect(&document, &Document::changed, this, &LogModel::refresh);
    connect(&document, &Document::replaced, this, &LogModel::refresh);
}

void LogModel::refresh() {
    const int rows = static_cast<int>(document_.show().soundcheck.size());
    if (rows == rows_) {
        if (rows > 0) Q_EMIT dataChanged(index(0, 0), index(rows - 1, column_count - 1));
        return;
    }
    beginResetModel();
    rows_ = rows;
    endResetModel();
}

int LogModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }
int LogModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : column_count; }
QStringList LogModel::input_names() const { return names_in(document_.show().inputs); }
QStringList LogModel::mix_names() const { return names_in(document_.show().mixes); }

QVariant LogModel::data(const QModelIndex& index, int role) const {
    const auto& log = document_.show().soundcheck;
    const auto row = static_cast<std::size_t>(index.row());
    if (!index.isValid() || row >= log.size()) return {};
    if (role != Qt::DisplayRole && role != Qt::EditRole && role != Qt::AccessibleTextRole) return {};
    const SoundcheckEntry& entry = log[row];
    const bool edit = role == Qt::EditRole;
    switch (index.column()) {
        case time:
            return qstr(entry.time);
        case hz:
            return edit ? number_text(entry.hz, 1) : hz_text(entry.hz);
        case band:
            return edit ? number_text(entry.band, 1) : band_text(entry.band);
        case input:
            return entry.input.empty() ? QString() : name_text(document_.show(), entry.input);
        case mix:
            return entry.mix.empty() ? QString() : name_text(document_.show(), entry.mix);
        case action:
            return qstr(entry.action);
        case gain:
            return edit ? number_text(entry.gain_db, 1) : gain_text(entry.gain_db);
        default:
            return qstr(entry.note);
    }
}

QVariant LogModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const QStringList titles{tr("Time"), tr("Frequency"), tr("Band"), tr("Input"),
                             tr("Mix"),  tr("Action"),    tr("Gain"), tr("Note")};
    return titles.value(section);
}

Qt::ItemFlags LogModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsEditable : Qt::NoItemFlags;
}

bool LogModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const auto row = static_cast<std::size_t>(index.row());
    if (role != Qt::EditRole || !index.isValid() || row >= document_.show().soundcheck.size()) return false;
    const QString text = value.toString();
    if (text == data(index, Qt::EditRole).toString()) return true;
    SoundcheckEntry entry = document_.show().soundcheck[row];
    if (!set_cell(document_.show(), entry, index.column(), text)) {
        Q_EMIT refused(tr("%1 cannot be \"%2\".")
                           .arg(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(), text));
        return false;
    }
    document_.edit(tr("Edit log"), [&](Show& show) { show.soundcheck[row] = entry; });
    return true;
}

void LogModel::add() {
    document_.edit(tr("Add to log"), [](Show& show) {
        SoundcheckEntry entry;
        entry.time = log_time().toStdString();
        show.soundcheck.push_back(entry);
    });
}

void LogModel::remove(const QModelIndexList& cells) {
    std::set<std::size_t, std::greater<>> rows;
    for (const QModelIndex& cell : cells) rows.insert(static_cast<std::size_t>(cell.row()));
    if (rows.empty()) return;
    document_.edit(tr("Remove from log"), [&](Show& show) {
        for (const std::size_t row : rows)
            if (row < show.soundcheck.size())
                show.soundcheck.erase(show.soundcheck.begin() + static_cast<std::ptrdiff_t>(row));
    });
}

}  // namespace howlmap::app
