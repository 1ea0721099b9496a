// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QObject>
#include <QPointer>

class QWidget;

namespace howlmap::app {

/// Whoever has the keys is seen: a ring in the accent around lists, tables, texts and plots, which the style leaves
/// without one. In every window of the program; the plan draws its own.
class FocusRing : public QObject {
    Q_OBJECT
  public:
    explicit FocusRing(QObject* parent);

  private:
    void follow(QWidget* now);

    QPointer<QWidget> ring_;
};

}  // namespace howlmap::app
