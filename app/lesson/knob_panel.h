// SPDX-License-Identifier: GPL-3.0-or-later
// All knobs of the bench as controls.
#pragma once
#include <QWidget>
#include <map>

#include "core/lesson/bench.h"

class QAbstractButton;
class QComboBox;
class QDoubleSpinBox;
class QBoxLayout;
class QGridLayout;
class QSlider;

namespace howlmap::app {

class LessonState;

class KnobPanel : public QWidget {
    Q_OBJECT
  public:
    KnobPanel(LessonState& state, QWidget* parent);

  private:
    void add_number(QGridLayout* grid, int place, Knob knob, const QString& name, const QString& unit);
    void add_switch(QBoxLayout* row, Knob knob, const QString& name);
    void add_pattern(QBoxLayout* row);
    void follow_units();
    void refresh();

    struct Number {
        QDoubleSpinBox* box;
        QSlider* slider;
    };
    LessonState& state_;
    double unit_m_ = 0.0;  ///< metres in one of what lengths are shown in
    std::map<Knob, Number> numbers_;
    std::map<Knob, QAbstractButton*> switches_;
    QComboBox* pattern_ = nullptr;
};

}  // namespace howlmap::app
