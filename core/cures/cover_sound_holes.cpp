// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/words.h"
#include "core/loop/chain.h"

namespace howlmap::cures {
namespace {
const BodyMode* strongest_mode(const Pickup& pickup, bool covered) {
    Pickup body = pickup;
    body.holes_covered = covered;
    const BodyBank bank = body_bank(body);
    const auto by_size = [&](const BodyMode& a, const BodyMode& b) {
        return std::abs(bank.at(a.hz)) < std::abs(bank.at(b.hz));
    };
    const auto most = std::max_element(pickup.modes.begin(), pickup.modes.end(), by_size);
    return most == pickup.modes.end() ? nullptr : &*most;
}

std::string mode_words(const BodyMode& mode) {
    return mode.name.empty() ? hz_words(mode.hz) : words("{} at {}", mode.name, hz_words(mode.hz));
}
}  // namespace

Proposals cover_sound_holes(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    const Pickup* pickup = pickup_of(input);
    if (!pickup || pickup->holes_covered ||
        std::none_of(pickup->modes.begin(), pickup->modes.end(), [](const BodyMode& m) { return m.air; }))
        return {};
    Candidate cure;
    cure.kind = CureKind::cover_sound_holes;
    cure.key = input.id;
    cure.objects = {input.id};
    cure.slot = "holes:" + input.id;
    cure.edit = [index](Show& show) { std::get<Pickup>(show.inputs[index].transducer).holes_covered = true; };
    cure.instruction = words("Cover the sound holes of {}.", name(input));
    const BodyMode *before = strongest_mode(*pickup, false), *left = strongest_mode(*pickup, true);
    cure.buys = words("Its strongest mode is {} now; with the holes covered {} is left as the strongest.",
                      mode_words(*before), mode_words(*left));
    cure.caution = words(
        "Tape or a plug can mark a finish: test it where it does not show, and take it off after the show. How much "
        "covering takes is an estimate ({:.0f} dB).",
        pickup->cover_db);
    return {cure};
}

}  // namespace howlmap::cures
