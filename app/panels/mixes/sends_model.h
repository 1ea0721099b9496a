// SPDX-License-Identifier: GPL-3.0-or-later
// The sends as a matrix: a row an input (by channel), a column a mix (by number). A cell is the level at 1 m and what
// it makes at the ear.
#pragma once
#include <QAbstractTableModel>
#include <QHash>
#include <QStringList>
#include <optional>

#include "app/document/document.h"
#include "app/document/worker.h"

namespace howlmap::app {

struct PastedRows;

/// A-weighted level at the ear of the first player who hears the mix, by (mix id, input id).
using EarLevels = QHash<QPair<QString, QString>, double>;
EarLevels ear_levels_of_sends(const Show& show);

class SendsModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    explicit SendsModel(Document& document, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// A number sets the send (dB SPL at 1 m), empty text takes it out; anything else is refused.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    QString input_at(int row) const { return inputs_.value(row); }
    QString mix_at(int column) const { return mixes_.value(column); }
    QModelIndex cell_of(const QString& mix, const QString& input) const;
    std::optional<double> level(const QModelIndex& cell) const;      ///< dB SPL at 1 m
    std::optional<double> ear_level(const QModelIndex& cell) const;  ///< dBA at the ear, absent where nobody hears it
    /// Name of the player whose ear is meant, empty where there is none.
    QString listener(int column) const;

    /// Sets sends so that they reach this level at the ear. One step; false where nobody hears the mix, the send is
    /// silent, or would have to be louder or softer than a send can be.
    bool set_for_ear(const QModelIndex& cell, double ear_dba);
    bool move_mix(int from, int to);
    /// Tab separated levels from this cell on, as one step; under titles of mixes and beside those of inputs where they
    /// say. Returns a sentence for each cell that was left as it was.
    QStringList paste(const QModelIndex& top_left, const QString& text);
    /// Whether the ear levels belong to the show as it stands.
    bool settled() const { return !worker_.busy() && !stale_; }
    /// Asleep, nobody looks: ear levels wait until it wakes.
    void set_awake(bool awake);

  Q_SIGNALS:
    void trouble(const QString& text);  ///< why a level was not set
    void ears_updated();

  private:
    void refresh();
    void measure_ears();
    QModelIndex pasted_cell(const PastedRows& pasted, qsizetype row, qsizetype cell, int first_row) const;
    bool paste_cell(Show& show, const QModelIndex& cell, const QString& text) const;
    bool set_level(Show& show, const QModelIndex& cell, std::optional<double> level) const;

    Document& document_;
    Worker worker_;
    QStringList inputs_, mixes_;
    EarLevels ear_gains_;  ///< what each send gains on its way to the ear, dB
    bool awake_ = true, stale_ = false;
};

}  // namespace howlmap::app
