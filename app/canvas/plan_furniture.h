// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>

namespace howlmap::app {

class PlanView;

/// What stays in its corner of the view while the plan moves beneath: scale bar and legend.
class PlanFurniture : public QWidget {
    Q_OBJECT
  public:
    explicit PlanFurniture(PlanView& view);

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    PlanView& view_;
};

}  // namespace howlmap::app
