// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/analysis_json.h"

#include <nlohmann/json.hpp>

#include "core/report/json_values.h"
#include "core/units/notes.h"

namespace howlmap {
namespace {
Json json_of(const ToleranceFigures& figures) {
    Json bands = Json::array();
    for (const BandProbability& band : figures.first_ring)
        bands.push_back({{"band_hz", band.band_hz}, {"probability", band.probability}});
    return {{"draws", figures.draws},
            {"seed", figures.seed},
            {"margin_p05_db", number(figures.margin_p05_db)},
            {"margin_p50_db", number(figures.margin_p50_db)},
            {"margin_p95_db", number(figures.margin_p95_db)},
            {"first_ring", bands}};
}

Json json_of(const Ring& ring) {
    Json shares = Json::array();
    for (const Share& share : ring.shares)
        shares.push_back({{"input", share.input}, {"loudspeaker", share.loudspeaker}, {"share", number(share.share)}});
    return {{"hz", ring.hz},
            {"band_hz", ring.band_hz},
            {"note", international_note(ring.hz)},
            {"cents", ring.cents},
            {"margin_db", number(ring.margin_db)},
            {"build_up_db_per_s", number(ring.build_up_db_per_s)},
            {"whole_waves", number(ring.whole_waves)},
            {"turns", number(ring.turns)},
            {"shares", shares}};
}

Json json_of(const PairFigure& pair) {
    return {{"input", pair.input},
            {"loudspeaker", pair.loudspeaker},
            {"mix", pair.mix},
            {"distance_m", pair.distance_m},
            {"microphone_angle_deg", number(pair.microphone_angle_deg)},
            {"loudspeaker_angle_deg", pair.loudspeaker_angle_deg},
            {"worst_hz", number(pair.worst_hz)},
            {"loop_gain_db", number(pair.loop_gain_db)}};
}

Json json_of(const PerformerFigure& figure) {
    return {{"id", figure.id},
            {"ear_dba", number(figure.ear_dba)},
            {"own_dba", number(figure.own_dba)},
            {"others_dba", number(figure.others_dba)},
            {"hear_margin_db", number(figure.hear_margin_db)},
            {"niosh_minutes", number(figure.niosh_minutes)},
            {"osha_minutes", number(figure.osha_minutes)}};
}

Json json_of(const HouseFigure& figure) {
    return {{"id", figure.id},
            {"wash_dba", number(figure.wash_dba)},
            {"against_target_db", number(figure.against_target_db)}};
}

template <class List>
Json list_of(const List& list) {
    Json array = Json::array();
    for (const auto& item : list) array.push_back(json_of(item));
    return array;
}
}  // namespace

std::string analysis_json(const AnalysisResult& result) {
    const Json json = {{"format", "howlmap-analysis"},
                       {"version", 1},
                       {"title", result.title},
                       {"margin_db", number(result.margin_db)},
                       {"worst_phase_margin_db", number(result.worst_phase_margin_db)},
                       {"tolerance", result.tolerance ? json_of(*result.tolerance) : Json(nullptr)},
                       {"verdict", to_string(result.verdict)},
                       {"rings", list_of(result.rings)},
                       {"pairs", list_of(result.pairs)},
                       {"performers", list_of(result.performers)},
                       {"house", list_of(result.house)},
                       {"warnings", result.warnings}};
    return json.dump(1) + "\n";
}

}  // namespace howlmap
