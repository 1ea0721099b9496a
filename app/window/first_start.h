// SPDX-License-Identifier: GPL-3.0-or-later
// What a newcomer sees once: a strip of cautions, and three steps. Both can be dismissed for ever and called back from
// Help.
#pragma once
#include <QFrame>

class QLabel;
class QPushButton;

namespace howlmap::app {

/// Whether this is the first start; false from the second call on, also in later runs.
bool first_start();

/// A strip above the plan with a text, and buttons at its end.
class Strip : public QFrame {
    Q_OBJECT
  public:
    /// The key under which "not again" is remembered.
    Strip(const char* key, const QString& name, QWidget* parent);
    bool dismissed() const;
    void dismiss();
    /// Shows it again whatever was remembered.
    void call_back();

  protected:
    QPushButton* add_button(const QString& text, const QString& tip);
    QLabel* text_;

  private:
    QString key_;
};

class CautionStrip : public Strip {
    Q_OBJECT
  public:
    explicit CautionStrip(QWidget* parent);
};

class TourStrip : public Strip {
    Q_OBJECT
  public:
    explicit TourStrip(QWidget* parent);
    int step() const { return step_; }
    void restart();

  Q_SIGNALS:
    void step_changed(int step);  ///< 0..2, so that the window can bring the right panel to the front

  private:
    void show_step(int step);
    int step_ = 0;
    QPushButton *back_, *next_;
};

}  // namespace howlmap::app
