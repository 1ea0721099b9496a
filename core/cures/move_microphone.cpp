// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/place.h"
#include "core/cures/source.h"
#include "core/cures/words.h"
#include "core/show/find.h"

namespace howlmap::cures {
namespace {
constexpr double kStepM = 1.0;                         // how far a player may be asked to step
constexpr double kAroundDeg = 60.0, kAboveDeg = 40.0;  // how far a microphone may go around its source
constexpr double kMicrophoneDbPerMetre = 0.3;
constexpr double kCloseM = 0.5;

Edit step_edit(std::string performer, Vec2 step) {
    return [=](Show& show) {
        if (Performer* player = find_by_id(show.performers, performer)) player->position = player->position + step;
        for (Input& input : show.inputs)
            if (input.performer == performer && !is_line(input))
                input.position = input.position + Vec3{step.x, step.y, 0.0};
    };
}

/// The player takes a step with her instrument: what a pickup can be asked for.
Proposals step(const Situation& now, const Input& input) {
    const Performer* player = find_by_id(now.show.performers, input.performer);
    if (!player) return {};
    const auto step_of = [](const std::vector<double>& v) { return Vec2{to_grid(v[0]), to_grid(v[1])}; };
    const auto value = [&](const std::vector<double>& v) {
        const Vec2 by = step_of(v);
        if (length(by) > kStepM || !player_fits(now.show, *player, player->position + by)) return kNotAllowed;
        return now.guessed_gain(step_edit(player->id, by)) - kMicrophoneDbPerMetre * length(by);
    };
    std::vector<std::vector<double>> starts{{0.0, 0.0}};
    for (int i = 0; i < 8; ++i)
        for (double metres : {0.4, 0.9})
            starts.push_back({metres * std::sin(i * kPi / 4.0), metres * std::cos(i * kPi / 4.0)});
    const Vec2 best = step_of(search_largest({-kStepM, -kStepM}, {kStepM, kStepM}, starts, 24, now.job, value));
    if (length(best) < kLeastMoveM) return {};
    Candidate cure;
    cure.kind = CureKind::move_microphone;
    cure.key = input.id;
    cure.objects = {input.id, player->id};
    cure.slot = "player:" + player->id;
    cure.edit = step_edit(player->id, best);
    cure.instruction = words("Let {} stand {} with {}; the wedge stays.", name(*player),
                             shift_words({}, {best.x, best.y, 0.0}, now.units()), name(input));
    cure.buys = words("The instrument gets out of the way of the sound that drives it.");
    cure.movement_m = length(best);
    return {cure};
}

/// The microphone goes around its source at the same distance, still aimed at it.
Input around(const Input& input, Vec3 source, double turn_deg, double rise_deg) {
    Input moved = input;
    const double metres = length(source - input.position);
    moved.aim.yaw_deg = wrap_degrees(to_turn(input.aim.yaw_deg, turn_deg));
    moved.aim.pitch_deg = std::clamp(to_turn(input.aim.pitch_deg, rise_deg), -80.0, 80.0);
    moved.position = source - frame_of({moved.aim.yaw_deg, moved.aim.pitch_deg, 0.0}).forward * metres;
    // Close to its source a hand's breadth changes what it hears: there a centimetre counts.
    const auto placed = [&](double m) { return metres < kCloseM ? std::round(m * 100.0) / 100.0 : to_grid(m); };
    moved.position = {placed(moved.position.x), placed(moved.position.y), placed(moved.position.z)};
    return moved;
}

Proposals orbit(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    const Vec3 source = source_of(now.show, input);
    const auto edit = [&](const Input& moved) -> Edit {
        return [=](Show& show) {
            const Input before = show.inputs[index];
            show.inputs[index].position = moved.position;
            show.inputs[index].aim = moved.aim;
            follow_source(before, source, show.inputs[index]);
        };
    };
    const auto value = [&](const std::vector<double>& v) {
        const Input moved = around(input, source, v[0], v[1]);
        if (!microphone_fits(now.show, input, moved.position)) return kNotAllowed;
        return now.guessed_gain(edit(moved)) - kMicrophoneDbPerMetre * length(moved.position - input.position);
    };
    std::vector<std::vector<double>> starts{{0.0, 0.0}};
    for (double turn : {-50.0, -25.0, 25.0, 50.0}) starts.push_back({turn, 0.0});
    for (double rise : {-30.0, 30.0}) starts.push_back({0.0, rise});
    const auto best = search_largest({-kAroundDeg, -kAboveDeg}, {kAroundDeg, kAboveDeg}, starts, 24, now.job, value);
    const Input moved = around(input, source, best[0], best[1]);
    if (length(moved.position - input.position) < kLeastMoveM) return {};
    Candidate cure;
    cure.kind = CureKind::move_microphone;
    cure.key = input.id;
    cure.objects = {input.id};
    cure.slot = "aim:" + input.id;
    cure.edit = edit(moved);
    cure.instruction = words("Move the microphone of {} by {}, the same distance from its source and aimed at it.",
                             name(input), shift_words(input.position, moved.position, now.units()));
    cure.buys = words("Its back turns towards the loudspeakers.");
    cure.movement_m = length(moved.position - input.position) + turn_metres(input.aim, moved.aim);
    return {cure};
}
}  // namespace

Proposals move_microphone(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    if (is_line(input)) return {};
    return microphone_of(input) ? orbit(now, index) : step(now, input);
}

}  // namespace howlmap::cures
