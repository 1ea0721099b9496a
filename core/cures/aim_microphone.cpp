// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/place.h"
#include "core/cures/source.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
constexpr double kYawDeg = 60.0, kPitchDeg = 45.0;  // what a stand or a clip allows
constexpr double kAimDbPerDegree = 0.005;           // of two equal aims the nearer one

Edit aim_edit(std::size_t index, Aim aim, Vec3 source) {
    return [=](Show& show) {
        Input& input = show.inputs[index];
        const Input before = input;
        input.aim = aim;
        follow_source(before, source, input);
    };
}
}  // namespace

Proposals aim_microphone(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    const Microphone* microphone = microphone_of(input);
    if (!microphone || microphone->cupped || microphone->pattern == Pattern(PatternName::omni)) return {};
    const Vec3 source = source_of(now.show, input);
    const auto aim_at = [&](const std::vector<double>& turn) {
        return Aim{wrap_degrees(to_turn(input.aim.yaw_deg, turn[0])),
                   std::clamp(to_turn(input.aim.pitch_deg, turn[1]), -90.0, 90.0), input.aim.roll_deg};
    };
    const auto value = [&](const std::vector<double>& turn) {
        Input turned = input;
        turned.aim = aim_at(turn);
        if (!follow_source(input, source, turned)) return kNotAllowed;
        return now.guessed_gain(aim_edit(index, turned.aim, source)) - kAimDbPerDegree * std::hypot(turn[0], turn[1]);
    };
    std::vector<std::vector<double>> starts{{0.0, 0.0}};
    for (double yaw : {-40.0, -20.0, 20.0, 40.0}) starts.push_back({yaw, 0.0});
    for (double pitch : {-30.0, -15.0, 15.0, 30.0}) starts.push_back({0.0, pitch});
    const Aim best = aim_at(search_largest({-kYawDeg, -kPitchDeg}, {kYawDeg, kPitchDeg}, starts, 30, now.job, value));
    if (best == input.aim) return {};
    Candidate cure;
    cure.kind = CureKind::aim_microphone;
    cure.key = input.id;
    cure.objects = {input.id};
    cure.slot = "aim:" + input.id;
    cure.edit = aim_edit(index, best, source);
    cure.instruction = words("Turn the microphone of {} by {}.", name(input), turn_words(input.aim, best));
    cure.buys = words("The loudspeakers come to lie where it hears least.");
    cure.movement_m = turn_metres(input.aim, best);
    return {cure};
}

}  // namespace howlmap::cures
