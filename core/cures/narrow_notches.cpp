// SPDX-License-Identifier: GPL-3.0-or-later
// What an automatic notch box does: it waits for the first ring, sets a narrow notch on it, deepens it when it rings
// there again, and stops when it is out of notches.
#include <algorithm>
#include <cmath>
#include <map>

#include "core/cures/candidate.h"
#include "core/cures/words.h"
#include "core/loop/stability.h"
#include "core/show/find.h"

namespace howlmap::cures {
namespace {
// Common practice, no source: a tenth of an octave wide, 3 dB a step down to 9 dB, eight notches.
constexpr double kQ = 14.4, kStepDb = -3.0, kDeepestDb = -9.0;
constexpr int kMostNotches = 8, kMostSteps = 16;
constexpr double kSameNotch = 1.03;  // a ring this close to a notch deepens it

/// The mix whose loudspeakers carry most of the loop gain at a frequency.
std::size_t mix_at(const Guard& guard, double hz) {
    const auto& grid = guard.hz();
    const auto above = std::lower_bound(grid.begin(), grid.end(), hz);
    const auto at = static_cast<std::size_t>(
        std::min<std::ptrdiff_t>(above - grid.begin(), static_cast<std::ptrdiff_t>(grid.size()) - 1));
    std::map<int, double> shares;
    for (const LoopPart& part : guard.parts(at)) shares[part.mix] += part.share;
    const auto most = std::max_element(shares.begin(), shares.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == shares.end() ? 0 : static_cast<std::size_t>(most->first);
}

/// Deepens the notch at a frequency or sets a new one; false when there is nothing left to do there.
bool notch(Mix& mix, double hz, std::size_t first_new, int& notches) {
    for (std::size_t i = first_new; i < mix.notches.size(); ++i) {
        PeakFilter& old = mix.notches[i];
        if (std::max(old.hz, hz) / std::min(old.hz, hz) > kSameNotch) continue;
        if (old.gain_db <= kDeepestDb) return false;
        old.gain_db += kStepDb;
        return true;
    }
    if (notches >= kMostNotches) return false;
    ++notches;
    mix.notches.push_back({std::round(hz), kQ, kStepDb, {}});
    return true;
}

std::string settings(const Show& before, const Show& after) {
    std::string text;
    for (std::size_t m = 0; m < after.mixes.size(); ++m) {
        const Mix& mix = after.mixes[m];
        for (std::size_t i = before.mixes[m].notches.size(); i < mix.notches.size(); ++i) {
            if (i == before.mixes[m].notches.size())
                text += (text.empty() ? "" : "; ") + words("mix {} ({}): ", mix.number, name(mix));
            else
                text += ", ";
            text += localised("{} {:+g} dB", hz_words(mix.notches[i].hz), mix.notches[i].gain_db);
        }
    }
    return text;
}
}  // namespace

Proposals narrow_notches(const Situation& now) {
    Show show = now.show;
    std::optional<double> first;
    int notches = 0;
    for (int step = 0; step < kMostSteps && !now.job.cancelled(); ++step) {
        const Show kept = now.loudness.restored(show);
        const Stability stability = stability_of(kept, false, now.job);
        if (!stability.margin_db) break;
        if (!first) first = stability.margin_db;
        if (*stability.margin_db - *first >= now.needed_db) break;
        const std::size_t m = mix_at(now.guard, *stability.margin_hz);
        if (!notch(show.mixes[m], *stability.margin_hz, now.show.mixes[m].notches.size(), notches)) break;
    }
    if (notches == 0) return {};
    Candidate cure;
    cure.kind = CureKind::narrow_notches;
    cure.key = "all";
    for (std::size_t m = 0; m < show.mixes.size(); ++m)
        if (show.mixes[m].notches != now.show.mixes[m].notches) cure.objects.push_back(show.mixes[m].id);
    cure.slot = "narrow_notches";
    cure.edit = [mixes = show.mixes](Show& changed) {
        for (const Mix& mix : mixes)
            if (Mix* found = find_by_id(changed.mixes, mix.id)) found->notches = mix.notches;
    };
    cure.instruction = words(notches == 1 ? "Set {} notch of Q {:.1f} (a tenth of an octave): {}."
                                          : "Set {} notches of Q {:.1f} (a tenth of an octave): {}.",
                             notches, kQ, settings(now.show, show));
    cure.buys = words("What an automatic notch box would set, ring by ring.");
    cure.caution = words("Narrow notches fit only while nothing moves and the air keeps its temperature.");
    return {cure};
}

}  // namespace howlmap::cures
