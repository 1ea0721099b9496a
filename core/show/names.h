// SPDX-License-Identifier: GPL-3.0-or-later
// The words that files, tables and messages use for the choices of a show.
#pragma once
#include <array>
#include <optional>
#include <string_view>

#include "core/show/show.h"

namespace howlmap {

/// Words of an enumeration in the order of its values.
template <class E>
inline constexpr std::array<std::string_view, 0> kWords{};

template <>
inline constexpr std::array<std::string_view, 2> kWords<Units>{"metric", "imperial"};
template <>
inline constexpr std::array<std::string_view, 2> kWords<Polarity>{"normal", "inverted"};
template <>
inline constexpr std::array<std::string_view, 8> kWords<LoudspeakerKind>{
    "wedge", "side_fill", "drum_fill", "front_fill", "flown_fill", "main", "sub", "combo_amp"};
template <>
inline constexpr std::array<std::string_view, 6> kWords<PatternName>{"omni",          "subcardioid",   "cardioid",
                                                                     "supercardioid", "hypercardioid", "figure_8"};
template <>
inline constexpr std::array<std::string_view, 5> kWords<SpectrumName>{"pink", "voice", "strings", "plucked", "bass"};
template <>
inline constexpr std::array<std::string_view, 3> kWords<Hears>{"loudspeakers", "in_ear", "acoustic"};
/// Alternatives of the two variants, in their order.
template <>
inline constexpr std::array<std::string_view, 3> kWords<Transducer>{"microphone", "pickup", "line"};
template <>
inline constexpr std::array<std::string_view, 4> kWords<Directivity>{"omni", "coverage", "cap_on_sphere", "table"};

/// The word of a value.
template <class E>
constexpr std::string_view word_of(E value) {
    return kWords<E>[static_cast<std::size_t>(value)];
}
/// The word of the alternative that a variant holds: "microphone", "coverage" ..
inline std::string_view word_of(const Transducer& transducer) { return kWords<Transducer>[transducer.index()]; }
inline std::string_view word_of(const Directivity& directivity) { return kWords<Directivity>[directivity.index()]; }

}  // namespace howlmap
