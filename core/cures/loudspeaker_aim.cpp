// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/loudspeaker_aim.h"

#include <algorithm>
#include <cmath>

#include "core/listening/transfer.h"
#include "core/show/find.h"

namespace howlmap::cures {

std::vector<Vec3> listeners_of(const Show& show, const Loudspeaker& loudspeaker) {
    std::vector<Vec3> ears;
    for (const Performer& performer : show.performers) {
        const Mix* mix = performer.hears == Hears::loudspeakers ? find_by_id(show.mixes, performer.mix) : nullptr;
        if (mix &&
            std::find(mix->loudspeakers.begin(), mix->loudspeakers.end(), loudspeaker.id) != mix->loudspeakers.end())
            ears.push_back(ear_of(show, performer));
    }
    return ears;
}

std::optional<Aim> aim_at_listeners(const Show& show, const Loudspeaker& loudspeaker, Vec3 from) {
    const auto ears = listeners_of(show, loudspeaker);
    if (ears.empty()) return std::nullopt;
    Vec3 middle;
    for (const Vec3& ear : ears) middle = middle + ear * (1.0 / static_cast<double>(ears.size()));
    Aim aim = aim_towards(from, middle);
    const PitchRange range = pitch_range(loudspeaker);
    aim.yaw_deg = wrap_degrees(std::round(aim.yaw_deg));
    aim.pitch_deg = std::round(std::clamp(aim.pitch_deg, range.low, range.high));
    aim.roll_deg = loudspeaker.aim.roll_deg;
    return aim;
}

PitchRange pitch_range(const Loudspeaker& loudspeaker) {
    const double now = loudspeaker.aim.pitch_deg;
    if (loudspeaker.kind == LoudspeakerKind::wedge) return {std::min(25.0, now), std::max(70.0, now)};
    return {std::min(-30.0, now), std::max(45.0, now)};
}

bool may_be_moved(const Loudspeaker& loudspeaker) {
    switch (loudspeaker.kind) {
        case LoudspeakerKind::wedge:
        case LoudspeakerKind::side_fill:
        case LoudspeakerKind::drum_fill:
        case LoudspeakerKind::combo_amp:
            return true;
        default:
            return false;
    }
}

}  // namespace howlmap::cures
