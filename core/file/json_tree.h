// SPDX-License-Identifier: GPL-3.0-or-later
// A file's JSON as a tree that keeps the order of keys and the spelling of numbers, so that what is not understood can
// be written back untouched. Private to core/file.
#pragma once
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <variant>
#include <vector>

#include "core/file/read.h"

namespace howlmap::file {

struct Value;
struct Member;
using Array = std::vector<Value>;
using Object = std::vector<Member>;

struct Number {
    double value = 0.0;
    std::string text;  ///< as the file spells it
};

struct Value {
    std::variant<std::monostate, bool, Number, std::string, Array, Object> data;
};

struct Member {
    std::string key;
    Value value;
};

/// Parses UTF-8 JSON. Refused, with line and column or a JSON pointer: anything that is not JSON (comments, trailing
/// text, bad UTF-8, numbers beyond double), nesting beyond 64, a key twice in one object, more than 64 MiB or 1,000,000
/// values. A byte order mark is taken.
tl::expected<Value, FileError> parse(std::string_view text);

/// JSON text on one line.
std::string text_of(const Value& value);
/// What a message shows of a value: its text, cut short; "an object", "a list" when it is one.
std::string shown(const Value& value);
/// A string as JSON text, quotes included. Must be valid UTF-8, else std::invalid_argument.
std::string in_quotes(std::string_view text);
/// The same for any bytes: those that are no UTF-8 are replaced.
std::string in_quotes_lossy(std::string_view text);
/// A key as a token of a JSON pointer (RFC 6901: ~ and / escaped).
std::string pointer_token(std::string_view key);

}  // namespace howlmap::file
