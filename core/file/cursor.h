// SPDX-License-Identifier: GPL-3.0-or-later
// One place in a file that is being read: its value and the way to it, with getters that check type and range. Private
// to core/file, where a refusal travels as an exception up to read_show.
#pragma once
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "core/file/json_tree.h"
#include "core/show/limits.h"

namespace howlmap::file {

/// Thrown by what reads, caught by read_show.
struct Refusal {
    FileError error;
};

class Cursor {
  public:
    explicit Cursor(const Value& root) : value_(&root) {}
    /// Member of an object; value may be null when the key is missing.
    Cursor(const Cursor& parent, std::string_view key, const Value* value)
        : value_(value), parent_(&parent), key_(key) {}
    /// Item of a list.
    Cursor(const Cursor& parent, std::size_t index, const Value& value)
        : value_(&value), parent_(&parent), index_(index) {}

    std::string pointer() const;
    [[noreturn]] void refuse(const std::string& expected) const;
    [[noreturn]] void refuse(std::string found, std::string expected) const;

    bool is_null() const;
    bool is_text() const;
    bool is_number() const;
    bool is_object() const;

    double number(const Range& range) const;
    /// A whole number, also when it is spelt 88.0 or 8.8e1.
    std::int64_t whole(const Range& range) const;
    /// A whole number from 0 to 2^64 - 1.
    std::uint64_t natural() const;
    bool truth() const;
    const std::string& text() const;
    /// Position of the text in a list of words.
    std::size_t word(std::span<const std::string_view> words) const;
    /// A list of least .. most items.
    const Array& items(std::size_t least, std::size_t most) const;
    const Object& members() const;

  private:
    const Value* value_;
    const Cursor* parent_ = nullptr;
    std::string_view key_;
    std::size_t index_ = 0;
};

/// "a number from -60 to 60", "a number above 0 to 50".
std::string described(const Range& range, std::string_view what = "a number");

}  // namespace howlmap::file
