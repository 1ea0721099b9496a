// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QTimer>

#include "core/show/edits.h"

namespace howlmap::app {

class Document;

/// Arrow keys that follow one another are one step of undo.
class Nudge {
  public:
    explicit Nudge(Document& document);
    /// Moves objects a little further.
    void by(const Ids& ids, Vec2 way);
    /// The keys are let go: the step ends unless another arrow follows soon.
    void rest() { timer_.start(); }
    /// The step ends now.
    void finish();
    bool active() const { return active_; }

  private:
    Document& document_;
    QTimer timer_;
    Ids ids_;
    Vec2 total_;
    bool active_ = false;
};

}  // namespace howlmap::app
