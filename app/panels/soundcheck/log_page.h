// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

#include "app/panels/workspace.h"

class QLabel;
class QTableView;

namespace howlmap::app {

class LogModel;

/// What was found and done while ringing out, as a table that can be typed into.
class LogPage : public QWidget {
    Q_OBJECT
  public:
    LogPage(const Workspace& workspace, QWidget* parent);

  private:
    void refresh();
    void add_row();
    void remove_rows();

    LogModel* model_;
    QTableView* table_;
    QLabel* empty_;
};

}  // namespace howlmap::app
