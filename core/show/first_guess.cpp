// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/first_guess.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/show/edits.h"
#include "core/show/find.h"

namespace howlmap {
namespace {

/// Loudspeakers that play to one listener; mains, subs and front fills play to the house.
bool plays_to_a_player(LoudspeakerKind kind) { return makes_wash(kind); }

/// Yaw from one place on the floor to another, in whole degrees: nobody aims finer by hand.
double yaw_towards(Vec2 from, Vec2 to) {
    return std::round(aim_towards({from.x, from.y, 0.0}, {to.x, to.y, 0.0}).yaw_deg) + 0.0;
}

std::string open_mix_for(Show& show, const Performer& performer) {
    Mix mix;
    while (std::any_of(show.mixes.begin(), show.mixes.end(), [&](const Mix& m) { return m.number == mix.number; }))
        ++mix.number;
    mix.id = fresh_id(show, "mix-" + std::to_string(mix.number));
    mix.name = performer.name.empty() ? "Mix " + std::to_string(mix.number) : performer.name;
    show.mixes.push_back(mix);
    return mix.id;
}

bool in_a_mix(const Show& show, const std::string& loudspeaker) {
    return std::any_of(show.mixes.begin(), show.mixes.end(), [&](const Mix& mix) {
        return std::find(mix.loudspeakers.begin(), mix.loudspeakers.end(), loudspeaker) != mix.loudspeakers.end();
    });
}

void guess_for(Show& show, Loudspeaker& speaker) {
    const Performer* nearest = nearest_performer(show, speaker.position.xy());
    if (!nearest || !plays_to_a_player(speaker.kind)) return;
    // The cabinet's own tilt stays: a wedge is built at its angle, only its yaw is turned by hand.
    speaker.aim.yaw_deg = yaw_towards(speaker.position.xy(), nearest->position);
    if (nearest->hears != Hears::loudspeakers || in_a_mix(show, speaker.id)) return;
    const std::string performer_id = nearest->id;
    const std::string mix_id = find_by_id(show.mixes, nearest->mix) ? nearest->mix : open_mix_for(show, *nearest);
    find_by_id(show.performers, performer_id)->mix = mix_id;
    find_by_id(show.mixes, mix_id)->loudspeakers.push_back(speaker.id);
}

void guess_for(Show& show, Input& input) {
    const Performer* nearest = nearest_performer(show, input.position.xy());
    if (!nearest) return;
    if (input.performer.empty()) input.performer = nearest->id;
    if (!microphone_of(input) || is_line(input)) return;
    input.aim.yaw_deg = yaw_towards(input.position.xy(), nearest->position);
}

void guess_for(Show& show, Performer& performer) {
    if (!performer.mix.empty() || performer.hears != Hears::loudspeakers) return;
    constexpr double kArmsReach = 2.5;  // m; common practice for a wedge before its player, no source
    for (const Mix& mix : show.mixes) {
        const bool taken = std::any_of(show.performers.begin(), show.performers.end(),
                                       [&](const Performer& other) { return other.mix == mix.id; });
        const bool near = std::any_of(mix.loudspeakers.begin(), mix.loudspeakers.end(), [&](const std::string& id) {
            const Loudspeaker* speaker = find_by_id(show.loudspeakers, id);
            return speaker && length(speaker->position.xy() - performer.position) <= kArmsReach;
        });
        if (taken || !near) continue;
        performer.mix = mix.id;
        return;
    }
}

}  // namespace

const Performer* nearest_performer(const Show& show, Vec2 point) {
    const Performer* nearest = nullptr;
    double least = std::numeric_limits<double>::infinity();
    for (const Performer& performer : show.performers) {
        const double distance = length(performer.position - point);
        if (distance < least) {
            least = distance;
            nearest = &performer;
        }
    }
    return nearest;
}

void guess_for_placed(Show& show, const std::vector<std::string>& ids) {
    for (const std::string& id : ids) {
        if (Loudspeaker* speaker = find_by_id(show.loudspeakers, id)) guess_for(show, *speaker);
        if (Input* input = find_by_id(show.inputs, id)) guess_for(show, *input);
        if (Performer* performer = find_by_id(show.performers, id)) guess_for(show, *performer);
    }
}

}  // namespace howlmap
