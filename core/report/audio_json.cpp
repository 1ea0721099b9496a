// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/audio_json.h"

#include <nlohmann/json.hpp>

#include "core/report/json_values.h"
#include "core/units/bands.h"
#include "core/units/notes.h"

namespace howlmap {
namespace {
Json json_of(const LoopSuspect& suspect) {
    return {{"input", suspect.input},
            {"loudspeaker", suspect.loudspeaker},
            {"hz", suspect.hz},
            {"margin_db", number(suspect.margin_db)}};
}

Json json_of(const Howl& howl, const std::vector<LoopSuspect>& suspects) {
    const Note note = note_of(howl.hz);
    Json loops = Json::array();
    for (const LoopSuspect& suspect : suspects) loops.push_back(json_of(suspect));
    return {{"hz", howl.hz},
            {"band_hz", kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(howl.hz))]},
            {"note", international_note(howl.hz)},
            {"cents", note.cents},
            {"from_s", howl.from_s},
            {"to_s", howl.to_s},
            {"growth_db_per_s", number(howl.growth_db_per_s)},
            {"level_dbfs", number(howl.level_dbfs)},
            {"loops", loops}};
}
}  // namespace

std::string ring_json(const RingFindings& findings, const SuspectLists& suspects) {
    Json rings = Json::array();
    for (std::size_t i = 0; i < findings.howls.size(); ++i)
        rings.push_back(json_of(findings.howls[i], i < suspects.size() ? suspects[i] : std::vector<LoopSuspect>{}));
    const Json json = {
        {"format", "howlmap-ring"}, {"version", 1}, {"duration_s", findings.duration_s}, {"rings", rings}};
    return json.dump(1) + "\n";
}

std::string tap_json(const TapFindings& findings) {
    Json modes = Json::array();
    for (const TapMode& mode : findings.modes)
        modes.push_back({{"hz", mode.hz}, {"q", mode.q}, {"level_db", mode.level_db}});
    const Json json = {{"format", "howlmap-tap"}, {"version", 1}, {"modes", modes}};
    return json.dump(1) + "\n";
}

std::string hear_json(const HearResult& result) {
    const Json json = {{"format", "howlmap-hear"},
                       {"version", 1},
                       {"margin_db", number(result.margin_db)},
                       {"raised_db", result.raised_db},
                       {"dominant_hz", number(result.dominant_hz)},
                       {"growth_db_per_s", number(result.growth_db_per_s)},
                       {"seconds", result.seconds}};
    return json.dump(1) + "\n";
}

}  // namespace howlmap
