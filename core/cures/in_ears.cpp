// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <set>

#include "core/cures/candidate.h"
#include "core/cures/words.h"
#include "core/show/find.h"

namespace howlmap::cures {
namespace {
std::size_t listeners(const Show& show, const std::string& mix) {
    return static_cast<std::size_t>(std::count_if(
        show.performers.begin(), show.performers.end(),
        [&](const Performer& performer) { return performer.mix == mix && performer.hears != Hears::acoustic; }));
}

std::string free_id(const Show& show, const std::string& base) {
    std::string id = base;
    for (int number = 2; find_by_id(show.mixes, id); ++number) id = base + "-" + std::to_string(number);
    return id;
}

int free_number(const Show& show) {
    int most = 0;
    for (const Mix& mix : show.mixes) most = std::max(most, mix.number);
    return most + 1;
}

/// In-ears for one player. Her loudspeakers go silent when nobody else hears her mix; otherwise she gets a copy of it
/// of her own.
Edit in_ear_edit(const std::string& performer_id) {
    return [performer_id](Show& show) {
        Performer* player = find_by_id(show.performers, performer_id);
        Mix* mix = player ? find_by_id(show.mixes, player->mix) : nullptr;
        if (!mix) return;
        if (listeners(show, mix->id) <= 1) {
            mix->loudspeakers.clear();
        } else {
            Mix own = *mix;
            own.id = free_id(show, mix->id + "-in-ear");
            own.number = free_number(show);
            own.name = words("{} in-ear", name(*player));
            own.loudspeakers.clear();
            player->mix = own.id;
            show.mixes.push_back(own);
        }
        player->hears = Hears::in_ear;
    };
}

std::string gone_and_left(const Situation& now, const Mix& mix, bool alone) {
    std::set<std::string> heard;
    for (const LoopPart& part : now.guard.parts(now.guard.strongest()))
        if (part.share >= 0.05 && now.show.mixes[static_cast<std::size_t>(part.mix)].id != mix.id)
            heard.insert(name(now.show.loudspeakers[static_cast<std::size_t>(part.loudspeaker)]));
    std::string left;
    for (const std::string& one : heard) left += (left.empty() ? "" : ", ") + one;
    const std::string gone = alone ? words("All loops through mix {} vanish.", mix.number)
                                   : words("Mix {} stays on for those who share it.", mix.number);
    return left.empty() ? gone : gone + " " + words("Left in the worst loop: {}.", left);
}
}  // namespace

Proposals in_ears(const Situation& now) {
    Proposals all;
    for (const Performer& player : now.show.performers) {
        const Mix* mix = player.hears == Hears::loudspeakers ? find_by_id(now.show.mixes, player.mix) : nullptr;
        if (!mix || mix->loudspeakers.empty() || now.job.cancelled()) continue;
        Candidate cure;
        cure.kind = CureKind::in_ears;
        cure.key = player.id;
        cure.objects = {player.id, mix->id};
        cure.slot = "ears:" + player.id;
        cure.edit = in_ear_edit(player.id);
        cure.guessed_gain_db = now.guessed_gain(cure.edit);
        if (cure.guessed_gain_db <= 0.0) continue;
        cure.instruction =
            words("Give {} in-ears on mix {} and switch its loudspeakers off.", name(player), mix->number);
        if (listeners(now.show, mix->id) > 1)
            cure.instruction = words("Give {} in-ears with a mix of her own.", name(player));
        cure.buys = gone_and_left(now, *mix, listeners(now.show, mix->id) <= 1);
        cure.caution = words(
            "In-ears can be far too loud without anybody hearing it: start low, use a limiter, keep both ears in.");
        all.push_back(cure);
    }
    return all;
}

}  // namespace howlmap::cures
