// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "core/cures/candidate.h"
#include "core/cures/source.h"
#include "core/cures/words.h"

namespace howlmap::cures {
namespace {
constexpr double kLipsM = 0.05, kInstrumentM = 0.10;  // nearest that lips and bows allow (common practice, no source)

double nearest_m(const Input& input) { return input.spectrum == Spectrum(SpectrumName::voice) ? kLipsM : kInstrumentM; }
}  // namespace

Proposals closer_to_source(const Situation& now, std::size_t index) {
    const Input& input = now.input(index);
    if (!microphone_of(input)) return {};
    const Vec3 source = source_of(now.show, input);
    const double metres = length(source - input.position), least = nearest_m(input);
    if (metres < least + 0.02) return {};
    // Inverse square: what is needed, a decibel to spare, to the centimetre.
    const double wanted = metres * std::pow(10.0, -(now.needed_db + 1.0) / 20.0);
    const double left = std::max(least, std::floor(wanted * 100.0) / 100.0);
    const double part = left / metres;
    Candidate cure;
    cure.kind = CureKind::closer_to_source;
    cure.key = input.id;
    cure.objects = {input.id};
    cure.slot = "near:" + input.id;
    cure.edit = [=](Show& show) {
        Input& moved = show.inputs[index];
        const Input before = moved;
        const Vec3 at = source_of(show, moved);
        moved.position = at + (moved.position - at) * part;
        follow_source(before, at, moved);
    };
    Show after = now.show;
    cure.edit(after);
    const double louder = after.inputs[index].source_spl_db - input.source_spl_db;
    cure.instruction =
        words("Bring the microphone of {} from {} to {} from its source, then take its preamplifier down by {:.1f} dB.",
              name(input), length_words(metres, now.units()), length_words(left, now.units()), louder);
    cure.buys = words("The source gets {:.1f} dB louder at the microphone, the loudspeakers do not.", louder);
    cure.caution = words("Directional microphones sound fuller close up; a high-pass may be wanted.");
    cure.movement_m = metres - left;
    return {cure};
}

}  // namespace howlmap::cures
