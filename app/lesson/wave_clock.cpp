// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/wave_clock.h"

#include <algorithm>
#include <cmath>

namespace howlmap::app {
namespace {
constexpr int kFrameMs = 33;
constexpr double kMetresPerSecond = 0.5, kSlowest = 0.2, kFastest = 1.0;
}  // namespace

WaveClock::WaveClock(QObject* parent) : QObject(parent) {
    timer_.setInterval(kFrameMs);
    connect(&timer_, &QTimer::timeout, this, [this] { advance(static_cast<double>(since_.restart()) / 1000.0); });
}

void WaveClock::set_running(bool running) {
    if (running == timer_.isActive()) return;
    since_.start();
    running ? timer_.start() : timer_.stop();
    Q_EMIT running_changed(running);
}

void WaveClock::set_wavelength(double metres) {
    per_second_ = std::clamp(kMetresPerSecond / metres, kSlowest, kFastest);
}

void WaveClock::advance(double seconds) {
    turns_ = std::fmod(turns_ + per_second_ * std::min(seconds, 0.1), 1e6);
    Q_EMIT ticked();
}

}  // namespace howlmap::app
