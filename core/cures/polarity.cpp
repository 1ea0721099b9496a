// SPDX-License-Identifier: GPL-3.0-or-later
// Turning a polarity moves every ring of its loops by half a wave: the worst may land where there is less gain.
#include "core/cures/candidate.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
Polarity turned(Polarity polarity) { return polarity == Polarity::normal ? Polarity::inverted : Polarity::normal; }

Candidate polarity_cure(CureKind kind, const std::string& id) {
    Candidate cure;
    cure.kind = kind;
    cure.key = id;
    cure.objects = {id};
    cure.slot = "polarity:" + id;
    cure.blind = true;
    cure.buys =
        words("Every ring of these loops moves half a wave along; between the old ones there may be less gain.");
    cure.caution = words(
        "It holds only where things stand as drawn: a step or another wedge undoes it. Listen for low notes that get "
        "thin.");
    return cure;
}
}  // namespace

Proposals input_polarity(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    if (is_line(input)) return {};
    Candidate cure = polarity_cure(CureKind::input_polarity, input.id);
    cure.edit = [index](Show& show) { show.inputs[index].polarity = turned(show.inputs[index].polarity); };
    cure.instruction = words("Press the polarity switch of channel {} ({}).", input.channel, name(input));
    return {cure};
}

Proposals mix_polarity(const Situation& now, std::size_t index) {
    const Mix& mix = now.show.mixes[index];
    if (mix.sends.size() < 2) return {};  // the switch of its one input does the same
    Candidate cure = polarity_cure(CureKind::mix_polarity, mix.id);
    cure.edit = [index](Show& show) { show.mixes[index].polarity = turned(show.mixes[index].polarity); };
    cure.instruction = words("Turn the polarity of mix {} ({}).", mix.number, name(mix));
    return {cure};
}

}  // namespace howlmap::cures
