// SPDX-License-Identifier: GPL-3.0-or-later
// Bands in the order of the probability that they ring first, with who and where.
#pragma once
#include <QAbstractListModel>
#include <QWidget>
#include <vector>

#include "app/panels/workspace.h"
#include "core/analysis/ring_out.h"

class QLabel;
class QListView;
class QProgressBar;

namespace howlmap::app {

class RingOutModel : public QAbstractListModel {
    Q_OBJECT
  public:
    using QAbstractListModel::QAbstractListModel;
    void set(std::vector<RingOutBand> bands, const Show& show);
    const RingOutBand* at(int row) const;
    const std::vector<RingOutBand>& bands() const { return bands_; }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

  private:
    std::vector<RingOutBand> bands_;
    Show show_;
};

class RingOutList : public QWidget {
    Q_OBJECT
  public:
    RingOutList(const Workspace& workspace, QWidget* parent);
    const RingOutModel& model() const { return *model_; }
    QListView& view() { return *list_; }

  Q_SIGNALS:
    void updated();                        ///< the order is that of the latest draws
    void chosen(const RingOutBand& band);  ///< by Enter or double click

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
