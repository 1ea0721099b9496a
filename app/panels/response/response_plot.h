// SPDX-License-Identifier: GPL-3.0-or-later
// Loop gain over frequency: as drawn, its band of 5 to 95 per cent, worst phase, target, rings, and what a preview
// would make of it.
#pragma once
#include "app/panels/response/custom_plot.h"

#include <memory>
#include <optional>
#include <vector>

#include "core/analysis/response.h"
#include "core/loop/figures.h"

namespace howlmap::app {

class ResponseAxes;

class ResponsePlot : public QCustomPlot {
    Q_OBJECT
  public:
    explicit ResponsePlot(QWidget* parent = nullptr);

    void set_curves(std::shared_ptr<const LoopResponse> curves);
    void set_band(const ResponseBand* band);
    void set_preview(const LoopResponse* preview);
    void set_rings(const std::vector<Ring>& rings, double target_db);
    void set_highlight(const std::optional<Ring>& ring);

    const LoopResponse* curves() const { return curves_.get(); }
    /// Gain as drawn in dB at a frequency (nearest point), none without a curve.
    std::optional<double> gain_at(double hz) const;
    double x_of(double hz) const { return xAxis->coordToPixel(hz); }
    void show_all();
    /// Names of the rings that stand beside their marks now.
    QStringList ring_names() const;

  Q_SIGNALS:
    void reading(const QString& text);  ///< frequency, note, cents and dB under the pointer; empty when it leaves
    void ring_picked(const howlmap::Ring& ring);
    void view_changed();  ///< zoomed, panned or resized: whoever stands below follows

  protected:
    void mouseMoveEvent(QMouseEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    void restyle();
    void read_at(double hz);
    void place_names();
    void pan(double octaves);
    void zoom(double factor);

    ResponseAxes* axes_;
    QRect laid_out_;  ///< where the axes stood at the last layout
    std::shared_ptr<const LoopResponse> curves_;
    std::vector<Ring> rings_;
    std::optional<Ring> highlight_;
    double target_db_ = 6.0;
    QCPGraph *low_, *high_, *gain_, *worst_, *preview_, *marks_, *lit_;
    QCPItemStraightLine *target_, *ringing_, *cursor_;
    QList<QCPItemText*> names_;  ///< beside the marks, worst first
};

}  // namespace howlmap::app
