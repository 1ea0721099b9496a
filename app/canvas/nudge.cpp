// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/nudge.h"

#include "app/canvas/plan_view.h"
#include "app/canvas/step_names.h"
#include "app/document/document.h"

namespace howlmap::app {
namespace {
constexpr int kRestMs = 700;
}

Nudge::Nudge(Document& document) : document_(document) {
    timer_.setSingleShot(true);
    timer_.setInterval(kRestMs);
    QObject::connect(&timer_, &QTimer::timeout, &timer_, [this] { finish(); });
}

void Nudge::by(const Ids& ids, Vec2 way) {
    if (ids.empty()) return;
    if (active_ && (ids != ids_ || !document_.in_gesture())) finish();
    if (!active_) {
        ids_ = ids;
        total_ = {};
        active_ = true;
        document_.begin_gesture(step_name(PlanView::tr("Nudge"), document_.show(), ids));
    }
    total_ = total_ + way;
    document_.update_gesture([&](Show& show) { move_by(show, ids_, total_); });
    timer_.start();
}

void Nudge::finish() {
    timer_.stop();
    if (!active_) return;
    active_ = false;
    document_.end_gesture();
}

}  // namespace howlmap::app
