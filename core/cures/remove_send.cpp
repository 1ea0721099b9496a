// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <set>

#include "core/cures/candidate.h"
#include "core/cures/words.h"
#include "core/show/find.h"

namespace howlmap::cures {
namespace {
constexpr double kLeastLoopPart = 0.02;
constexpr double kMattersToSendDb = 6.0;

/// Whether a listener of a mix plays or sings an input: then it is needed there.
bool needed(const Show& show, const Mix& mix, const Input& input) {
    return std::any_of(show.performers.begin(), show.performers.end(), [&](const Performer& performer) {
        return performer.mix == mix.id && performer.hears != Hears::acoustic && performer.id == input.performer;
    });
}

/// Whether a mix is for the audience: then everything in it is needed.
bool for_the_house(const Show& show, const Mix& mix) {
    return std::any_of(mix.loudspeakers.begin(), mix.loudspeakers.end(), [&](const std::string& id) {
        const Loudspeaker* unit = find_by_id(show.loudspeakers, id);
        return unit && !makes_wash(unit->kind);
    });
}

Candidate cure_for(const Situation& now, const Mix& mix, const Input& input) {
    Candidate cure;
    cure.kind = CureKind::remove_send;
    cure.key = input.id + ":" + mix.id;
    cure.objects = {mix.id, input.id};
    cure.slot = "send:" + cure.key;
    cure.edit = [mix_id = mix.id, input_id = input.id](Show& show) {
        if (Mix* found = find_by_id(show.mixes, mix_id))
            std::erase_if(found->sends, [&](const Send& send) { return send.input == input_id; });
    };
    cure.instruction = words("Take {} out of mix {} ({}).", name(input), mix.number, name(mix));
    cure.buys = words("A microphone that is not in a mix cannot ring with its loudspeaker.");
    cure.guessed_gain_db = now.guessed_gain(cure.edit);
    return cure;
}
}  // namespace

Proposals remove_sends(const Situation& now) {
    std::set<std::pair<int, int>> sends;
    for (std::size_t at = 0; at < now.guard.hz().size(); ++at) {
        if (now.guard.gains_db()[at] < -now.guard.margin_db() - kMattersToSendDb) continue;
        for (const LoopPart& part : now.guard.parts(at))
            if (part.share >= kLeastLoopPart) sends.insert({part.mix, part.source});
    }
    Proposals all;
    for (const auto& [m, c] : sends) {
        const Mix& mix = now.show.mixes[static_cast<std::size_t>(m)];
        const Input& input = now.show.inputs[static_cast<std::size_t>(c)];
        if (needed(now.show, mix, input) || for_the_house(now.show, mix) || now.job.cancelled()) continue;
        all.push_back(cure_for(now, mix, input));
    }
    return all;
}

}  // namespace howlmap::cures
