// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <optional>

#include "core/show/input.h"

namespace howlmap::app {

/// How a body answers to the air around it, in dB over frequency: as it is (dashed) and as it would be (heavy).
class BodyCurve : public QWidget {
    Q_OBJECT
  public:
    explicit BodyCurve(QWidget* parent = nullptr);
    void set(std::optional<Pickup> before, std::optional<Pickup> after);

  protected:
    void paintEvent(QPaintEvent* event) override;
    QSize minimumSizeHint() const override { return {200, 90}; }

  private:
    std::optional<Pickup> before_, after_;
};

}  // namespace howlmap::app
