// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the plain values of a show: numbers, words, points, outlines, band maps. Private to core/file.
#pragma once
#include <map>
#include <span>
#include <string>
#include <vector>

#include "core/file/cursor.h"
#include "core/file/rules.h"
#include "core/show/names.h"

namespace howlmap::file {

void value_in(const Cursor& at, double& value, const Range& range);
void value_in(const Cursor& at, int& value, const Range& range);
void value_in(const Cursor& at, std::uint64_t& value);
void value_in(const Cursor& at, bool& value);
void value_in(const Cursor& at, std::string& value);
void value_in(const Cursor& at, std::string& value, Filled);
void value_in(const Cursor& at, std::string& value, IsoDate);
void value_in(const Cursor& at, std::optional<double>& value, const Range& range);
void value_in(const Cursor& at, std::optional<double>& value, const NullOr& rule);
void value_in(const Cursor& at, Vec2& value);
void value_in(const Cursor& at, Vec3& value);
void value_in(const Cursor& at, Outline& value);
void value_in(const Cursor& at, std::vector<std::string>& value);
void value_in(const Cursor& at, std::vector<double>& value, const Rising& rule);
void value_in(const Cursor& at, std::vector<std::vector<double>>& value, const Range& range);
void value_in(const Cursor& at, Absorption& value);
void value_in(const Cursor& at, Spectrum& value);
void value_in(const Cursor& at, Pattern& value);
void value_in(const Cursor& at, std::map<int, double>& value, const Bands& bands);

template <class E>
requires std::is_enum_v<E>
void value_in(const Cursor& at, E& value) { value = static_cast<E>(at.word(kWords<E>)); }

}  // namespace howlmap::file
