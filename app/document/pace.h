// SPDX-License-Identifier: GPL-3.0-or-later
// While the hand drags, results arrive faster than eyes read; each makes panels paint. They are told at a pace that
// still looks like following, so that what is dragged itself is always painted first.
#pragma once
#include <QElapsedTimer>
#include <QObject>
#include <QTimer>
#include <functional>

#include "app/document/document.h"

namespace howlmap::app {

class Pace : public QObject {
    Q_OBJECT
  public:
    static constexpr int kFollowingMs = 40;
    /// Calls `tell`: at once while nothing is dragged, at most once in `between_ms` while something is.
    Pace(Document& document, std::function<void()> tell, int between_ms = kFollowingMs, QObject* parent = nullptr);
    void ask();

  private:
    void now();

    Document& document_;
    std::function<void()> tell_;
    int between_ms_;
    QElapsedTimer last_;
    QTimer later_;
};

}  // namespace howlmap::app
