// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/words.h"
#include "core/listening/listening.h"

namespace howlmap::cures {
namespace {
Edit turn_down_edit(double db) {
    return [db](Show& show) {
        for (Mix& mix : show.mixes) {
            if (mix.loudspeakers.empty()) continue;
            for (Send& send : mix.sends) send.level_db = std::max(-60.0, send.level_db - db);
        }
    };
}

/// What it does to the house and to the hour: the loudest place and the loudest ear.
std::string house_and_hour(const Show& before, const Show& after) {
    std::string text;
    const auto house = house_figures(before), quieter = house_figures(after);
    std::size_t most = 0;
    for (std::size_t i = 1; i < house.size(); ++i)
        if (house[i].wash_dba.value_or(-1e9) > house[most].wash_dba.value_or(-1e9)) most = i;
    if (!house.empty() && house[most].wash_dba && quieter[most].wash_dba)
        text = words("The wash at {} falls from {:.1f} to {:.1f} dBA. ", name(before.listeners[most]),
                     *house[most].wash_dba, *quieter[most].wash_dba);
    const auto ears = performer_figures(before), relieved = performer_figures(after);
    std::size_t loudest = 0;
    for (std::size_t i = 1; i < ears.size(); ++i)
        if (ears[i].ear_dba.value_or(-1e9) > ears[loudest].ear_dba.value_or(-1e9)) loudest = i;
    if (!ears.empty() && ears[loudest].niosh_minutes && relieved[loudest].niosh_minutes)
        text += words("{} may stay at it for {:.0f} minutes instead of {:.0f} (NIOSH, an estimate for planning).",
                      name(before.performers[loudest]), *relieved[loudest].niosh_minutes, *ears[loudest].niosh_minutes);
    return text;
}
}  // namespace

Proposals turn_down(const Situation& now) {
    const double db = std::ceil(now.needed_db * 10.0 - 1e-6) / 10.0;
    Candidate cure;
    cure.kind = CureKind::turn_down;
    cure.key = "all";
    for (const Mix& mix : now.show.mixes)
        if (!mix.loudspeakers.empty() && !mix.sends.empty()) cure.objects.push_back(mix.id);
    if (cure.objects.empty()) return {};
    cure.slot = "turn_down";
    cure.edit = turn_down_edit(db);
    cure.keeps_level = false;
    cure.guessed_gain_db = db;
    cure.instruction = words("Turn every send to a loudspeaker down by {:.1f} dB.", db);
    Show after = now.show;
    cure.edit(after);
    cure.buys = house_and_hour(now.show, after);
    cure.caution =
        words("Everybody on loudspeakers hears the mixes that much quieter; the acoustic instruments stay as loud.");
    return {cure};
}

}  // namespace howlmap::cures
