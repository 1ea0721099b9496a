// SPDX-License-Identifier: GPL-3.0-or-later
// Bands in the order of the probability that they ring first, with who and where.
#pragma once
#include <QAbstractListModel>
#include <QWidget>
#include <vector>

#include "app/panels/workspace.h"
#include "core/loop/figures.h"
#include "core/show/show.h"

class QLabel;
class QListView;
class QProgressBar;

namespace howlmap::app {

class RingOutModel : public QAbstractListModel {
    Q_OBJECT
  public:
    using QAbstractListModel::QAbstractListModel;
    void set(std::vector<BandProbability> bands, const Show& show);
    const BandProbability* at(int row) const;
    const std::vector<BandProbability>& bands() const { return bands_; }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    std::vector<BandProbability> bands_;
    Show show_;
};

class RingOutList : public QWidget {
    Q_OBJECT
  public:
    RingOutList(const Workspace& workspace, QWidget* parent);
    const RingOutModel& model() const { return *model_; }
    QListView& view() { return *list_; }

  Q_SIGNALS:
    void updated();                            ///< the order is that of the latest draws
    void chosen(const BandProbability& band);  ///< by Enter or double click

  private:
    void refresh();
    void say_empty();

    Workspace work_;
    RingOutModel* model_;
    QListView* list_;
    QLabel* empty_;
    QProgressBar* progress_;
};

}  // namespace howlmap::app
