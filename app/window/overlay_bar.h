// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

class QComboBox;

namespace howlmap::app {

class PlanView;

/// Which map lies under the plan, and of what: follows the selection until something else is chosen.
class OverlayBar : public QWidget {
    Q_OBJECT
  public:
    OverlayBar(PlanView& plan, QWidget* parent);

  private:
    void fill_subjects();
    void choose();
    void follow_selection();

    PlanView& plan_;
    QComboBox *kind_, *subject_;
};

}  // namespace howlmap::app
