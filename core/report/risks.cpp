// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/risks.h"

#include <algorithm>

#include "core/report/check_text.h"
#include "core/report/words.h"
#include "core/show/find.h"
#include "core/units/localised.h"

namespace howlmap::report {
namespace {

template <class... Args>
std::string say(const char* english, const Args&... args) {
    return localised(translate("report", english), args...);
}

std::string how_near(const Show& show, const AnalysisResult& result) {
    const std::string drawn = margin_words(result.margin_db);
    if (!result.tolerance) return say("As drawn, all sends can rise by {} before the stage rings.", drawn);
    const std::string counted = margin_words(result.tolerance->margin_p05_db);
    const double target = show.system.target_margin_db;
    switch (result.verdict) {
        case Verdict::rings:
            return say(
                "This stage is likely to howl as it is set: count on {} of room (as drawn {}). Below 0 dB it howls; "
                "{:g} dB are wanted.",
                counted, drawn, target);
        case Verdict::tight:
            return say("This stage is tight: count on {} before it rings (as drawn {}) where {:g} dB are wanted.",
                       counted, drawn, target);
        case Verdict::holds:
            break;
    }
    return say("This stage holds: count on {} before it rings (as drawn {}), {:g} dB are wanted.", counted, drawn,
               target);
}

std::string what_first(const Show& show, const AnalysisResult& result) {
    const Ring& ring = result.rings.front();
    return say("Set up exactly as drawn, {} ({}) is first to ring: {} back into {} through mix {}.", hz_words(ring.hz),
               ring.note, object_name(show, ring.strongest_loudspeaker), object_name(show, ring.strongest_input),
               object_name(show, ring.strongest_mix));
}

std::string what_to_pull(const Show& show, const AnalysisResult& result) {
    std::vector<std::string> bands;
    if (result.tolerance)
        for (const BandProbability& entry : result.tolerance->first_ring)
            if (bands.size() < 3) bands.push_back(band_words(entry.band_hz));
    if (bands.empty()) bands.push_back(band_words(result.rings.front().band_hz));
    const BandProbability* first =
        result.tolerance && !result.tolerance->first_ring.empty() ? &result.tolerance->first_ring.front() : nullptr;
    if (first && !first->mix.empty())
        return say(
            "No stage is set up exactly: ring out at low level before a monitor goes up, expect {} first, most likely "
            "{} back into {} through mix {}, and keep loudspeakers and microphones where the plan has them.",
            listed(bands), object_name(show, first->loudspeaker), object_name(show, first->input),
            object_name(show, first->mix));
    return say(
        "No stage is set up exactly: ring out at low level before a monitor goes up, expect {} first, and keep "
        "loudspeakers and microphones where the plan has them.",
        listed(bands));
}

}  // namespace

std::vector<std::string> risk_sentences(const Show& show, const AnalysisResult& result) {
    if (result.rings.empty())
        return {result.margin_db ? how_near(show, result)
                                 : translate("report", "No loudspeaker on this stage feeds back into an open input.")};
    return {how_near(show, result), what_first(show, result), what_to_pull(show, result)};
}

std::string what_estimates_leave_out() {
    return translate("report",
                     "They know the drawing alone: no shadows of people and stands, no wall reflecting twice, no "
                     "compressors or notch boxes, nobody who moves.");
}

std::vector<std::string> caution_sentences() {
    return {
        translate("report", "Levels and minutes are estimates for planning, not a measurement of hearing safety."),
        translate("report", "Ring out at low level, hands on the fader, ears protected."),
        translate("report", "Flown loudspeakers, power and grounding belong to licensed people and local codes."),
        translate("report", "Tape over sound holes can mark a finish: test it first, take it off after the show."),
    };
}

}  // namespace howlmap::report
