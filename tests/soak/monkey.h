// SPDX-License-Identifier: GPL-3.0-or-later
// A hand without a head: clicks, drags, keys and actions, each a little at random.
#pragma once
#include <QString>
#include <QTimer>
#include <random>
#include <vector>

#include "app/window/main_window.h"

namespace howlmap::app {

class Monkey {
  public:
    /// Whatever is saved goes to `file`. The same seed gives the same hand; what it meets may still differ, since
    /// results arrive when they arrive.
    Monkey(MainWindow& window, QString file, unsigned seed);

    /// One click, drag, key or action. Returns when what it opened is closed again.
    void act();
    /// The example anew, as the first time: nothing to undo, nothing unsaved.
    void start_over();
    long events() const { return events_; }

  private:
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    QPoint somewhere(const QWidget* widget);
    std::vector<QWidget*> visible_widgets() const;
    void trigger();
    void press_keys();
    void click(QWidget* widget);
    void drag(QWidget* widget);

    MainWindow& window_;
    QString file_;
    std::mt19937 random_;
    QTimer answers_;
    long events_ = 0;
};

}  // namespace howlmap::app
