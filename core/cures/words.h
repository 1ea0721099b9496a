// SPDX-License-Identifier: GPL-3.0-or-later
// How cures speak: lengths in the units of the show, directions as players say them.
#pragma once
#include <string>

#include "core/show/show.h"
#include "core/units/hertz.h"
#include "core/units/localised.h"

namespace howlmap::cures {

/// A sentence in the user's language with {} filled in.
template <class... Args>
std::string words(const char* english, const Args&... args) {
    return localised(translate("cures", english), args...);
}

/// The name of an item, its id where it has none.
template <class Item>
const std::string& name(const Item& item) {
    return item.name.empty() ? item.id : item.name;
}

/// "0.35 m" or "1 ft 2 in".
std::string length_words(double metres, Units units);
/// "0.30 m upstage and 0.10 m towards stage left"; empty for less than half a centimetre.
std::string shift_words(Vec3 from, Vec3 to, Units units);
/// "20 deg towards stage left and 10 deg up": how a thing that faces somewhere must be turned; empty for less than half
/// a degree.
std::string turn_words(const Aim& from, const Aim& to);

}  // namespace howlmap::cures
