// SPDX-License-Identifier: GPL-3.0-or-later
// What to do about feedback, always at equal loudness: after each cure the sends are set again so that every listener
// hears the same level of the same inputs as before. Only `turn_down` may take level, and a cure that cannot keep the
// level says what is lost.
#pragma once
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/show/change.h"
#include "core/show/show.h"
#include "core/units/job.h"

namespace howlmap {

enum class CureKind {
    aim_microphone,
    move_microphone,
    closer_to_source,
    change_pattern,
    move_loudspeaker,
    aim_loudspeaker,
    graphic_bands,
    narrow_notches,
    high_pass,
    input_polarity,
    mix_polarity,
    cover_sound_holes,
    remove_send,
    in_ears,
    turn_down
};

/// The word of the JSON form: "aim_microphone" ..
const char* to_string(CureKind kind);
/// All fifteen, in the order above.
const std::vector<CureKind>& all_cure_kinds();

/// One value of the show file that a cure changes. `from` and `to` are JSON texts; "null" where there was or will be
/// nothing.
struct ChangedValue {
    std::string pointer;  ///< JSON pointer into the file: "/inputs/3/yaw_deg"
    std::string from, to;
    friend bool operator==(const ChangedValue&, const ChangedValue&) = default;
};

/// Margins of a show in dB; absent where nothing rings above -60 dB.
struct Margins {
    std::optional<double> margin_db;      ///< as drawn
    std::optional<double> margin_p05_db;  ///< to count on
};

/// The ring that is the first after a cure.
struct WorstAfter {
    double hz = 0.0;
    std::string note;
};

/// One cure, or one step of a plan, judged by the full analysis of the changed show.
struct Cure {
    std::string id;  ///< stable for the same show: "aim_microphone:voice"
    CureKind kind = CureKind::turn_down;
    std::string instruction;           ///< what to do, in words with numbers in the units of the show
    std::string buys;                  ///< what it changes and what is left, one or two sentences
    std::string loses;                 ///< what cannot be kept ("Bea hears 1.2 dB less of bass"); empty: nothing
    std::string caution;               ///< empty: none
    std::vector<std::string> objects;  ///< ids of what is touched, the main one first
    Show after;
    Change change;  ///< from the show that was asked about (for a step: from the step before) to `after`
    std::vector<ChangedValue> changes;  ///< the same, for the file
    Margins margins_after;
    std::optional<double> margin_gain_db;    ///< as drawn; absent where one side has no loop
    std::optional<double> count_on_gain_db;  ///< absent where one side has no loop
    double tone_cost_db = 0.0;        ///< rms change of tone over the third-octaves of the own spectra, worst listener
    double loudness_change_db = 0.0;  ///< largest change of an input's level at an ear that hears it by her mix, signed
    std::optional<WorstAfter> worst_after;  ///< absent: nothing rings
    double trouble = 0.0;                   ///< see TroubleWeights
    double movement_m = 0.0;                ///< how far things travel, a turn of 90 degrees counting as 0.5 m
    double score = 0.0;                     ///< dB to count on per unit of trouble and tone; the ranking
};

/// What a cure costs besides tone, in units of "as much trouble as 1 dB of tone" (common practice, no source), >= 0.
/// Editable. An infinite trouble for a kind: it cannot be done here, so it is neither offered nor planned.
struct TroubleWeights {
    double tone_per_db = 1.0;
    double aim_microphone = 0.3, move_microphone = 0.8, closer_to_source = 0.4, change_pattern = 1.0;
    double move_loudspeaker = 0.8, aim_loudspeaker = 0.4;
    double graphic_bands = 0.4, narrow_notches = 0.6, high_pass = 0.2;
    double input_polarity = 0.1, mix_polarity = 0.1;
    double cover_sound_holes = 0.8, remove_send = 1.0, in_ears = 4.0, turn_down = 1.0;
    double per_metre = 0.5;    ///< for each metre that something travels
    double per_send = 0.05;    ///< for each send that has to be set again
    double per_lost_db = 1.0;  ///< for each dB that a listener loses or gains
    double of(CureKind kind) const;
    bool offers(CureKind kind) const;
    void set(CureKind kind, double trouble);
};

struct CureOptions {
    std::string input;  ///< only cures for the loops that this input hears; empty: all
    TroubleWeights weights;
    std::size_t most_cures = 10;    ///< reported at most
    bool plan = true;               ///< find_cures only; false: no plan
    std::optional<Margins> before;  ///< of the show, where they are known already: saves working them out
};

struct Plan {
    std::vector<Cure> steps;  ///< in the order to do them, each judged after the ones before it
    Margins after;
    Show show;  ///< with all steps applied
    bool reaches_target = false;
    std::string reason;  ///< when it does not: what limits
};

struct CureReport {
    double target_db = 6.0;
    Margins before;
    std::vector<Cure> cures;  ///< best first
    Plan plan;
};

/// Called for each cure as soon as it is judged, in no particular order; may come from any thread, one call at a time.
using CureFound = std::function<void(const Cure&)>;

/// Ranked cures and the plan for a show that passed the reader. Absent only when the job was cancelled.
/// A show that reaches its target gets cures too and an empty plan that says so.
std::optional<CureReport> find_cures(const Show& show, const CureOptions& options = {}, const Job& job = {},
                                     const CureFound& found = {});

/// Only the plan. Absent only when the job was cancelled.
std::optional<Plan> make_plan(const Show& show, const CureOptions& options = {}, const Job& job = {});

}  // namespace howlmap
