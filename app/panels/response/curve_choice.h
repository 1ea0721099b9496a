// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QComboBox>

#include "app/panels/workspace.h"
#include "core/analysis/response.h"

namespace howlmap::app {

/// Whose curve is shown: all loops together, one mix, one input, or one pair (worst first).
class CurveChoice : public QComboBox {
    Q_OBJECT
  public:
    CurveChoice(const Workspace& workspace, QWidget* parent = nullptr);

  private:
    void fill();
    void add(const QString& text, const OpenLoops& open);

    Workspace work_;
    std::vector<OpenLoops> choices_;
};

}  // namespace howlmap::app
