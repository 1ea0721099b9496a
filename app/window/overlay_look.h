// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QWidget>
#include <optional>

class QComboBox;
class QLabel;
class QSlider;

namespace howlmap::app {

class PlanView;

/// At which frequency the map is drawn (the worst of all, one third-octave band, or any one frequency) and how strongly
/// it shows.
class OverlayLook : public QWidget {
    Q_OBJECT
  public:
    OverlayLook(PlanView& plan, QWidget* parent);

  private:
    QWidget* frequency_part();
    QWidget* opacity_part();
    void band_chosen(int index);
    void slid(int position);
    void follow();

    PlanView& plan_;
    QComboBox* band_;
    QSlider *frequency_, *opacity_;
    QLabel *hz_, *slider_name_;
};

}  // namespace howlmap::app
