// SPDX-License-Identifier: GPL-3.0-or-later
// Ringing a stage out: how deep a cut has to be and no deeper.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/units/job.h"

namespace howlmap {

enum class CutWith { graphic_band, notch };
inline constexpr double kCutNotchQ = 8.0;  ///< of the notches made here (common practice, no source)

/// A cut at a frequency that was heard ringing.
struct RingOutCut {
    double cut_db = 0.0;       ///< 0 or below, half decibels, to be added to what is set
    double needed_db = 0.0;    ///< what alone would bring the next ring as near; smaller than the least step if the
                               ///< loops have many peaks of much the same height
    double next_hz = 0.0;      ///< what comes next then, by the largest loop gain; 0: nothing
    bool by_drawing = false;   ///< false: the drawing has something else nearer, so kLeastCut
    bool levels_with = false;  ///< whether the cut is enough for the next ring to be as near
};

/// A cut smaller than this is not worth the walk to the equaliser, dB (common practice, no source).
inline constexpr double kLeastCut = 3.0;

/// The smallest cut in a mix after which the loops near hz (within a sixth of an octave) are no stronger than anywhere
/// else, phases aside, but no smaller than kLeastCut; at most 12 dB and never below -15 dB on a band. Absent when
/// cancelled or the mix is not there.
std::optional<RingOutCut> smallest_ring_out_cut(const Show& show, const std::string& mix, double hz, CutWith with,
                                                const Job& job = {});
/// Adds it to the mix's equaliser: to the band that holds hz, or to a notch within 2 % of hz, else as a new one.
void apply_ring_out_cut(Show& show, const std::string& mix, double hz, CutWith with, double cut_db);

/// The mix that most likely carries a loop: of those that feed the loudspeaker the one with the loudest send of the
/// input, else the first that has the loudspeaker. Empty: none.
std::string mix_between(const Show& show, const std::string& input, const std::string& loudspeaker);

}  // namespace howlmap
