// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever stands on the plan, seen alike whichever list of the show holds it.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/show/change.h"
#include "core/show/show.h"

namespace howlmap {

/// An object on the plan. A riser stands at the middle of its box and has no yaw of its own.
struct Placed {
    ObjectKind kind = ObjectKind::mark;
    std::string id, name;
    Vec2 position;
    double yaw_deg = 0.0;
    bool has_yaw = false;  ///< whether the show keeps a yaw for it
    bool locked = false;
};

/// All objects on the plan, lowest first: risers, backline, performers, loudspeakers, inputs, listeners, marks.
/// Mixes and inputs without a position are not on it.
std::vector<Placed> placed_objects(const Show& show);
/// The object on the plan with this id, if any.
std::optional<Placed> placed_object(const Show& show, std::string_view id);

/// Whether an object is locked: its unknown key "locked" is true. Locked objects are not moved, turned, resized or
/// removed.
bool is_locked(const Extras& extras);

/// Calls f with every list of objects that can stand on the plan, lowest first.
template <class S, class F>
void for_each_placed_list(S& show, F&& f) {
    f(show.stage.risers);
    f(show.backline);
    f(show.performers);
    f(show.loudspeakers);
    f(show.inputs);
    f(show.listeners);
    f(show.marks);
}

}  // namespace howlmap
