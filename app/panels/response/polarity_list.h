// SPDX-License-Identifier: GPL-3.0-or-later
// Polarity of every input and mix, with what turning each over would give, as drawn and to count on.
#pragma once
#include <QHash>
#include <QTimer>
#include <QTreeWidget>

#include "app/document/worker.h"
#include "app/panels/workspace.h"
#include "core/analysis/analysis.h"

namespace howlmap::app {

class PolarityList : public QTreeWidget {
    Q_OBJECT
  public:
    PolarityList(const Workspace& workspace, QWidget* parent = nullptr);

    /// What turning one over changes; absent where there is no loop on one side.
    struct Effect {
        std::optional<double> drawn_db, counted_db;
        std::optional<double> hz_before, hz_after;  ///< of the first ring as drawn
    };
    /// What becomes of the first ring, in words: often the flip only moves it.
    static QString words(const Effect& effect);

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void fill();
    void invalidate();
    void compute();
    void show_effect(const QString& id, const Effect& effect);
    void flip(QTreeWidgetItem* item);

    Workspace work_;
    QTimer settle_;
    quint64 computed_for_ = 0;
    bool filling_ = false;
    Worker worker_;
};

}  // namespace howlmap::app
