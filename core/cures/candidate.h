// SPDX-License-Identifier: GPL-3.0-or-later
// What a kind of cure proposes, before it is judged.
#pragma once
#include <functional>
#include <string>
#include <vector>

#include "core/cures/cures.h"
#include "core/cures/guard.h"
#include "core/cures/loudness.h"

namespace howlmap::cures {

/// A change of a show that still has the items of the one it was proposed for, in the same order.
using Edit = std::function<void(Show&)>;

struct Candidate {
    CureKind kind = CureKind::turn_down;
    std::string key;                   ///< id of the main object, or "all"
    std::vector<std::string> objects;  ///< ids, the main one first
    std::string slot;                  ///< two candidates with the same slot exclude each other
    Edit edit;                         ///< without the sends that are set again afterwards
    bool keeps_level = true;           ///< false: sends are not set again (turn down)
    bool blind = false;                ///< the guard cannot see what it does (polarity)
    std::string instruction, buys, caution;
    double movement_m = 0.0;
    double guessed_gain_db = 0.0;   ///< of the soft margin of the guard
    double screened_gain_db = 0.0;  ///< of the margin to count on by a few draws
    double correction_db = 0.0;     ///< what the few draws say more (or less) than the guard
};

/// The show as it is now, and what is known of it.
struct Situation {
    const Show& show;
    const Loudness& loudness;                              ///< of the show that was asked about
    const Guard& guard;                                    ///< of `show`
    double needed_db;                                      ///< margin to count on that is missing; above 0
    std::vector<std::size_t> inputs, loudspeakers, mixes;  ///< that matter in the strongest loops, most important first
    const Job& job;

    Units units() const { return show.display.units; }
    /// The show after an edit, with the sends set again.
    Show after(const Edit& edit) const;
    /// What an edit gains by the soft margin of the guard, dB.
    double guessed_gain(const Edit& edit) const;
    const Input& input(std::size_t at) const { return show.inputs[at]; }
};

/// Situation of a show; only loops that `input` hears matter where it is not empty.
Situation situation_of(const Show& show, const Loudness& loudness, const Guard& guard, double needed_db,
                       const std::string& input, const Job& job);

/// A turn of 90 degrees counts as much movement as half a metre.
double turn_metres(const Aim& from, const Aim& to);

/// Looks for the largest value of a function within bounds: the best of the starts, then a bounded simplex search from
/// there (Subplex, T. Rowan 1990, by NLopt). Values of -1000 and below mean "not allowed".
std::vector<double> search_largest(const std::vector<double>& low, const std::vector<double>& high,
                                   const std::vector<std::vector<double>>& starts, int evaluations, const Job& job,
                                   const std::function<double(const std::vector<double>&)>& value);
inline constexpr double kNotAllowed = -1000.0;

using Proposals = std::vector<Candidate>;
Proposals aim_microphone(const Situation& now, std::size_t input);
Proposals move_microphone(const Situation& now, std::size_t input);
Proposals closer_to_source(const Situation& now, std::size_t input);
Proposals change_pattern(const Situation& now, std::size_t input);
Proposals input_polarity(const Situation& now, std::size_t input);
Proposals cover_sound_holes(const Situation& now, std::size_t input);
Proposals input_high_pass(const Situation& now, std::size_t input);
Proposals move_loudspeaker(const Situation& now, std::size_t loudspeaker);
Proposals aim_loudspeaker(const Situation& now, std::size_t loudspeaker);
Proposals mix_polarity(const Situation& now, std::size_t mix);
Proposals mix_high_pass(const Situation& now, std::size_t mix);
Proposals graphic_bands(const Situation& now);
Proposals narrow_notches(const Situation& now);
Proposals remove_sends(const Situation& now);
Proposals in_ears(const Situation& now);
Proposals turn_down(const Situation& now);

}  // namespace howlmap::cures
