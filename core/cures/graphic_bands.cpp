// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/band_solver.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
std::string band_words(int band) {
    const double hz = kNominalThirdOctaves[static_cast<std::size_t>(band)];
    return hz < 1000.0 ? localised("{:g} Hz", hz) : localised("{:g} kHz", hz / 1000.0);
}

/// "Mix 1 (Ada): 1.6 kHz -3 dB, 2 kHz -1.5 dB. Mix 2 ..": the new settings of the faders that move.
std::string settings(const Situation& now, const BandCuts& cuts) {
    Show after = now.show;
    apply_cuts(after, cuts);
    std::string text;
    std::size_t last = now.show.mixes.size();
    for (const auto& [key, cut] : cuts) {
        const Mix& mix = after.mixes[key.first];
        if (key.first != last)
            text += (text.empty() ? "" : "; ") + words("mix {} ({}): ", mix.number, name(mix));
        else
            text += ", ";
        text += localised("{} {:+g} dB", band_words(key.second), mix.graphic_eq.at(key.second));
        last = key.first;
    }
    return text;
}
}  // namespace

Candidate band_cure(const Situation& now, const BandCuts& cuts) {
    Candidate cure;
    cure.kind = CureKind::graphic_bands;
    cure.key = "all";
    for (const auto& [key, cut] : cuts)
        if (cure.objects.empty() || cure.objects.back() != now.show.mixes[key.first].id)
            cure.objects.push_back(now.show.mixes[key.first].id);
    cure.slot = "graphic_bands";
    cure.edit = [cuts](Show& show) { apply_cuts(show, cuts); };
    cure.instruction = words("Set the graphic equaliser of {}.", settings(now, cuts));
    cure.buys = cuts.size() == 1
                    ? words("The smallest cut that buys it; every other fader stays.")
                    : words("The smallest cuts that buy it: {} faders move, every other stays.", cuts.size());
    return cure;
}

Proposals graphic_bands(const Situation& now) {
    const BandCuts cuts = smallest_cuts(now, now.needed_db);
    if (cuts.empty()) return {};
    return {band_cure(now, cuts)};
}

}  // namespace howlmap::cures
