// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/mixes/sends_model.h"

#include <QLocale>
#include <algorithm>
#include <cmath>
#include <map>

#include "app/panels/numbers.h"
#include "app/panels/table_clipboard.h"
#include "app/settings/figures.h"
#include "core/listening/ears.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/show/limits.h"
#include "core/units/level.h"

namespace howlmap::app {
namespace {

template <class List, class Key>
QStringList ids_by(const List& list, Key key) {
    std::vector<std::pair<int, QString>> order;
    for (const auto& item : list) order.emplace_back(key(item), QString::fromStdString(item.id));
    std::stable_sort(order.begin(), order.end(), [](auto& a, auto& b) { return a.first < b.first; });
    QStringList ids;
    for (const auto& entry : order) ids.append(entry.second);
    return ids;
}

const Performer* listener_of(const Show& show, const std::string& mix) {
    for (const Performer& performer : show.performers)
        if (performer.mix == mix && performer.hears != Hears::acoustic) return &performer;
    return nullptr;
}

}  // namespace

EarLevels ear_levels_of_sends(const Show& show) {
    const ChainEnergies chains(show);
    std::map<QPair<QString, QString>, double> energies;
    for (const Mix& mix : show.mixes) {
        const Performer* performer = listener_of(show, mix.id);
        if (!performer) continue;
        const int number = index_by_id(show.mixes, mix.id);
        for (const EarSource& source : sources_at_ear(show, chains, *performer))
            if (source.kind == SourceKind::send && source.mix == number)
                energies[{QString::fromStdString(mix.id),
                          QString::fromStdString(mix.sends[static_cast<std::size_t>(source.send)].input)}] +=
                    source.weighted();
    }
    EarLevels levels;
    for (const auto& [key, energy] : energies)
        if (energy > 0.0) levels.insert(key, energy_to_db(energy));
    return levels;
}

SendsModel::SendsModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
    refresh();
    connect(&document, &Document::changed, this, &SendsModel::refresh);
    connect(&document, &Document::replaced, this, &SendsModel::refresh);
}

void SendsModel::refresh() {
    const Show& show = document_.show();
    const QStringList inputs = ids_by(show.inputs, [](const Input& input) { return input.channel; });
    const QStringList mixes = ids_by(show.mixes, [](const Mix& mix) { return mix.number; });
    if (inputs != inputs_ || mixes != mixes_) {
        beginResetModel();
        inputs_ = inputs;
        mixes_ = mixes;
        endResetModel();
    } else if (!inputs_.isEmpty() && !mixes_.isEmpty()) {
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
        Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
    }
    measure_ears();
}

void SendsModel::set_awake(bool awake) {
    awake_ = awake;
    if (awake_ && stale_) measure_ears();
}

namespace {
/// What each send gains on its way to the ear, dB: the same whatever its level, so that a fader needs no new figures.
EarLevels ear_gains_of_sends(const Show& show) {
    EarLevels gains = ear_levels_of_sends(show);
    for (auto one = gains.begin(); one != gains.end(); ++one) {
        const Mix* mix = find_by_id(show.mixes, one.key().first.toStdString());
        *one -= find_send(*mix, one.key().second.toStdString())->level_db;
    }
    return gains;
}
}  // namespace

void SendsModel::measure_ears() {
    stale_ = !awake_;
    if (stale_) return;
    worker_.run([this, show = document_.show()](const Job&) -> Worker::Deliver {
        return [this, gains = ear_gains_of_sends(show)] {
            ear_gains_ = gains;
            if (!inputs_.isEmpty() && !mixes_.isEmpty())
                Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
            Q_EMIT ears_updated();
        };
    });
}

int SendsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(inputs_.size());
}

int SendsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(mixes_.size());
}

QModelIndex SendsModel::cell_of(const QString& mix, const QString& input) const {
    return index(static_cast<int>(inputs_.indexOf(input)), static_cast<int>(mixes_.indexOf(mix)));
}

std::optional<double> SendsModel::level(const QModelIndex& cell) const {
    const Mix* mix = find_by_id(document_.show().mixes, mix_at(cell.column()).toStdString());
    const Send* send = mix ? find_send(*mix, input_at(cell.row()).toStdString()) : nullptr;
    if (!send) return std::nullopt;
    return send->level_db;
}

std::optional<double> SendsModel::ear_level(const QModelIndex& cell) const {
    const auto found = ear_gains_.constFind({mix_at(cell.column()), input_at(cell.row())});
    const auto now = level(cell);
    if (found == ear_gains_.constEnd() || !now) return std::nullopt;
    return *now + *found;
}

QString SendsModel::listener(int column) const {
    const Performer* performer = listener_of(document_.show(), mix_at(column).toStdString());
    return performer ? QString::fromStdString(report::name_of(*performer)) : QString();
}

QVariant SendsModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::TextAlignmentRole) return int(Qt::AlignRight | Qt::AlignVCenter);
    if (role != Qt::DisplayRole && role != Qt::EditRole && role != Qt::ToolTipRole && role != Qt::AccessibleTextRole)
        return {};
    const auto at_1m = level(index);
    if (!at_1m) return QString();
    const QString value = number_text(*at_1m, 1);
    if (role == Qt::EditRole) return value;
    const auto at_ear = ear_level(index);
    if (role == Qt::DisplayRole)
        return at_ear ? QStringLiteral("%1 \u2192 %2").arg(value, number_text(*at_ear, 0)) : value;
    return at_ear ? tr("%1 dB at 1 m makes %2 dBA at the ear of %3 (estimate)")
                        .arg(value, number_text(*at_ear, 0), listener(index.column()))
                  : tr("%1 dB at 1 m; nobody hears this mix").arg(value);
}

QVariant SendsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const Show& show = document_.show();
    if (orientation == Qt::Vertical) {
        const Input* input = find_by_id(show.inputs, input_at(section).toStdString());
        return input ? QStringLiteral("%1  %2").arg(input->channel).arg(QString::fromStdString(report::name_of(*input)))
                     : QString();
    }
    const Mix* mix = find_by_id(show.mixes, mix_at(section).toStdString());
    if (!mix) return {};
    const QString title = QStringLiteral("%1  %2").arg(mix->number).arg(QString::fromStdString(report::name_of(*mix)));
    if (role == Qt::DisplayRole) return title;
    const QString who = listener(section);
    return who.isEmpty() ? tr("%1: nobody hears it").arg(title) : tr("%1, for %2").arg(title, who);
}

Qt::ItemFlags SendsModel::flags(const QModelIndex&) const {
    return Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsEditable;
}

bool SendsModel::set_level(Show& show, const QModelIndex& cell, std::optional<double> level) const {
    Mix* mix = find_by_id(show.mixes, mix_at(cell.column()).toStdString());
    const std::string input = input_at(cell.row()).toStdString();
    if (!mix || input.empty()) return false;
    if (!level) {
        std::erase_if(mix->sends, [&](const Send& send) { return send.input == input; });
        return true;
    }
    if (!limits::kLevel.holds(*level)) return false;
    if (Send* send = find_send(*mix, input))
        send->level_db = *level;
    else
        mix->sends.push_back({input, *level, {}});
    return true;
}

bool SendsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole) return false;
    const QString text = value.toString().trimmed();
    if (text == index.data(Qt::EditRole).toString()) return true;  // looked at, and left as exact as it was
    const auto level = number_of(text);
    if (!text.isEmpty() && !level) {
        Q_EMIT trouble(tr("\"%1\" cannot be read as a level in dB").arg(text));
        return false;
    }
    if (level && !limits::kLevel.holds(*level)) {
        Q_EMIT trouble(tr("A send has %1 to %2 dB at 1 m, not %3. Nothing was changed.")
                           .arg(limits::kLevel.low)
                           .arg(limits::kLevel.high)
                           .arg(number_text(*level, 1)));
        return false;
    }
    bool ok = false;
    document_.edit(text.isEmpty() ? tr("Take out send") : tr("Set send"),
                   [&](Show& show) { ok = set_level(show, index, level); });
    return ok;
}

bool SendsModel::set_for_ear(const QModelIndex& cell, double ear_dba) {
    const auto now = level(cell), ear = ear_level(cell);
    if (!now || !ear) return false;
    // Levels at the ear are linear in the energy of the send, so a difference in dB there is the same difference here.
    const double wanted = std::round((*now + ear_dba - *ear) * 10.0) / 10.0;
    if (!limits::kLevel.holds(wanted)) {
        Q_EMIT trouble(tr("%1 dBA at the ear would take %2 dB at 1 m; a send has %3 to %4 dB. Nothing was changed.")
                           .arg(number_text(ear_dba, 1), number_text(wanted, 1))
                           .arg(limits::kLevel.low)
                           .arg(limits::kLevel.high));
        return false;
    }
    bool ok = false;
    document_.edit(tr("Set send for an ear level"), [&](Show& show) { ok = set_level(show, cell, wanted); });
    return ok;
}

bool SendsModel::move_mix(int from, int to) {
    if (from < 0 || from >= columnCount()) return false;
    QStringList order = mixes_;
    order.move(from, std::clamp(to, 0, columnCount() - 1));
    if (order == mixes_) return false;
    return document_.edit(tr("Reorder mixes"), [&](Show& show) {
        std::vector<int> numbers;
        for (const QString& id : std::as_const(mixes_))
            numbers.push_back(find_by_id(show.mixes, id.toStdString())->number);
        for (int i = 0; i < order.size(); ++i)
            find_by_id(show.mixes, order[i].toStdString())->number = numbers[static_cast<std::size_t>(i)];
    });
}

/// The cell that a pasted one belongs to: where titles stand beside the rows or above the columns, by those.
QModelIndex SendsModel::pasted_cell(const PastedRows& pasted, qsizetype row, qsizetype cell, int first_row) const {
    const int column = pasted.columns.value(cell, -1);
    if (pasted.cell_of_title < 0) return index(first_row + static_cast<int>(row), column);
    const QString title = pasted.rows[row].value(pasted.cell_of_title);
    for (int r = 0; r < rowCount(); ++r)
        if (headerData(r, Qt::Vertical, Qt::DisplayRole).toString() == title) return index(r, column);
    return {};
}

bool SendsModel::paste_cell(Show& show, const QModelIndex& cell, const QString& text) const {
    if (!cell.isValid()) return false;
    if (text == cell.data(Qt::EditRole).toString()) return true;
    const auto level = number_of(text);
    return (text.isEmpty() || level) && set_level(show, cell, level);
}

QStringList SendsModel::paste(const QModelIndex& top_left, const QString& text) {
    constexpr int kLeastTitles = 1;  // no level looks like the title of a mix
    const PastedRows pasted = pasted_rows(*this, text, std::max(top_left.column(), 0), kLeastTitles);
    if (!top_left.isValid() && !pasted.titled) return {tr("Mark the cell where the first value goes.")};
    QStringList troubles;
    document_.edit(tr("Paste sends"), [&](Show& show) {
        for (qsizetype r = 0; r < pasted.rows.size(); ++r)
            for (qsizetype c = 0; c < pasted.rows[r].size(); ++c) {
                if (c == pasted.cell_of_title) continue;
                const QString value = pasted.rows[r][c].trimmed();
                const QModelIndex cell = pasted_cell(pasted, r, c, std::max(top_left.row(), 0));
                if (!paste_cell(show, cell, value))
                    troubles.append(tr("\"%1\": expected a level from -60 to 160 dB inside the table").arg(value));
            }
    });
    return troubles;
}

}  // namespace howlmap::app
