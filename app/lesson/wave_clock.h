// SPDX-License-Identifier: GPL-3.0-or-later
// Slow time for what travels and turns in a lesson.
#pragma once
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace howlmap::app {

class WaveClock : public QObject {
    Q_OBJECT
  public:
    explicit WaveClock(QObject* parent = nullptr);
    /// Turns of the wave since the beginning.
    double turns() const { return turns_; }
    bool running() const { return timer_.isActive(); }
    void set_running(bool running);
    /// Crests travel at half a metre a second, but no more than one and no less than a fifth pass in a second.
    void set_wavelength(double metres);
    void advance(double seconds);

  Q_SIGNALS:
    void ticked();
    void running_changed(bool running);

  private:
    QTimer timer_;
    QElapsedTimer since_;
    double turns_ = 0.0, per_second_ = 0.5;
};

}  // namespace howlmap::app
