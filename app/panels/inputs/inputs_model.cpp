// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inputs/inputs_model.h"

#include <QIODevice>
#include <QMimeData>
#include <algorithm>

#include "app/panels/table_clipboard.h"
#include "core/show/edits.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

const QString kRowType = QStringLiteral("application/x-howlmap-input-row");

QStringList ids_by_channel(const Show& show) {
    std::vector<const Input*> inputs;
    for (const Input& input : show.inputs) inputs.push_back(&input);
    std::stable_sort(inputs.begin(), inputs.end(), [](auto a, auto b) { return a->channel < b->channel; });
    QStringList ids;
    for (const Input* input : inputs) ids.append(QString::fromStdString(input->id));
    return ids;
}

bool is_flag(int column) { return column == InputsModel::phantom || column == InputsModel::di; }

Input& new_line_input(Show& show) {
    Input input;
    input.id = fresh_id(show, "line");
    input.channel = free_channel(show);
    input.transducer = Line{};
    input.has_position = false;
    show.inputs.push_back(input);
    return show.inputs.back();
}

}  // namespace

InputsModel::InputsModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
    ids_ = ids_by_channel(document.show());
    connect(&document, &Document::changed, this, &InputsModel::refresh);
    connect(&document, &Document::replaced, this, &InputsModel::refresh);
}

void InputsModel::refresh() {
    const QStringList ids = ids_by_channel(document_.show());
    if (ids == ids_) {
        if (!ids_.isEmpty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, column_count - 1));
        return;
    }
    beginResetModel();
    ids_ = ids;
    endResetModel();
}

int InputsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ids_.size());
}

int InputsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : column_count; }

QString InputsModel::id_at(int row) const { return row >= 0 && row < ids_.size() ? ids_[row] : QString(); }

int InputsModel::row_of(const QString& id) const { return static_cast<int>(ids_.indexOf(id)); }

QVariant InputsModel::data(const QModelIndex& index, int role) const {
    const Input* input = find_by_id(document_.show().inputs, id_at(index.row()).toStdString());
    if (!input) return {};
    const auto column = static_cast<Column>(index.column());
    if (is_flag(column)) {
        if (role == Qt::CheckStateRole)
            return (column == phantom ? input->phantom : input->di) ? Qt::Checked : Qt::Unchecked;
        if (role == Qt::DisplayRole) return QString();
    }
    if (role == Qt::DisplayRole || role == Qt::EditRole || role == Qt::AccessibleTextRole)
        return input_cell(document_.show(), *input, column);
    return {};
}

QVariant InputsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    const QStringList titles{tr("Ch"),   tr("Name"), tr("Transducer"), tr("Player"), tr("Stand"),
                             tr("48 V"), tr("DI"),   tr("Polarity"),   tr("Notes")};
    return titles.value(section);
}

Qt::ItemFlags InputsModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::ItemIsDropEnabled;
    Qt::ItemFlags flags = Qt::ItemIsSelectable | Qt::ItemIsEnabled | Qt::ItemIsDragEnabled;
    flags |= is_flag(index.column()) ? Qt::ItemIsUserCheckable : Qt::ItemIsEditable;
    return flags;
}

bool InputsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const std::string id = id_at(index.row()).toStdString();
    const auto column = static_cast<Column>(index.column());
    QString text = value.toString();
    if (role == Qt::CheckStateRole)
        text = value.toInt() == Qt::Checked ? QStringLiteral("yes") : QString();
    else if (role != Qt::EditRole)
        return false;
    QString trouble;
    document_.edit(tr("Edit input list"), [&](Show& show) {
        if (Input* input = find_by_id(show.inputs, id)) trouble = set_input_cell(show, *input, column, text);
    });
    return trouble.isEmpty();
}

QStringList InputsModel::mimeTypes() const { return {kRowType}; }

QMimeData* InputsModel::mimeData(const QModelIndexList& indexes) const {
    auto* data = new QMimeData;
    if (!indexes.isEmpty()) data->setData(kRowType, QByteArray::number(indexes.first().row()));
    return data;
}

bool InputsModel::dropMimeData(const QMimeData* data, Qt::DropAction, int row, int, const QModelIndex& parent) {
    if (!data->hasFormat(kRowType)) return false;
    const int from = data->data(kRowType).toInt();
    int to = row >= 0 ? row : parent.isValid() ? parent.row() : rowCount();
    if (to > from) --to;
    move_row(from, to);
    return false;  // the view must not remove the row that was dragged: it has moved already
}

bool InputsModel::move_row(int from, int to) {
    if (from < 0 || from >= rowCount()) return false;
    QStringList order = ids_;
    order.move(from, std::clamp(to, 0, rowCount() - 1));
    if (order == ids_) return false;
    return document_.edit(tr("Reorder inputs"), [&](Show& show) {
        std::vector<int> channels;
        for (const QString& id : std::as_const(ids_))
            channels.push_back(find_by_id(show.inputs, id.toStdString())->channel);
        for (int i = 0; i < order.size(); ++i)
            find_by_id(show.inputs, order[i].toStdString())->channel = channels[static_cast<std::size_t>(i)];
    });
}

/// The input that each pasted row belongs to, empty for a new one: by channel where that is told, else from the row on.
QStringList InputsModel::ids_for(const PastedRows& pasted, int first_row) const {
    const auto channel_cell = pasted.titled ? pasted.columns.indexOf(int(channel)) : -1;
    QStringList ids, left = ids_;
    for (const QStringList& cells : pasted.rows) {
        if (channel_cell < 0) {
            ids.append(id_at(first_row + static_cast<int>(ids.size())));
            continue;
        }
        const auto found = std::find_if(left.begin(), left.end(), [&](const QString& id) {
            return index(row_of(id), channel).data(Qt::EditRole).toString() == cells.value(channel_cell).trimmed();
        });
        ids.append(found == left.end() ? QString() : *found);
        if (found != left.end()) left.erase(found);
    }
    return ids;
}

QStringList InputsModel::paste(const QModelIndex& top_left, const QString& text) {
    constexpr int kLeastTitles = 2;  // one word alone may be a name
    QStringList troubles;
    const int first_row = top_left.isValid() ? top_left.row() : rowCount();
    const PastedRows pasted = pasted_rows(*this, text, std::max(top_left.column(), 0), kLeastTitles);
    const QStringList ids = ids_for(pasted, first_row);
    document_.edit(tr("Paste into input list"), [&](Show& show) {
        for (qsizetype r = 0; r < ids.size(); ++r) {
            Input& input = ids[r].isEmpty() ? new_line_input(show) : *find_by_id(show.inputs, ids[r].toStdString());
            const qsizetype row = ids[r].isEmpty() ? first_row + r : row_of(ids[r]);
            for (qsizetype c = 0; c < pasted.rows[r].size(); ++c) {
                const int column = pasted.columns.value(c, -1);
                if (column < 0) continue;
                const QString trouble = set_input_cell(show, input, static_cast<Column>(column), pasted.rows[r][c]);
                if (!trouble.isEmpty()) troubles.append(tr("row %1: %2").arg(row + 1).arg(trouble));
            }
        }
    });
    return troubles;
}

}  // namespace howlmap::app
