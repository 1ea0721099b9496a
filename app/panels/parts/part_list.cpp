// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/parts/part_list.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFont>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QMimeData>
#include <QPalette>
#include <algorithm>
#include <utility>

#include "app/canvas/preset_part.h"

namespace howlmap::app {
namespace {

Part part_of(const QJsonObject& preset) {
    const QString language = QLocale().name().section(QLatin1Char('_'), 0, 0);
    const auto text = [&](const QString& key) { return preset.value(key).toString(); };
    const auto in_language = [&](const QString& key) {
        const QString words = text(key + QLatin1Char('_') + language);
        return words.isEmpty() ? text(key) : words;
    };
    Part part;
    part.id = text(QStringLiteral("id"));
    part.name = in_language(QStringLiteral("name"));
    part.group = in_language(QStringLiteral("group"));
    part.symbol = text(QStringLiteral("symbol"));
    part.source = text(QStringLiteral("source"));
    for (const QJsonValue& word : preset.value(QStringLiteral("keywords")).toArray())
        part.keywords.append(word.toString());
    part.preset = QJsonDocument(preset).toJson(QJsonDocument::Compact);
    return part;
}

QStringList words_of(const QString& text) { return text.toLower().split(QLatin1Char(' '), Qt::SkipEmptyParts); }

/// Whether each wanted word begins one of the words of a text.
bool begins_words(const QString& text, const QStringList& wanted) {
    const QStringList have = words_of(text);
    return std::all_of(wanted.begin(), wanted.end(), [&](const QString& word) {
        return std::any_of(have.begin(), have.end(),
                           [&](const QString& candidate) { return candidate.startsWith(word); });
    });
}

bool matches(const Part& part, const QStringList& wanted) {
    return begins_words(
        part.name + QLatin1Char(' ') + part.group + QLatin1Char(' ') + part.keywords.join(QLatin1Char(' ')), wanted);
}

/// How well a name alone fits a search: 2 it begins with it, 1 has all its words, 0 does not.
int fit_of(const Part& part, const QString& text) {
    if (part.name.startsWith(text.trimmed(), Qt::CaseInsensitive)) return 2;
    return begins_words(part.name, words_of(text)) ? 1 : 0;
}

}  // namespace

QList<Part> load_parts() {
    // The order in which a stage is drawn: what plays, what hears, who, then the rest.
    static const QStringList families{QStringLiteral("instruments"),  QStringLiteral("microphones"),
                                      QStringLiteral("loudspeakers"), QStringLiteral("people"),
                                      QStringLiteral("backline"),     QStringLiteral("stage"),
                                      QStringLiteral("marks")};
    QList<Part> parts;
    for (const QString& family : families) {
        QFile file(QStringLiteral(":/presets/%1.json").arg(family));
        if (!file.open(QIODevice::ReadOnly)) continue;
        const QJsonObject root = QJsonDocument::fromJson(file.readAll()).object();
        for (const QJsonValue& preset : root.value(QStringLiteral("presets")).toArray())
            parts.append(part_of(preset.toObject()));
    }
    return parts;
}

PartList::PartList(QList<Part> parts, QObject* parent) : QAbstractListModel(parent), parts_(std::move(parts)) {
    build_rows({});
}

void PartList::set_search(const QString& text) {
    beginResetModel();
    build_rows(text);
    endResetModel();
}

void PartList::build_rows(const QString& text) {
    const QStringList wanted = words_of(text);
    rows_.clear();
    best_ = -1;
    int best_fit = 0;
    QString group;
    for (qsizetype i = 0; i < parts_.size(); ++i) {
        if (!matches(parts_[i], wanted)) continue;
        if (parts_[i].group != group) rows_.append({group = parts_[i].group, -1});
        if (const int fit = fit_of(parts_[i], text); fit > best_fit) {
            best_fit = fit;
            best_ = static_cast<int>(rows_.size());
        }
        rows_.append({{}, i});
    }
}

const Part* PartList::part_at(const QModelIndex& index) const {
    if (!index.isValid() || index.row() >= rows_.size() || rows_[index.row()].part < 0) return nullptr;
    return &parts_[rows_[index.row()].part];
}

QModelIndex PartList::best_part() const {
    if (best_ >= 0) return index(best_);
    for (int row = 0; row < rows_.size(); ++row)
        if (rows_[row].part >= 0) return index(row);
    return {};
}

int PartList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

QVariant PartList::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rows_.size()) return {};
    const Part* part = part_at(index);
    if (!part) {
        if (role == Qt::DisplayRole) return rows_[index.row()].title;
        if (role == Qt::FontRole) {
            QFont font = QApplication::font();
            font.setBold(true);
            return font;
        }
        return {};
    }
    switch (role) {
        case Qt::DisplayRole:
            return part->name;
        case Qt::AccessibleTextRole:
            return tr("%1, %2").arg(part->name, part->group);
        case Qt::ToolTipRole:
            return tr("%1\nFigures: %2\nDrag onto the plan, or press Enter to place it in the middle.")
                .arg(part->name, part->source);
        default:
            return {};
    }
}

Qt::ItemFlags PartList::flags(const QModelIndex& index) const {
    if (!part_at(index)) return Qt::ItemIsEnabled;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled;
}

QStringList PartList::mimeTypes() const { return {preset_mime_type()}; }

QMimeData* PartList::mimeData(const QModelIndexList& indexes) const {
    const Part* part = indexes.isEmpty() ? nullptr : part_at(indexes.first());
    if (!part) return nullptr;
    auto* data = new QMimeData;
    data->setData(preset_mime_type(), part->preset);
    data->setText(part->name);
    return data;
}

}  // namespace howlmap::app
