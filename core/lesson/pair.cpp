// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lesson/pair.h"

#include <algorithm>

#include "core/show/find.h"

namespace howlmap {
namespace {

const Mix* mix_between(const Show& show, const std::string& input, const std::string& loudspeaker,
                       const std::string& wanted) {
    for (const Mix& mix : show.mixes) {
        if (!wanted.empty() && mix.id != wanted) continue;
        if (find_send(mix, input) && std::ranges::count(mix.loudspeakers, loudspeaker) > 0) return &mix;
    }
    return nullptr;
}

// Takes over what differs between two states of a value.
template <class T>
void follow(T& into, const T& before, const T& after) {
    if (!(before == after)) into = after;
}

void put_back(Input& into, const Input& before, const Input& after, double riser) {
    if (!(before.position == after.position)) into.position = after.position + Vec3{0.0, 0.0, riser};
    follow(into.aim, before.aim, after.aim);
    follow(into.polarity, before.polarity, after.polarity);
    follow(into.source_spl_db, before.source_spl_db, after.source_spl_db);
    follow(into.transducer, before.transducer, after.transducer);
    follow(into.spectrum, before.spectrum, after.spectrum);
}

void put_back(Mix& into, const Mix& before, const Mix& after, const std::string& loudspeaker) {
    if (Send* send = find_send(into, after.sends.front().input))
        follow(send->level_db, before.sends.front().level_db, after.sends.front().level_db);
    follow(into.notches, before.notches, after.notches);
    follow(into.graphic_eq, before.graphic_eq, after.graphic_eq);
    if (after.loudspeakers.empty() && !before.loudspeakers.empty()) std::erase(into.loudspeakers, loudspeaker);
}

}  // namespace

std::optional<Bench> bench_of(const Show& show, const std::string& input, const std::string& loudspeaker,
                              const std::string& mix) {
    const Input* in = find_by_id(show.inputs, input);
    const Loudspeaker* out = find_by_id(show.loudspeakers, loudspeaker);
    const Mix* between = mix_between(show, input, loudspeaker, mix);
    if (!in || !out || !between || is_line(*in)) return std::nullopt;
    Bench bench;
    bench.loudspeaker = loudspeaker;
    bench.show.title = show.title, bench.show.display = show.display;
    bench.show.air = show.air, bench.show.system = show.system;
    bench.show.stage.surfaces.floor = show.stage.surfaces.floor;
    bench.show.inputs = {*in}, bench.show.loudspeakers = {*out}, bench.show.mixes = {*between};
    const double riser = common_riser_height(show.stage, in->position.xy(), out->position.xy());
    bench.show.inputs.front().position.z -= riser;
    bench.show.loudspeakers.front().position.z -= riser;
    bench.show.mixes.front().loudspeakers = {loudspeaker};
    bench.show.mixes.front().sends = {*find_send(*between, input)};
    return bench;
}

void put_back(Show& show, const Bench& before, const Bench& after) {
    Input* in = find_by_id(show.inputs, input_of(after).id);
    Loudspeaker* out = find_by_id(show.loudspeakers, after.loudspeaker);
    const double riser = in && out ? common_riser_height(show.stage, in->position.xy(), out->position.xy()) : 0.0;
    if (in) put_back(*in, input_of(before), input_of(after), riser);
    if (out) {
        if (!(loudspeaker_of(before).position == loudspeaker_of(after).position))
            out->position = loudspeaker_of(after).position + Vec3{0.0, 0.0, riser};
        follow(out->aim, loudspeaker_of(before).aim, loudspeaker_of(after).aim);
    }
    if (Mix* mix = find_by_id(show.mixes, after.show.mixes.front().id))
        put_back(*mix, before.show.mixes.front(), after.show.mixes.front(), after.loudspeaker);
    follow(show.system.latency_ms, before.show.system.latency_ms, after.show.system.latency_ms);
    follow(show.stage.surfaces.floor, before.show.stage.surfaces.floor, after.show.stage.surfaces.floor);
}

}  // namespace howlmap
