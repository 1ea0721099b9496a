// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <optional>
#include <vector>

#include "core/show/show.h"

namespace howlmap::app {

/// Level against direction in the horizontal plane of the object, dB re its axis.
struct PolarCurve {
    std::vector<double> angles_deg;  ///< -180..180
    std::vector<double> db;
    std::vector<bool> negative;  ///< rear lobe of opposite sign
};
/// Of a loudspeaker or microphone at a frequency; none for anything else.
std::optional<PolarCurve> polar_of(const Show& show, const std::string& id, double hz);

/// A small polar plot, rings every 6 dB down to -24, with the frequency that it is drawn for.
class PolarPlot : public QWidget {
    Q_OBJECT
  public:
    explicit PolarPlot(QWidget* parent = nullptr);
    void show_curve(std::optional<PolarCurve> curve, double hz);
    QSize sizeHint() const override { return {180, 180}; }
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return std::min(width, 200); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    std::optional<PolarCurve> curve_;
    double hz_ = 1000.0;
};

}  // namespace howlmap::app
