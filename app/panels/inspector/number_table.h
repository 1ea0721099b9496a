// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "app/panels/inspector/number_table_model.h"

class QLabel;
class QTableView;

namespace howlmap::app {

/// The table with its buttons: add, remove, paste, load.
class NumberTable : public QWidget {
    Q_OBJECT
  public:
    NumberTable(NumberTableSource source, Document& document, QWidget* parent = nullptr);
    NumberTableModel& model() { return *model_; }
    void refresh();

  private:
    void load();
    void remove();
    void go_to(int row);

    NumberTableModel* model_;
    QTableView* view_;
    QLabel* trouble_;
};

}  // namespace howlmap::app
