// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/pace.h"

#include <utility>

namespace howlmap::app {
namespace {
constexpr int kBetweenMs = 40;
}

Pace::Pace(Document& document, std::function<void()> tell, QObject* parent)
    : QObject(parent), document_(document), tell_(std::move(tell)) {
    later_.setSingleShot(true);
    connect(&later_, &QTimer::timeout, this, &Pace::now);
    connect(&document_, &Document::gesture_ended, this, [this] {
        if (later_.isActive()) now();
    });
}

void Pace::ask() {
    if (later_.isActive()) return;
    const qint64 since = last_.isValid() ? last_.elapsed() : kBetweenMs;
    if (!document_.in_gesture() || since >= kBetweenMs) return now();
    later_.start(static_cast<int>(kBetweenMs - since));
}

void Pace::now() {
    later_.stop();
    last_.start();
    tell_();
}

}  // namespace howlmap::app
