// SPDX-License-Identifier: GPL-3.0-or-later
// What the pointer does on the plan. One file a tool; a tool hands each movement of the hand to a drag.
#pragma once
#include <QPoint>
#include <QPointF>
#include <Qt>

#include "core/geometry/vec3.h"

namespace howlmap::app {

class PlanView;

/// Where the pointer is and which keys are held.
struct Pointer {
    QPoint pixel;  ///< of the viewport
    Vec2 at;       ///< metres on the plan
    Qt::KeyboardModifiers keys;

    bool shift() const { return keys.testFlag(Qt::ShiftModifier); }
    bool control() const { return keys.testFlag(Qt::ControlModifier); }
    bool alt() const { return keys.testFlag(Qt::AltModifier); }
};

class Tool {
  public:
    explicit Tool(PlanView& view) : view_(view) {}
    virtual ~Tool() = default;
    Tool(const Tool&) = delete;
    Tool& operator=(const Tool&) = delete;

    virtual void press(const Pointer& pointer) = 0;
    virtual void drag(const Pointer& pointer) = 0;
    virtual void release(const Pointer& pointer) = 0;
    virtual void hover(const Pointer&) {}
    virtual void double_click(const Pointer&) {}
    /// Gives up what is in hand; false when there was nothing.
    virtual bool cancel() = 0;
    virtual Qt::CursorShape cursor() const { return Qt::ArrowCursor; }

  protected:
    PlanView& view_;
};

/// One movement of the hand from press to release: one step of undo at most.
class Drag {
  public:
    virtual ~Drag() = default;
    virtual void update(const Pointer& pointer) = 0;
    virtual void finish(const Pointer& pointer) = 0;
    virtual void cancel() = 0;
};

}  // namespace howlmap::app
