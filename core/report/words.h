// SPDX-License-Identifier: GPL-3.0-or-later
// Figures as people of the trade say them: no more digits than are known, units always.
#pragma once
#include <optional>
#include <string>

#include "core/show/show.h"
#include "core/units/hertz.h"

namespace howlmap::report {

using howlmap::band_words, howlmap::hz_words;
/// "6.0 dB", "-2.3 dB"; "no loop" where absent.
std::string margin_words(std::optional<double> db);
/// "102 dB" or "99.5 dB": levels that were typed, without needless zeros.
std::string level_words(double db);
/// "cardioid", "first order, a = 0.60", "measured pattern".
std::string pattern_words(const Pattern& pattern);
/// "wedge", "side fill" ...
std::string kind_words(LoudspeakerKind kind);
/// "cardioid microphone", "cupped ...", "pickup", "line".
std::string transducer_words(const Input& input);
/// "high-pass 100 Hz, 12 dB/oct".
std::string high_pass_words(const HighPass& filter);
/// "-6 dB at 545 Hz, Q 8".
std::string peak_words(const PeakFilter& filter);
/// A length for the eye in the show's units: "1.40 m" or "4' 7\"".
std::string distance_words(double metres, Units units);
/// Name, or the id where there is no name.
template <class Item>
std::string name_of(const Item& item) {
    return item.name.empty() ? item.id : item.name;
}
/// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& names);

}  // namespace howlmap::report
