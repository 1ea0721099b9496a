// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/loop_part.h"

namespace howlmap {
namespace {
Input loop_part(const Input& input) {
    Input part;
    part.id = input.id;
    part.transducer = input.transducer;
    part.position = input.position;
    part.has_position = input.has_position;
    part.aim = input.aim;
    part.source_spl_db = input.source_spl_db;
    part.polarity = input.polarity;
    part.high_pass = input.high_pass;
    part.equaliser = input.equaliser;
    return part;
}

Loudspeaker loop_part(const Loudspeaker& unit) {
    Loudspeaker part = unit;
    part.name = part.preset = part.notes = "";
    part.kind = {};
    part.max_spl_db.reset();
    return part;
}

Mix loop_part(const Mix& mix) {
    Mix part = mix;
    part.name = "";
    part.number = 1;
    return part;
}
}  // namespace

Show loop_part(const Show& show) {
    Show part;
    part.air = show.air;
    part.system.latency_ms = show.system.latency_ms;
    part.tolerance = show.tolerance;
    part.stage.surfaces = show.stage.surfaces;
    part.stage.room = show.stage.room;
    for (const Riser& riser : show.stage.risers) {
        part.stage.risers.push_back(riser);
        part.stage.risers.back().name = "";
    }
    for (const Loudspeaker& unit : show.loudspeakers) part.loudspeakers.push_back(loop_part(unit));
    for (const Input& input : show.inputs) part.inputs.push_back(loop_part(input));
    for (const Mix& mix : show.mixes) part.mixes.push_back(loop_part(mix));
    return part;
}

}  // namespace howlmap
