// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/placed.h"

#include <algorithm>

namespace howlmap {
namespace {

Placed view_of(const Riser& r) {
    const Box2 box = bounds_of(r.outline);
    return {ObjectKind::riser, r.id, r.name, (box.low + box.high) * 0.5, 0.0, false, is_locked(r.extras)};
}
Placed view_of(const Backline& b) {
    return {ObjectKind::backline, b.id, b.name, b.position.xy(), 0.0, false, is_locked(b.extras)};
}
Placed view_of(const Performer& p) {
    return {ObjectKind::performer, p.id, p.name, p.position, p.yaw_deg, true, is_locked(p.extras)};
}
Placed view_of(const Loudspeaker& l) {
    return {ObjectKind::loudspeaker, l.id, l.name, l.position.xy(), l.aim.yaw_deg, true, is_locked(l.extras)};
}
Placed view_of(const Input& i) {
    return {ObjectKind::input, i.id, i.name, i.position.xy(), i.aim.yaw_deg, true, is_locked(i.extras)};
}
Placed view_of(const Listener& l) {
    return {ObjectKind::listener, l.id, l.name, l.position.xy(), 0.0, false, is_locked(l.extras)};
}
Placed view_of(const Mark& m) {
    return {ObjectKind::mark, m.id, m.text, m.position, m.yaw_deg, true, is_locked(m.extras)};
}

template <class T>
bool on_plan(const T&) {
    return true;
}
bool on_plan(const Input& input) { return input.has_position; }

}  // namespace

bool is_locked(const Extras& extras) {
    return std::any_of(extras.begin(), extras.end(),
                       [](const auto& key) { return key.first == "locked" && key.second == "true"; });
}

std::vector<Placed> placed_objects(const Show& show) {
    std::vector<Placed> all;
    for_each_placed_list(show, [&](const auto& list) {
        for (const auto& item : list)
            if (on_plan(item)) all.push_back(view_of(item));
    });
    return all;
}

std::optional<Placed> placed_object(const Show& show, std::string_view id) {
    std::optional<Placed> found;
    for_each_placed_list(show, [&](const auto& list) {
        for (const auto& item : list)
            if (item.id == id && on_plan(item)) found = view_of(item);
    });
    return found;
}

}  // namespace howlmap
