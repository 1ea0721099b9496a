// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/json_tree.h"

#include <fmt/format.h>

#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/show/limits.h"

namespace howlmap::file {
namespace {
using nlohmann::json;

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

std::string cut(std::string text, std::size_t most = 60) {
    if (text.size() <= most) return text;
    while (most > 0 && (static_cast<unsigned char>(text[most]) & 0xC0) == 0x80) --most;  // not inside a character
    return text.substr(0, most) + "...";
}

/// "line 4, column 7" of a byte; columns count characters.
std::string line_and_column(std::string_view text, std::size_t byte) {
    const std::string_view before = text.substr(0, std::min(byte, text.size()));
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    const std::size_t newline = before.rfind('\n');
    const std::string_view row = newline == std::string_view::npos ? before : before.substr(newline + 1);
    const auto column = 1 + std::count_if(row.begin(), row.end(),
                                          [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; });
    return "line " + std::to_string(line) + ", column " + std::to_string(column);
}

/// What a message says of the character that begins at a byte.
std::string character_at(std::string_view text, std::size_t byte) {
    if (byte >= text.size()) return "the end of the file";
    const auto lead = static_cast<unsigned char>(text[byte]);
    if (lead == '\n' || lead == '\r') return "the end of the line";
    if (lead >= 0x20 && lead < 0x7F) return std::string("'") + text[byte] + "'";
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
    const std::string whole = in_quotes_lossy(text.substr(byte, length));
    if (lead < 0x80 || whole.find("\xEF\xBF\xBD") != std::string::npos) return fmt::format("the byte 0x{:02X}", lead);
    return "'" + whole.substr(1, whole.size() - 2) + "'";
}

/// The parser's word for what it expected, in words for those who open the file in an editor.
std::string in_plain_words(std::string_view expected) {
    if (expected == "string literal") return "a key in quotes";
    if (expected == "end of input") return "the end of the file";
    if (expected == "'[', '{', or a literal") return "a value, such as a number, a text in quotes, '[' or '{'";
    return std::string(expected);
}

/// What the parser's own sentence says was expected.
std::string expectation(std::string_view what) {
    const std::size_t expected = what.rfind("; expected ");
    if (expected != std::string_view::npos) return in_plain_words(what.substr(expected + 11));
    if (what.find("number overflow") != std::string_view::npos) return "a number below 1.8e308";
    const std::size_t reason = what.find(" - "), end = what.find("; last read");
    if (reason == std::string_view::npos) return "JSON";
    return "JSON (" + std::string(what.substr(reason + 3, end == std::string_view::npos ? end : end - reason - 3)) +
           ")";
}

/// Builds the tree from the parser's events; a false return stops the parser, the reason is in `error`.
class Builder : public nlohmann::json_sax<json> {
  public:
    explicit Builder(std::string_view text) : text_(text) {}

    Value root;
    std::optional<FileError> error;

    bool null() override { return put({}); }
    bool boolean(bool value) override { return put({value}); }
    bool number_integer(number_integer_t value) override {
        return put({Number{static_cast<double>(value), std::to_string(value)}});
    }
    bool number_unsigned(number_unsigned_t value) override {
        return put({Number{static_cast<double>(value), std::to_string(value)}});
    }
    bool number_float(number_float_t value, const string_t& text) override { return put({Number{value, text}}); }
    bool string(string_t& text) override { return put({std::move(text)}); }
    bool binary(binary_t&) override { return false; }  // GCOVR_EXCL_LINE: a text has none, the interface wants it

    bool start_object(std::size_t) override { return open({Object{}}); }
    bool key(string_t& name) override {
        std::get<Object>(open_.back()->data).push_back({std::move(name), {}});
        return true;
    }
    bool end_object() override {
        if (const auto twice = repeated_key(std::get<Object>(open_.back()->data))) {
            open_.pop_back();
            return refuse(pointer() + "/" + pointer_token(*twice), "this key twice in one object", "every key once");
        }
        open_.pop_back();
        return true;
    }
    bool start_array(std::size_t) override { return open({Array{}}); }
    bool end_array() override {
        open_.pop_back();
        return true;
    }

    bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& what) override {
        const std::size_t byte = position == 0 ? 0 : position - 1;
        return refuse(line_and_column(text_, byte), character_at(text_, byte), expectation(what.what()));
    }

  private:
    static std::optional<std::string> repeated_key(const Object& object) {
        std::vector<std::string_view> keys;
        keys.reserve(object.size());
        for (const Member& member : object) keys.push_back(member.key);
        std::sort(keys.begin(), keys.end());
        const auto twice = std::adjacent_find(keys.begin(), keys.end());
        return twice == keys.end() ? std::nullopt : std::optional<std::string>(*twice);
    }

    /// Place of the value read last.
    std::string pointer() const {
        std::string out;
        for (const Value* value : open_) {
            if (const auto* object = std::get_if<Object>(&value->data)) {
                if (!object->empty()) out += "/" + pointer_token(object->back().key);
            } else if (const auto& items = std::get<Array>(value->data); !items.empty()) {
                out += "/" + std::to_string(items.size() - 1);
            }
        }
        return out;
    }

    Value* place(Value value) {
        if (open_.empty()) {
            root = std::move(value);
            return &root;
        }
        if (auto* items = std::get_if<Array>(&open_.back()->data)) return &items->emplace_back(std::move(value));
        Value& slot = std::get<Object>(open_.back()->data).back().value;
        slot = std::move(value);
        return &slot;
    }

    bool put(Value value) {
        place(std::move(value));
        return counted();
    }

    bool counted() {
        if (++count_ <= limits::kFileValues) return true;
        return refuse(pointer(), "more than 1000000 values in one file", "1000000 at most");
    }

    bool open(Value value) {
        // A child's address stays good while it is open: only the innermost container grows.
        open_.push_back(place(std::move(value)));
        if (open_.size() <= limits::kNesting) return counted();
        open_.pop_back();
        return refuse(pointer(), "objects and lists nested more than 64 deep", "64 levels at most");
    }

    bool refuse(std::string place, std::string found, std::string expected) {
        error = FileError{std::move(place), std::move(found), std::move(expected)};
        return false;
    }

    std::string_view text_;
    std::vector<Value*> open_;
    std::size_t count_ = 0;
};

void append(std::string& out, const Value& value);

void append(std::string& out, const Array& items) {
    out += '[';
    for (const Value& item : items) {
        if (&item != &items.front()) out += ", ";
        append(out, item);
    }
    out += ']';
}

void append(std::string& out, const Object& members) {
    out += '{';
    for (const Member& member : members) {
        if (&member != &members.front()) out += ", ";
        out += in_quotes(member.key) + ": ";
        append(out, member.value);
    }
    out += '}';
}

void append(std::string& out, const Value& value) {
    if (std::holds_alternative<std::monostate>(value.data)) out += "null";
    if (const auto* truth = std::get_if<bool>(&value.data)) out += *truth ? "true" : "false";
    if (const auto* number = std::get_if<Number>(&value.data)) out += number->text;
    if (const auto* text = std::get_if<std::string>(&value.data)) out += in_quotes(*text);
    if (const auto* items = std::get_if<Array>(&value.data)) append(out, *items);
    if (const auto* members = std::get_if<Object>(&value.data)) append(out, *members);
}
}  // namespace

tl::expected<Value, FileError> parse(std::string_view text) {
    if (text.size() > limits::kFileBytes)
        return tl::unexpected(FileError{"", std::to_string(text.size()) + " bytes", "64 MiB at most"});
    if (text.substr(0, 3) == kByteOrderMark) text.remove_prefix(3);
    if (text.substr(0, 3) == kByteOrderMark)  // the parser would take a second one
        return tl::unexpected(FileError{"line 1, column 1", "a second byte order mark", "JSON"});
    // The parser takes a zero byte for the end of its input, which would let anything follow it.
    if (const std::size_t zero = text.find('\0'); zero != std::string_view::npos)
        return tl::unexpected(FileError{line_and_column(text, zero), "a zero byte", "text"});
    Builder builder(text);
    const bool good = json::sax_parse(text.begin(), text.end(), &builder);
    if (!good) return tl::unexpected(builder.error.value_or(FileError{"line 1, column 1", "something else", "JSON"}));
    return std::move(builder.root);
}

std::string text_of(const Value& value) {
    std::string out;
    append(out, value);
    return out;
}

std::string shown(const Value& value) {
    if (std::holds_alternative<Array>(value.data)) return "a list";
    if (std::holds_alternative<Object>(value.data)) return "an object";
    return cut(text_of(value));
}

std::string in_quotes(std::string_view text) {
    try {
        return json(text).dump();
    } catch (const json::type_error&) {
        throw std::invalid_argument("text is not valid UTF-8");
    }
}

std::string in_quotes_lossy(std::string_view text) {
    return json(text).dump(-1, ' ', false, json::error_handler_t::replace);
}

std::string pointer_token(std::string_view key) {
    std::string out;
    for (const char c : key) {
        if (c == '~')
            out += "~0";
        else if (c == '/')
            out += "~1";
        else
            out += c;
    }
    return out;
}

}  // namespace howlmap::file
