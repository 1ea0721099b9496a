// SPDX-License-Identifier: GPL-3.0-or-later
// The presets that come with the program, as rows under group titles, narrowed by a search text.
#pragma once
#include <QAbstractListModel>
#include <QByteArray>
#include <QList>
#include <QString>
#include <QStringList>

namespace howlmap::app {

struct Part {
    QString id, name, group, symbol, source;
    QStringList keywords;
    QByteArray preset;  ///< JSON object as in the preset files
};

/// All parts of the preset files (resources under :/presets) in their order; name and group in the user's language
/// where the file has them.
QList<Part> load_parts();

class PartList : public QAbstractListModel {
    Q_OBJECT
  public:
    explicit PartList(QList<Part> parts, QObject* parent = nullptr);

    /// Shows the parts in which every word of the text begins some word of name, group or keywords. Empty: all.
    void set_search(const QString& text);
    /// The part in a row; null for a group title.
    const Part* part_at(const QModelIndex& index) const;
    /// What Enter places: the part whose name alone fits the search best, else the first shown.
    QModelIndex best_part() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    QStringList mimeTypes() const override;
    QMimeData* mimeData(const QModelIndexList& indexes) const override;

  private:
    struct Row {
        QString title;  ///< of a group
        qsizetype part = -1;
    };
    void build_rows(const QString& text);

    QList<Part> parts_;
    QList<Row> rows_;
    int best_ = -1;  ///< row, -1: none
};

}  // namespace howlmap::app
