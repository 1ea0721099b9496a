// SPDX-License-Identifier: GPL-3.0-or-later
// The guided lesson: which one, what it says, and its task.
#pragma once
#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;

namespace howlmap::app {

class LessonState;

class GuidePanel : public QWidget {
    Q_OBJECT
  public:
    GuidePanel(LessonState& state, QWidget* parent);

  private:
    void refresh();
    void show_free_play();

    LessonState& state_;
    QComboBox* lesson_;
    QLabel *where_, *text_, *verdict_, *hint_;
    QPushButton *back_, *next_, *help_, *solution_, *again_;
    int hinted_ = -1;  ///< lesson whose hint is shown
};

}  // namespace howlmap::app
