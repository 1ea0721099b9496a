// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
// The steps that are printed beside low cuts.
constexpr std::array<double, 10> kCorners = {40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 315.0};
constexpr double kMostToneDb = 2.0;

/// The corner and slope with the most gain for its cost in tone. `set` puts a high-pass into a show.
struct Best {
    HighPass filter;
    double value = 0.0;
};

template <class Set>
Best best_high_pass(const Situation& now, const std::optional<HighPass>& old, const Set& set) {
    Best best;
    const double tone_now = now.loudness.tone_cost_db(now.show);
    for (const double hz : kCorners)
        for (const int order : {2, 4}) {
            if (now.job.cancelled()) return best;
            if (old && hz <= old->hz && order <= old->order) continue;
            HighPass filter = old.value_or(HighPass{});
            filter.hz = old ? std::max(hz, old->hz) : hz;
            filter.order = old ? std::max(order, old->order) : order;
            const Show after = now.after([&](Show& show) { set(show, filter); });
            const double tone = now.loudness.tone_cost_db(after) - tone_now;
            if (tone > kMostToneDb) continue;
            const double value = now.guard.changed(after).soft_margin_db() - now.guard.soft_margin_db() - tone;
            if (value > best.value + 0.05) best = {filter, value};
        }
    return best;
}

Candidate cure_for(const std::string& id, const HighPass& filter, const std::string& where) {
    Candidate cure;
    cure.kind = CureKind::high_pass;
    cure.key = id;
    cure.objects = {id};
    cure.slot = "high_pass:" + id;
    cure.instruction =
        words("Set the high-pass of {} to {}, {} dB an octave.", where, hz_words(filter.hz), 6 * filter.order);
    cure.buys = words(
        "Little of this sound lies below, but much can ring there. Listen whether its lowest notes keep their weight.");
    return cure;
}
}  // namespace

Proposals input_high_pass(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    const auto set = [index](Show& show, const HighPass& filter) { show.inputs[index].high_pass = filter; };
    const Best best = best_high_pass(now, input.high_pass, set);
    if (best.value <= 0.0) return {};
    Candidate cure = cure_for(input.id, best.filter, words("channel {} ({})", input.channel, name(input)));
    cure.edit = [set, filter = best.filter](Show& show) { set(show, filter); };
    return {cure};
}

Proposals mix_high_pass(const Situation& now, std::size_t index) {
    const Mix& mix = now.show.mixes[index];
    if (mix.sends.size() < 2) return {};  // the low cut of its one input does the same
    const auto set = [index](Show& show, const HighPass& filter) { show.mixes[index].high_pass = filter; };
    const Best best = best_high_pass(now, mix.high_pass, set);
    if (best.value <= 0.0) return {};
    Candidate cure = cure_for(mix.id, best.filter, words("mix {} ({})", mix.number, name(mix)));
    cure.edit = [set, filter = best.filter](Show& show) { set(show, filter); };
    return {cure};
}

}  // namespace howlmap::cures
