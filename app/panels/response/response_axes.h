// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "app/panels/response/custom_plot.h"

namespace howlmap::app {

/// The two scales below the curves: third-octave bands, and note names. Labels thin out where there is no room.
class ResponseAxes : public QObject {
    Q_OBJECT
  public:
    explicit ResponseAxes(QCustomPlot& plot);
    /// Colours and fonts from the palette of the plot.
    void restyle();
    void show_all();

  private:
    void label();
    void keep_inside(const QCPRange& range);

    QCustomPlot& plot_;
    QCPAxis* notes_;
    QSharedPointer<QCPAxisTickerText> band_ticks_, note_ticks_;
    QSharedPointer<QCPAxisTickerFixed> level_ticks_;
};

}  // namespace howlmap::app
