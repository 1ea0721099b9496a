// SPDX-License-Identifier: GPL-3.0-or-later
// What every player hears, from the last analysis. How she hears, the seal of her in-ears and her own acoustic sound
// are set in the table.
#pragma once
#include <QAbstractTableModel>
#include <functional>
#include <memory>

#include "core/analysis/analysis.h"
#include "core/show/show.h"

namespace howlmap::app {

class Document;

class PlayersModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Column { player, hears, own, others, hear_margin, ear, niosh, osha, dose, seal, acoustic, column_count };

    explicit PlayersModel(Document& document, QObject* parent = nullptr);
    /// What can be chosen in the column `hears`, in the order of the values.
    static QStringList ways_of_hearing();
    /// Names come from the show, figures from the result (may be null: empty cells).
    void show_result(const Show& show, const std::shared_ptr<const AnalysisResult>& result);
    /// Length of the set for the dose column, minutes above 0.
    void set_minutes(double minutes);
    QString id_at(int row) const;
    int row_of(const QString& id) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

  Q_SIGNALS:
    void refused(const QString& why);  ///< what was typed is no value for the cell

  private:
    struct Row {
        QString id, name;
        Hears hears = Hears::loudspeakers;
        double seal_db = 0.0;
        std::optional<double> acoustic_dba;
        PerformerFigure figure;
    };
    QString text_of(const Row& row, Column column) const;
    static QString tip_of(Column column);
    bool set_hears(const Row& row, const QString& text);
    bool set_seal(const Row& row, const QString& text);
    bool set_acoustic(const Row& row, const QString& text);
    bool edit(const Row& row, const QString& step, const std::function<void(Performer&)>& what);

    Document& document_;
    std::vector<Row> rows_;
    double minutes_ = 90.0;
};

}  // namespace howlmap::app
