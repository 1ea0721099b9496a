// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/pace.h"

#include <utility>

namespace howlmap::app {

Pace::Pace(Document& document, std::function<void()> tell, int between_ms, QObject* parent)
    : QObject(parent), document_(document), tell_(std::move(tell)), between_ms_(between_ms) {
    later_.setSingleShot(true);
    connect(&later_, &QTimer::timeout, this, &Pace::now);
    connect(&document_, &Document::gesture_ended, this, [this] {
        if (later_.isActive()) now();
    });
}

void Pace::ask() {
    if (later_.isActive()) return;
    const qint64 since = last_.isValid() ? last_.elapsed() : between_ms_;
    if (!document_.in_gesture() || since >= between_ms_) return now();
    later_.start(static_cast<int>(between_ms_ - since));
}

void Pace::now() {
    later_.stop();
    last_.start();
    tell_();
}

}  // namespace howlmap::app
