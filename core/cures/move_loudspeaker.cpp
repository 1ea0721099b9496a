// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/loudspeaker_aim.h"
#include "core/cures/place.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
constexpr double kReachM = 1.5;  // further away it is another stage plan
constexpr double kLoudspeakerDbPerMetre = 0.3;

}  // namespace

Proposals move_loudspeaker(const Situation& now, std::size_t index) {
    const Loudspeaker& loudspeaker = now.show.loudspeakers[index];
    if (!may_be_moved(loudspeaker)) return {};
    const auto moved_by = [&](const std::vector<double>& v) {
        Loudspeaker moved = loudspeaker;
        moved.position.x = to_grid(loudspeaker.position.x + v[0]);
        moved.position.y = to_grid(loudspeaker.position.y + v[1]);
        if (const auto aim = aim_at_listeners(now.show, loudspeaker, moved.position)) moved.aim = *aim;
        return moved;
    };
    const auto edit = [&](const Loudspeaker& moved) -> Edit {
        return [index, at = moved.position, aim = moved.aim](Show& show) {
            show.loudspeakers[index].position = at;
            show.loudspeakers[index].aim = aim;
        };
    };
    const auto value = [&](const std::vector<double>& v) {
        const Loudspeaker moved = moved_by(v);
        const double metres = length(moved.position - loudspeaker.position);
        if (metres > kReachM || !loudspeaker_fits(now.show, loudspeaker, moved.position.xy())) return kNotAllowed;
        return now.guessed_gain(edit(moved)) - kLoudspeakerDbPerMetre * metres;
    };
    std::vector<std::vector<double>> starts;
    for (int i = 0; i < 8; ++i)
        for (double metres : {0.5, 1.1})
            starts.push_back({metres * std::sin(i * kPi / 4.0), metres * std::cos(i * kPi / 4.0)});
    const Loudspeaker best =
        moved_by(search_largest({-kReachM, -kReachM}, {kReachM, kReachM}, starts, 24, now.job, value));
    if (length(best.position - loudspeaker.position) < kLeastMoveM ||
        !loudspeaker_fits(now.show, loudspeaker, best.position.xy()))
        return {};
    Candidate cure;
    cure.kind = CureKind::move_loudspeaker;
    cure.key = loudspeaker.id;
    cure.objects = {loudspeaker.id};
    cure.slot = "place:" + loudspeaker.id;
    cure.edit = edit(best);
    const std::string turn = turn_words(loudspeaker.aim, best.aim);
    const std::string shift = shift_words(loudspeaker.position, best.position, now.units());
    cure.instruction = turn.empty()
                           ? words("Move {} by {}.", name(loudspeaker), shift)
                           : words("Move {} by {} and turn it by {}, at its listener.", name(loudspeaker), shift, turn);
    cure.buys = words("The same level at the ear with less of it at the microphones.");
    cure.movement_m = length(best.position - loudspeaker.position) + turn_metres(loudspeaker.aim, best.aim);
    return {cure};
}

}  // namespace howlmap::cures
