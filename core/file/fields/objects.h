// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/file/fields/parts.h"

namespace howlmap::file {

template <class Io>
void describe(Io& io, typename Io::template Of<Loudspeaker>& of) {
    io.need("id", of.id, Filled{});
    io.need("name", of.name);
    io.need("kind", of.kind);
    io.need("position", of.position);
    io.may("yaw_deg", of.aim.yaw_deg, limits::kAngle);
    io.may("pitch_deg", of.aim.pitch_deg, limits::kAngle);
    io.may("roll_deg", of.aim.roll_deg, limits::kAngle);
    io.may("trim_db", of.trim_db, limits::kGain);
    io.may("delay_ms", of.delay_ms, limits::kMilliseconds);
    io.may("polarity", of.polarity);
    io.part_if_any("response", of.response);
    io.need_part("directivity", of.directivity);
    io.may("max_spl_db", of.max_spl_db, NullOr{limits::kLevel});
    io.may("preset", of.preset);
    io.may("notes", of.notes);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Microphone>& of) {
    io.need("pattern", of.pattern);
    io.may("cupped", of.cupped);
    io.part_if_any("response", of.response);
}

template <class Io>
void describe(Io& io, typename Io::template Of<BodyMode>& of) {
    io.need("hz", of.hz, limits::kHz);
    io.need("q", of.q, limits::kQ);
    io.need("gain_db", of.gain_db, limits::kGain);
    io.may("air", of.air);
    io.may("name", of.name);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Pickup>& of) {
    io.need("isolation_db", of.isolation_db, limits::kGain);
    io.may("baseline_db", of.baseline_db, limits::kGain);
    io.may("holes_covered", of.holes_covered);
    io.may("cover_db", of.cover_db, limits::kGain);
    io.list_if_any("modes", of.modes);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Input>& of) {
    io.need("id", of.id, Filled{});
    io.need("channel", of.channel, limits::kNumber);
    io.need("name", of.name);
    io.alternative("kind", of.transducer);
    if (is_line(of)) io.note_presence("position", of.has_position);
    if (of.has_position) io.need("position", of.position);
    io.may("yaw_deg", of.aim.yaw_deg, limits::kAngle);
    io.may("pitch_deg", of.aim.pitch_deg, limits::kAngle);
    io.may("source_spl_db", of.source_spl_db, limits::kLevel);
    io.may("performer", of.performer);
    io.may("polarity", of.polarity);
    io.part("high_pass", of.high_pass);
    io.list_if_any("equaliser", of.equaliser);
    io.may("spectrum", of.spectrum);
    if (auto* microphone = std::get_if<Microphone>(&of.transducer)) io.need_part("microphone", *microphone);
    if (auto* pickup = std::get_if<Pickup>(&of.transducer)) io.need_part("pickup", *pickup);
    io.may("stand", of.stand);
    io.may("phantom", of.phantom);
    io.may("di", of.di);
    io.may("notes", of.notes);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Performer>& of) {
    io.need("id", of.id, Filled{});
    io.need("name", of.name);
    io.need("position", of.position);
    io.may("ear_height_m", of.ear_height_m, limits::kSize);
    io.may("yaw_deg", of.yaw_deg, limits::kAngle);
    io.may("hears", of.hears);
    io.may("mix", of.mix);
    io.may("seal_db", of.seal_db, limits::kGain);
    io.may("own_acoustic_dba", of.own_acoustic_dba, NullOr{limits::kLevel});
    io.may("notes", of.notes);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Send>& of) {
    io.need("input", of.input, Filled{});
    io.need("level_db", of.level_db, limits::kLevel);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Mix>& of) {
    io.need("id", of.id, Filled{});
    io.need("number", of.number, limits::kNumber);
    io.need("name", of.name);
    io.need("loudspeakers", of.loudspeakers);
    io.list("sends", of.sends, limits::kInputs);
    io.may("graphic_eq", of.graphic_eq, Bands{kNominalThirdOctaves, limits::kGain, true});
    io.list_if_any("notches", of.notches);
    io.part("high_pass", of.high_pass);
    io.may("polarity", of.polarity);
    io.may("delay_ms", of.delay_ms, limits::kMilliseconds);
}

}  // namespace howlmap::file
