// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/file/fields/parts.h"

namespace howlmap::file {

template <class Io>
void describe(Io& io, typename Io::template Of<Riser>& of) {
    io.need("id", of.id, Filled{});
    io.need("name", of.name);
    io.need("outline", of.outline);
    io.need("height_m", of.height_m, limits::kSize);
}

/// The coordinate that says where a surface stands; the floor has none.
struct Axis {
    const char* letter;
};

template <class Io>
void describe(Io& io, typename Io::template Of<Surface>& of, Axis axis) {
    if (axis.letter) {
        io.need(axis.letter, of.at, limits::kPosition);
        io.need("absorption", of.absorption);
    } else {
        io.may("absorption", of.absorption);
    }
}

template <class Io>
void describe(Io& io, typename Io::template Of<Surfaces>& of) {
    io.part("floor", of.floor, Axis{nullptr});
    io.part("back", of.back, Axis{"y"});
    io.part("front", of.front, Axis{"y"});
    io.part("left", of.left, Axis{"x"});
    io.part("right", of.right, Axis{"x"});
    io.part("ceiling", of.ceiling, Axis{"z"});
}

template <class Io>
void describe(Io& io, typename Io::template Of<Room>& of) {
    io.need("volume_m3", of.volume_m3, limits::kVolume);
    io.need("rt60_s", of.rt60_s, limits::kRt60);
}

template <class Io>
void describe(Io& io, typename Io::template Of<Stage>& of) {
    io.need("outline", of.outline);
    io.list("risers", of.risers, limits::kObjects);
    io.part("surfaces", of.surfaces);
    io.part("room", of.room);
}

}  // namespace howlmap::file
