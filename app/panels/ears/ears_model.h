// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of what players hear and of what reaches the house, from the last analysis.
#pragma once
#include <QAbstractTableModel>
#include <memory>

#include "core/analysis/analysis.h"
#include "core/show/show.h"

namespace howlmap::app {

class PlayersModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { player, own, others, hear_margin, ear, niosh, osha, dose, column_count };

    using QAbstractTableModel::QAbstractTableModel;
    /// Names come from the show, figures from the result (may be null: empty cells).
    void show_result(const Show& show, std::shared_ptr<const AnalysisResult> result);
    /// Length of the set for the dose column, minutes above 0.
    void set_minutes(double minutes);
    QString id_at(int row) const;
    int row_of(const QString& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    struct Row {
        QString id, name;
        PerformerFigure figure;
    };
    QString text_of(const Row& row, Column column) const;

    std::vector<Row> rows_;
    double minutes_ = 90.0;
};

class HouseModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    using QAbstractTableModel::QAbstractTableModel;
    struct Row {
        QString name, makers;  ///< the place; which loudspeakers make the wash there
        HouseFigure figure;
    };
    void show_rows(std::vector<Row> rows);
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    std::vector<Row> rows_;
};

/// "92 dBA", "12.4 dB", "45 min", "over 24 h"; a dash where there is none.
QString dba_text(std::optional<double> level);
QString db_text(std::optional<double> gain);
QString minutes_text(std::optional<double> minutes);

}  // namespace howlmap::app
