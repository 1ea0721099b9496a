// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of a show file, in the order they are written: one description serves reading and writing, so that the two
// cannot part. `need` is a key that must be there, `may` one whose default is the value's own; rules count when
// reading. Private to core/file.
#pragma once
#include "core/file/rules.h"
#include "core/show/show.h"
#include "core/units/bands.h"

namespace howlmap::file {

template <class Io>
void describe(Io& io, typename Io::template Of<HighPass>& of) {
    io.need("hz", of.hz, limits::kHz);
    io.may("order", of.order, limits::kOrder);
}

template <class Io>
void describe(Io& io, typename Io::template Of<PeakFilter>& of) {
    io.need("hz", of.hz, limits::kHz);
    io.need("q", of.q, limits::kQ);
    io.need("gain_db", of.gain_db, limits::kGain);
}

template <class Io>
void describe(Io& io, typename Io::template Of<ResponsePoint>& of) {
    io.need("hz", of.hz, limits::kHz);
    io.need("db", of.db, limits::kGain);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Response>& of) {
    io.may("low_hz", of.low_hz, limits::kHz);
    io.may("low_order", of.low_order, limits::kOrder);
    io.may("high_hz", of.high_hz, limits::kHz);
    io.may("high_order", of.high_order, limits::kOrder);
    io.list_if_any("table", of.table);
}

template <class Io>
void describe(Io&, typename Io::template Of<Omni>&) {}

template <class Io>
void describe(Io& io, typename Io::template Of<Coverage>& of) {
    io.need("horizontal_deg", of.horizontal_deg, limits::kCoverageAngle);
    io.need("vertical_deg", of.vertical_deg, limits::kCoverageAngle);
    io.need("width_m", of.width_m, limits::kSize);
    io.need("height_m", of.height_m, limits::kSize);
    io.may("floor_db", of.floor_db, limits::kCoverageFloor);
}

template <class Io>
void describe(Io& io, typename Io::template Of<CapOnSphere>& of) {
    io.need("sphere_radius_m", of.sphere_radius_m, limits::kSize);
    io.need("cap_radius_m", of.cap_radius_m, limits::kSize);
}

template <class Io>
void describe(Io& io, typename Io::template Of<DirectivityTable>& of) {
    io.need("angles_deg", of.angles_deg, Rising{limits::kTableAngle});
    io.need("hz", of.hz, Rising{limits::kHz});
    io.need("db", of.db, limits::kGain);
}

struct OnlyTable {};  ///< a microphone's pattern, as an object, can only be a table

template <class Io>
void describe(Io& io, typename Io::template Of<DirectivityTable>& of, OnlyTable) {
    io.only("type", "table");
    describe(io, of);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Directivity>& of) {
    io.alternative("type", of);
    std::visit([&](auto& alternative) { describe(io, alternative); }, of);
}

}  // namespace howlmap::file
