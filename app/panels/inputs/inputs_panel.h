// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "app/document/document.h"
#include "app/document/selection.h"

class QLabel;
class QTableView;

namespace howlmap::app {

class InputsModel;

/// The input list, edited in place; rows are the selection on the plan.
class InputsPanel : public QWidget {
    Q_OBJECT
  public:
    InputsPanel(Document& document, Selection& selection, QWidget* parent = nullptr);
    QTableView& table() { return *table_; }
    InputsModel& model() { return *model_; }

  public Q_SLOTS:
    void copy_cells();  ///< the marked cells, or all with titles, tab separated
    void paste_cells();
    void move_up();
    void move_down();

  Q_SIGNALS:
    void message(const QString& text);

  private:
    void build();
    void follow_selection();
    void offer_selection();
    void say(const QString& text);
    void move_by(int rows);
    void remove_inputs();

    Document& document_;
    Selection& selection_;
    InputsModel* model_;
    QTableView* table_;
    QLabel* empty_;
    bool following_ = false;
};

}  // namespace howlmap::app
