// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/place.h"

#include <algorithm>

namespace howlmap::cures {
namespace {
/// Whether every item but the one with this id is at least so far away, seen from above. Those that are nearer than
/// that already may stay.
template <class List, class Where>
bool clear_of(const List& list, const std::string& id, Vec2 now, Vec2 at, double metres, const Where& where) {
    return std::all_of(list.begin(), list.end(), [&](const auto& item) {
        if (item.id == id) return true;
        const double distance = length(where(item) - at);
        return distance >= metres || distance >= length(where(item) - now);
    });
}

Vec2 flat(const Vec3& point) { return point.xy(); }
Vec2 flat(const Vec2& point) { return point; }
const auto kPosition = [](const auto& item) { return flat(item.position); };

bool same_ground(const Show& show, Vec2 now, Vec2 at) {
    return covers(show.stage.outline, at) && riser_height_at(show.stage, now) == riser_height_at(show.stage, at);
}
}  // namespace

bool loudspeaker_fits(const Show& show, const Loudspeaker& loudspeaker, Vec2 at) {
    const Vec2 now = loudspeaker.position.xy();
    const auto stands = [&] {
        return std::all_of(show.inputs.begin(), show.inputs.end(), [&](const Input& input) {
            return !microphone_of(input) ||
                   length(input.position.xy() - at) >= std::min(0.25, length(input.position.xy() - now));
        });
    };
    return same_ground(show, now, at) && clear_of(show.loudspeakers, loudspeaker.id, now, at, 0.5, kPosition) &&
           clear_of(show.backline, loudspeaker.id, now, at, 0.5, kPosition) &&
           clear_of(show.performers, loudspeaker.id, now, at, 0.7, kPosition) && stands();
}

bool player_fits(const Show& show, const Performer& performer, Vec2 at) {
    return same_ground(show, performer.position, at) &&
           clear_of(show.performers, performer.id, performer.position, at, 0.8, kPosition) &&
           clear_of(show.loudspeakers, performer.id, performer.position, at, 0.7, kPosition) &&
           clear_of(show.backline, performer.id, performer.position, at, 0.7, kPosition);
}

bool microphone_fits(const Show& show, const Input& input, Vec3 at) {
    const double height = at.z - riser_height_at(show.stage, input.position.xy());
    const auto clear = [&](const auto& list) {
        return std::all_of(list.begin(), list.end(), [&](const auto& item) {
            return item.id == input.id ||
                   length(item.position - at) >= std::min(0.15, length(item.position - input.position));
        });
    };
    return covers(show.stage.outline, at.xy()) && height >= 0.1 && height <= 2.2 && clear(show.inputs) &&
           clear(show.loudspeakers);
}

}  // namespace howlmap::cures
