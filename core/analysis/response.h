// SPDX-License-Identifier: GPL-3.0-or-later
// Loop gain over frequency: of all loops together, or of a part of them as if it were alone.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/show/show.h"
#include "core/units/job.h"

namespace howlmap {

/// Which loops are open. Ids; empty: all. An input stays open only where it is sent; a pair is an input with a
/// loudspeaker.
struct OpenLoops {
    std::string input, loudspeaker, mix;
    bool all() const { return input.empty() && loudspeaker.empty() && mix.empty(); }
    friend bool operator==(const OpenLoops&, const OpenLoops&) = default;
};

/// Loop gains in dB by frequency; a value below -200 dB is given as -200 dB. 0 dB where every round gives back as much
/// as it took.
struct LoopResponse {
    std::vector<double> hz;              ///< rising, 20 Hz .. 20 kHz
    std::vector<double> gain_db;         ///< largest modulus among the eigenvalues of the loop matrix
    std::vector<double> worst_phase_db;  ///< Perron root of its magnitudes: if every phase falls badly
};

/// At 85 frequencies an octave or more; gains of the paths are right to a few hundredths of a decibel there. `also_at`:
/// frequencies in Hz to evaluate exactly, e.g. of rings, so that no peak is missed; those outside 20 Hz .. 20 kHz are
/// left out. Absent only when the job was cancelled. Empty lists where no loop is open.
std::optional<LoopResponse> loop_response(const Show& show, const OpenLoops& open = {},
                                          const std::vector<double>& also_at = {}, const Job& job = {});

/// How far the largest modulus spreads over stages set up by hand: percentiles over the first draws of the show's
/// tolerance.
struct ResponseBand {
    int draws = 0;
    std::vector<double> hz;
    std::vector<double> p05_db, p95_db;  ///< 5th and 95th percentile at each frequency
};

/// `draws` is held at the show's own number of draws. Absent only when the job was cancelled.
std::optional<ResponseBand> response_band(const Show& show, const OpenLoops& open = {}, int draws = 64,
                                          int per_octave = 24, const Job& job = {});

/// A show in which only these loops are open: sends of other inputs, other mixes and other loudspeakers are taken out.
Show with_only(const Show& show, const OpenLoops& open);

/// Frequencies from 20 Hz to 20 kHz, evenly on a logarithmic scale, rising. Given: 1 an octave or more.
std::vector<double> response_frequencies(int per_octave);

}  // namespace howlmap
