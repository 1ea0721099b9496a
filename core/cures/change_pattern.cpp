// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/source.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
constexpr double kPatternDbPerDegree = 0.005;

std::string pattern_words(PatternName pattern) {
    switch (pattern) {
        case PatternName::omni:
            return words("an omni");
        case PatternName::subcardioid:
            return words("a subcardioid");
        case PatternName::cardioid:
            return words("a cardioid");
        case PatternName::supercardioid:
            return words("a supercardioid");
        case PatternName::hypercardioid:
            return words("a hypercardioid");
        case PatternName::figure_8:
            return words("a figure-8");
    }
    return {};
}

Edit pattern_edit(std::size_t index, PatternName pattern, Aim aim, Vec3 source) {
    return [=](Show& show) {
        Input& input = show.inputs[index];
        const Input before = input;
        std::get<Microphone>(input.transducer).pattern = pattern;
        input.aim = aim;
        follow_source(before, source, input);
    };
}

Proposals open_hand(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    Candidate cure;
    cure.kind = CureKind::change_pattern;
    cure.key = input.id;
    cure.objects = {input.id};
    cure.slot = "aim:" + input.id;
    cure.edit = [=](Show& show) { std::get<Microphone>(show.inputs[index].transducer).cupped = false; };
    cure.instruction =
        words("Take the hand off the grille of the microphone of {}: hold it by the shaft.", name(input));
    cure.buys = words("A covered grille hears all around and rings in the upper middle; open it is directional again.");
    return {cure};
}
}  // namespace

Proposals change_pattern(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    const Microphone* microphone = microphone_of(input);
    if (!microphone) return {};
    if (microphone->cupped) return open_hand(now, index);
    const Vec3 source = source_of(now.show, input);
    double most = kNotAllowed;
    PatternName best{};
    Aim best_aim;
    for (const PatternName pattern : {PatternName::subcardioid, PatternName::cardioid, PatternName::supercardioid,
                                      PatternName::hypercardioid, PatternName::figure_8}) {
        if (microphone->pattern == Pattern(pattern)) continue;
        const auto value = [&](const std::vector<double>& turn) {
            Input changed = input;
            std::get<Microphone>(changed.transducer).pattern = pattern;
            changed.aim.yaw_deg = wrap_degrees(std::round(input.aim.yaw_deg + turn[0]));
            changed.aim.pitch_deg = std::round(std::clamp(input.aim.pitch_deg + turn[1], -90.0, 90.0));
            if (!follow_source(input, source, changed)) return kNotAllowed;
            const double gain = now.guessed_gain(pattern_edit(index, pattern, changed.aim, source)) -
                                kPatternDbPerDegree * std::hypot(turn[0], turn[1]);
            if (gain > most) {
                most = gain;
                best = pattern;
                best_aim = changed.aim;
            }
            return gain;
        };
        search_largest({-45.0, -30.0}, {45.0, 30.0}, {{0.0, 0.0}, {-30.0, 0.0}, {30.0, 0.0}, {0.0, -20.0}, {0.0, 20.0}},
                       12, now.job, value);
    }
    if (most <= 0.0) return {};
    Candidate cure;
    cure.kind = CureKind::change_pattern;
    cure.key = input.id;
    cure.objects = {input.id};
    cure.slot = "aim:" + input.id;
    cure.edit = pattern_edit(index, best, best_aim, source);
    const std::string turn = turn_words(input.aim, best_aim);
    cure.instruction = turn.empty()
                           ? words("Give {} {} microphone.", name(input), pattern_words(best))
                           : words("Give {} {} microphone and turn it by {}.", name(input), pattern_words(best), turn);
    const double null_deg =
        first_order_a(best) <= 0.5 ? degrees(std::acos(-first_order_a(best) / (1.0 - first_order_a(best)))) : 180.0;
    cure.buys = words("It hears least {:.0f} deg off its front.", null_deg);
    cure.caution = words("Another microphone sounds different: try it before the show.");
    cure.movement_m = turn_metres(input.aim, best_aim);
    return {cure};
}

}  // namespace howlmap::cures
