// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/values_in.h"

#include <algorithm>
#include <charconv>
#include <chrono>

#include "core/file/fields/parts.h"
#include "core/file/fields_in.h"
#include "core/units/bands.h"
#include "core/units/number_text.h"

namespace howlmap::file {
namespace {
/// "2031-05-14", a day that the calendar has.
bool is_date(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
    const auto digits = [&](std::size_t from, std::size_t count) {
        int value = -1;
        const char* end = text.data() + from + count;
        const auto [stop, trouble] = std::from_chars(text.data() + from, end, value);
        return stop == end && trouble == std::errc{} ? value : -1;
    };
    const int year = digits(0, 4), month = digits(5, 2), day = digits(8, 2);
    if (year < 0 || month < 0 || day < 0) return false;
    return std::chrono::year_month_day(std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                       std::chrono::day(static_cast<unsigned>(day)))
        .ok();
}

template <std::size_t N>
std::array<double, N> coordinates(const Cursor& at) {
    const Array& items = at.items(N, N);
    std::array<double, N> out;
    for (std::size_t i = 0; i < N; ++i) out[i] = Cursor(at, i, items[i]).number(limits::kPosition);
    return out;
}

std::string listed(std::span<const double> nominals) {
    std::string out;
    for (const double nominal : nominals) out += (out.empty() ? "\"" : ", \"") + number_text(nominal) + "\"";
    return out;
}
}  // namespace

void value_in(const Cursor& at, double& value, const Range& range) { value = at.number(range); }
void value_in(const Cursor& at, int& value, const Range& range) { value = static_cast<int>(at.whole(range)); }
void value_in(const Cursor& at, std::uint64_t& value) { value = at.natural(); }
void value_in(const Cursor& at, bool& value) { value = at.truth(); }
void value_in(const Cursor& at, std::string& value) { value = at.text(); }

void value_in(const Cursor& at, std::string& value, Filled) {
    if (!at.is_text() || at.text().empty()) at.refuse("text that is not empty");
    value = at.text();
}

void value_in(const Cursor& at, std::string& value, IsoDate) {
    if (!at.is_text() || !(at.text().empty() || is_date(at.text())))
        at.refuse("a date such as \"2031-05-14\", or \"\"");
    value = at.text();
}

void value_in(const Cursor& at, std::optional<double>& value, const Range& range) { value = at.number(range); }

void value_in(const Cursor& at, std::optional<double>& value, const NullOr& rule) {
    if (at.is_null())
        value.reset();
    else if (at.is_number())
        value = at.number(rule.range);
    else
        at.refuse(described(rule.range) + ", or null");
}

void value_in(const Cursor& at, Vec2& value) {
    const auto [x, y] = coordinates<2>(at);
    value = {x, y};
}

void value_in(const Cursor& at, Vec3& value) {
    const auto [x, y, z] = coordinates<3>(at);
    value = {x, y, z};
}

void value_in(const Cursor& at, Outline& value) {
    const Array& corners = at.items(limits::kCornersLeast, limits::kCornersMost);
    value.resize(corners.size());
    for (std::size_t i = 0; i < corners.size(); ++i) value_in(Cursor(at, i, corners[i]), value[i]);
    if (!is_simple(value)) at.refuse("an outline that crosses or touches itself, or has no area", "a simple polygon");
}

void value_in(const Cursor& at, std::vector<std::string>& value) {
    const Array& items = at.items(0, limits::kObjects);
    value.resize(items.size());
    for (std::size_t i = 0; i < items.size(); ++i) {
        const Cursor item(at, i, items[i]);
        value_in(item, value[i]);
        if (std::find(value.begin(), value.begin() + static_cast<std::ptrdiff_t>(i), value[i]) !=
            value.begin() + static_cast<std::ptrdiff_t>(i))
            item.refuse("each id once");
    }
}

void value_in(const Cursor& at, std::vector<double>& value, const Rising& rule) {
    const Array& items = at.items(1, SIZE_MAX);
    value.resize(items.size());
    for (std::size_t i = 0; i < items.size(); ++i) {
        const Cursor item(at, i, items[i]);
        value[i] = item.number(rule.range);
        if (i > 0 && value[i] <= value[i - 1])
            item.refuse("a number above the one before, " + number_text(value[i - 1]));
    }
}

void value_in(const Cursor& at, std::vector<std::vector<double>>& value, const Range& range) {
    const Array& rows = at.items(1, SIZE_MAX);
    value.assign(rows.size(), {});
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Cursor row(at, i, rows[i]);
        const Array& items = row.items(1, SIZE_MAX);
        value[i].resize(items.size());
        for (std::size_t j = 0; j < items.size(); ++j) value[i][j] = Cursor(row, j, items[j]).number(range);
    }
}

void value_in(const Cursor& at, std::map<int, double>& value, const Bands& bands) {
    value.clear();
    for (const Member& member : at.members()) {
        const Cursor item(at, member.key, &member.value);
        const auto found = std::find_if(bands.nominals.begin(), bands.nominals.end(),
                                        [&](double nominal) { return number_text(nominal) == member.key; });
        if (found == bands.nominals.end())
            item.refuse("the key " + in_quotes(member.key), "a nominal band in Hz: " + listed(bands.nominals));
        value[static_cast<int>(found - bands.nominals.begin())] = item.number(bands.range);
    }
    if (value.empty() && !bands.may_be_empty) at.refuse("no band", "at least one band in Hz");
}

void value_in(const Cursor& at, Absorption& value) {
    if (at.is_number())
        value = at.number(limits::kAbsorption);
    else if (at.is_object())
        value_in(at, value.emplace<std::map<int, double>>(), Bands{kNominalOctaves, limits::kAbsorption});
    else
        at.refuse(described(limits::kAbsorption) + ", or an object of them by octave band");
}

void value_in(const Cursor& at, Spectrum& value) {
    if (at.is_text())
        value = static_cast<SpectrumName>(at.word(kWords<SpectrumName>));
    else if (at.is_object())
        value_in(at, value.emplace<std::map<int, double>>(), Bands{kNominalThirdOctaves, limits::kLevel});
    else
        at.refuse("a named spectrum or an object of dB by third-octave band");
}

void value_in(const Cursor& at, Pattern& value) {
    if (at.is_text())
        value = static_cast<PatternName>(at.word(kWords<PatternName>));
    else if (at.is_number())
        value = at.number(limits::kPatternNumber);
    else if (at.is_object())
        read_object(at, value.emplace<DirectivityTable>(), OnlyTable{});
    else
        at.refuse("a named pattern, a number from 0 to 1 or a table");
}

}  // namespace howlmap::file
