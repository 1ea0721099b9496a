// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/file/fields/objects.h"
#include "core/file/fields/stage.h"

namespace howlmap::file {

template <class Io>
void describe(Io& io, typename Io::template Of<Contact>& of) {
    io.may("name", of.name);
    io.may("phone", of.phone);
    io.may("email", of.email);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Display>& of) {
    io.may("units", of.units);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Air>& of) {
    io.may("temperature_c", of.temperature_c, limits::kTemperature);
    io.may("humidity_pct", of.humidity_pct, limits::kHumidity);
    io.may("pressure_kpa", of.pressure_kpa, limits::kPressure);
}

template <class Io>
void describe(Io& io, typename Io::template Of<System>& of) {
    io.may("latency_ms", of.latency_ms, limits::kMilliseconds);
    io.may("target_margin_db", of.target_margin_db, limits::kGain);
    io.may("house_target_dba", of.house_target_dba, limits::kLevel);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Tolerance>& of) {
    io.may("draws", of.draws, limits::kDraws);
    io.may("seed", of.seed);
    io.may("position_m", of.position_m, limits::kSpreadPosition);
    io.may("aim_deg", of.aim_deg, limits::kSpreadAngle);
    io.may("send_db", of.send_db, limits::kSpreadGain);
    io.may("temperature_c", of.temperature_c, limits::kSpreadTemperature);
    io.may("phase_deg", of.phase_deg, limits::kSpreadAngle);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Backline>& of) {
    io.need("id", of.id, Filled{});
    io.need("name", of.name);
    io.need("kind", of.kind);
    io.need("position", of.position);
    io.may("level_1m_dba", of.level_1m_dba, limits::kLevel);
    io.may("spectrum", of.spectrum);
    io.may("notes", of.notes);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Listener>& of) {
    io.need("id", of.id, Filled{});
    io.need("name", of.name);
    io.need("position", of.position);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Mark>& of) {
    io.need("id", of.id, Filled{});
    io.need("kind", of.kind);
    io.need("position", of.position);
    io.may("yaw_deg", of.yaw_deg, limits::kAngle);
    io.may("text", of.text);
}

template <class Io>
void describe(Io& io, typename Io::template Of<SoundcheckEntry>& of) {
    io.need("hz", of.hz, limits::kHz);
    io.need("band", of.band, limits::kHz);
    io.may("input", of.input);
    io.may("mix", of.mix);
    io.may("action", of.action);
    io.may("gain_db", of.gain_db, limits::kGain);
    io.may("time", of.time);
    io.may("note", of.note);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Show>& of) {
    io.only("format", kFormat);
    io.version();
    io.may("title", of.title);
    io.may("venue", of.venue);
    io.may("date", of.date, IsoDate{});
    io.may("act", of.act);
    io.part("contact", of.contact);
    io.may("notes", of.notes);
    io.part("display", of.display);
    io.part("air", of.air);
    io.part("system", of.system);
    io.part("tolerance", of.tolerance);
    io.need_part("stage", of.stage);
    io.list("loudspeakers", of.loudspeakers, limits::kLoudspeakers);
    io.list("inputs", of.inputs, limits::kInputs);
    io.list("performers", of.performers, limits::kObjects);
    io.list("mixes", of.mixes, limits::kMixes);
    io.list("backline", of.backline, limits::kObjects);
    io.list("listeners", of.listeners, limits::kObjects);
    io.list("marks", of.marks, limits::kObjects);
    io.list("soundcheck", of.soundcheck, SIZE_MAX);
}

}  // namespace howlmap::file
