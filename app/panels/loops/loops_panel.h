// SPDX-License-Identifier: GPL-3.0-or-later
// What rings first, and why: rings worst first; the one selected lights up on the plan and in the response.
#pragma once
#include <QWidget>

#include "app/panels/workspace.h"

class QLabel;
class QListView;
class QPushButton;

namespace howlmap {
struct Ring;
}

namespace howlmap::app {

class RingModel;

class LoopsPanel : public QWidget {
    Q_OBJECT
  public:
    LoopsPanel(const Workspace& workspace, QWidget* parent);

  Q_SIGNALS:
    void teach(const Ring& ring);  ///< it shall be shown in the lesson

  private:
    void refresh();
    void selected();
    void follow_spotlight();
    void explain_ring();

    Workspace work_;
    RingModel* model_;
    QListView* list_;
    QLabel *empty_, *figures_, *why_;
    QPushButton* teach_;
    bool refreshing_ = false;
};

}  // namespace howlmap::app
