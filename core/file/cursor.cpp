// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/cursor.h"

#include <charconv>
#include <cmath>
#include <optional>

#include "core/units/number_text.h"

namespace howlmap::file {
namespace {
constexpr double kExactWhole = 9007199254740992.0;  // 2^53: every whole number up to here is a double

template <class T>
std::optional<T> digits_of(const Number& number) {
    T out{};
    const char* end = number.text.data() + number.text.size();
    const auto [stop, trouble] = std::from_chars(number.text.data(), end, out);
    if (trouble == std::errc{} && stop == end) return out;
    if (std::trunc(number.value) != number.value || std::abs(number.value) > kExactWhole) return std::nullopt;
    if (std::is_unsigned_v<T> && number.value < 0.0) return std::nullopt;
    return static_cast<T>(number.value);
}

std::string listed(std::span<const std::string_view> words) {
    std::string out;
    for (const std::string_view word : words) out += (out.empty() ? "" : ", ") + in_quotes(word);
    return out;
}
}  // namespace

std::string described(const Range& range, std::string_view what) {
    return std::string(what) + (range.above_low ? " above " : " from ") + number_text(range.low) + " to " +
           number_text(range.high);
}

std::string Cursor::pointer() const {
    if (parent_ == nullptr) return "";
    return parent_->pointer() + "/" + (key_.data() ? pointer_token(key_) : std::to_string(index_));
}

void Cursor::refuse(const std::string& expected) const { refuse(value_ ? shown(*value_) : "nothing", expected); }

void Cursor::refuse(std::string found, std::string expected) const {
    std::string place = pointer();
    if (place.empty()) place = "line 1, column 1";  // the pointer of the whole file is empty, which names no place
    throw Refusal{{std::move(place), std::move(found), std::move(expected)}};
}

bool Cursor::is_null() const { return value_ && std::holds_alternative<std::monostate>(value_->data); }
bool Cursor::is_text() const { return value_ && std::holds_alternative<std::string>(value_->data); }
bool Cursor::is_number() const { return value_ && std::holds_alternative<Number>(value_->data); }
bool Cursor::is_object() const { return value_ && std::holds_alternative<Object>(value_->data); }

double Cursor::number(const Range& range) const {
    if (!is_number()) refuse(described(range));
    const double value = std::get<Number>(value_->data).value;
    if (!range.holds(value)) refuse(described(range));
    return value == 0.0 ? 0.0 : value;  // -0 and 0 are one number
}

std::int64_t Cursor::whole(const Range& range) const {
    const std::string expected = described(range, "a whole number");
    if (!is_number()) refuse(expected);
    const auto value = digits_of<std::int64_t>(std::get<Number>(value_->data));
    if (!value || !range.holds(static_cast<double>(*value))) refuse(expected);
    return *value;
}

std::uint64_t Cursor::natural() const {
    const std::string expected = "a whole number from 0 to 18446744073709551615";
    if (!is_number()) refuse(expected);
    const auto value = digits_of<std::uint64_t>(std::get<Number>(value_->data));
    if (!value) refuse(expected);
    return *value;
}

bool Cursor::truth() const {
    const bool* truth = value_ ? std::get_if<bool>(&value_->data) : nullptr;
    if (!truth) refuse("true or false");
    return *truth;
}

const std::string& Cursor::text() const {
    if (!is_text()) refuse("text in quotes");
    return std::get<std::string>(value_->data);
}

std::size_t Cursor::word(std::span<const std::string_view> words) const {
    const std::string expected = (words.size() == 1 ? "" : "one of ") + listed(words);
    if (!is_text()) refuse(expected);
    for (std::size_t i = 0; i < words.size(); ++i)
        if (words[i] == text()) return i;
    refuse(expected);
}

const Array& Cursor::items(std::size_t least, std::size_t most) const {
    const Array* items = value_ ? std::get_if<Array>(&value_->data) : nullptr;
    std::string expected = "a list";
    if (least == most)
        expected += " of " + std::to_string(least);
    else if (most != SIZE_MAX)
        expected += " of " + std::to_string(least) + " to " + std::to_string(most);
    else if (least > 0)
        expected += " of " + std::to_string(least) + " or more";
    if (!items) refuse(expected);
    if (items->size() < least || items->size() > most) refuse(std::to_string(items->size()) + " items", expected);
    return *items;
}

const Object& Cursor::members() const {
    if (!is_object()) refuse("an object");
    return std::get<Object>(value_->data);
}

}  // namespace howlmap::file
