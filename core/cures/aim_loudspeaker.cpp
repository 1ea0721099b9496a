// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/loudspeaker_aim.h"
#include "core/cures/place.h"
#include "core/cures/words.h"

namespace howlmap::cures {

Proposals aim_loudspeaker(const Situation& now, std::size_t index) {
    const Loudspeaker& loudspeaker = now.show.loudspeakers[index];
    if (!may_be_moved(loudspeaker) || std::holds_alternative<Omni>(loudspeaker.directivity)) return {};
    constexpr double kTurnDeg = 45.0, kDbPerDegree = 0.005;
    const PitchRange range = pitch_range(loudspeaker);
    const auto aim_of = [&](const std::vector<double>& v) {
        const Aim& old = loudspeaker.aim;
        return Aim{wrap_degrees(to_turn(old.yaw_deg, v[0])),
                   std::clamp(to_turn(old.pitch_deg, v[1] - old.pitch_deg), range.low, range.high), old.roll_deg};
    };
    const auto edit = [&](const Aim& aim) -> Edit {
        return [index, aim](Show& show) { show.loudspeakers[index].aim = aim; };
    };
    const auto value = [&](const std::vector<double>& v) {
        const Aim aim = aim_of(v);
        return now.guessed_gain(edit(aim)) - kDbPerDegree * std::hypot(v[0], aim.pitch_deg - loudspeaker.aim.pitch_deg);
    };
    const double pitch = loudspeaker.aim.pitch_deg;
    std::vector<std::vector<double>> starts{{0.0, pitch}, {-25.0, pitch}, {25.0, pitch}};
    for (double step : {-15.0, 15.0})
        if (pitch + step >= range.low && pitch + step <= range.high) starts.push_back({0.0, pitch + step});
    const Aim best = aim_of(search_largest({-kTurnDeg, range.low}, {kTurnDeg, range.high}, starts, 24, now.job, value));
    const std::string turn = turn_words(loudspeaker.aim, best);
    if (turn.empty()) return {};
    Candidate cure;
    cure.kind = CureKind::aim_loudspeaker;
    cure.key = loudspeaker.id;
    cure.objects = {loudspeaker.id};
    cure.slot = "place:" + loudspeaker.id;
    cure.edit = edit(best);
    cure.instruction = words("Turn {} by {}.", name(loudspeaker), turn);
    cure.buys = words("It sends less towards the microphones for what it sends to the ear.");
    cure.movement_m = turn_metres(loudspeaker.aim, best);
    return {cure};
}

}  // namespace howlmap::cures
