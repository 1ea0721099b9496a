// SPDX-License-Identifier: GPL-3.0-or-later
// What rings first, and why: rings worst first; the one selected lights up on the plan and in the response.
#pragma once
#include <QWidget>

#include "app/panels/workspace.h"

class QLabel;
class QListView;

namespace howlmap::app {

class RingModel;

class LoopsPanel : public QWidget {
    Q_OBJECT
  public:
    LoopsPanel(const Workspace& workspace, QWidget* parent);

  private:
    void refresh();
    void selected();
    void follow_spotlight();
    void explain_ring();

    Workspace work_;
    RingModel* model_;
    QListView* list_;
    QLabel *empty_, *why_;
    bool refreshing_ = false;
};

}  // namespace howlmap::app
