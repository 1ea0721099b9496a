// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the fields of one object as core/file/fields describe them, then the keys that were kept. Private to
// core/file.
#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "core/file/json_writer.h"
#include "core/file/rules.h"
#include "core/show/names.h"
#include "core/units/bands.h"

namespace howlmap::file {

void value_out(JsonWriter& out, double value);
void value_out(JsonWriter& out, int value);
void value_out(JsonWriter& out, std::uint64_t value);
void value_out(JsonWriter& out, bool value);
void value_out(JsonWriter& out, const std::string& value);
void value_out(JsonWriter& out, Vec2 value);
void value_out(JsonWriter& out, Vec3 value);
void value_out(JsonWriter& out, const Outline& value);
void value_out(JsonWriter& out, const std::vector<std::string>& value);
void value_out(JsonWriter& out, const std::vector<double>& value);
void value_out(JsonWriter& out, const std::vector<std::vector<double>>& value);
void value_out(JsonWriter& out, const Absorption& value);
void value_out(JsonWriter& out, const Spectrum& value);
void value_out(JsonWriter& out, const Pattern& value);
void bands_out(JsonWriter& out, const std::map<int, double>& value, std::span<const double> nominals);
template <class E>
requires std::is_enum_v<E>
void value_out(JsonWriter& out, E value) { out.text(word_of(value)); }

/// Small objects of which a show has many take one line each.
template <class T>
inline constexpr Layout kLayout = Layout::lines;
template <>
inline constexpr Layout kLayout<HighPass> = Layout::one_line;
template <>
inline constexpr Layout kLayout<PeakFilter> = Layout::one_line;
template <>
inline constexpr Layout kLayout<ResponsePoint> = Layout::one_line;
template <>
inline constexpr Layout kLayout<BodyMode> = Layout::one_line;
template <>
inline constexpr Layout kLayout<Send> = Layout::one_line;
template <>
inline constexpr Layout kLayout<Surface> = Layout::one_line;
template <>
inline constexpr Layout kLayout<Room> = Layout::one_line;
template <>
inline constexpr Layout kLayout<SoundcheckEntry> = Layout::one_line;

template <class T>
const Extras& kept_in(const T& value) {
    return value.extras;
}
const Extras& kept_in(const Directivity& value);

template <class T, class... Hint>
void write_object(JsonWriter& out, const T& value, Hint... hint);

/// The writing half of a description. Values that are absent, and `_if_any` ones that hold nothing, leave no key.
class FieldsOut {
  public:
    template <class T>
    using Of = const T;

    explicit FieldsOut(JsonWriter& out) : out_(out) {}

    template <class T, class... Rule>
    void need(std::string_view key, const T& value, const Rule&...) {
        start(key);
        value_out(out_, value);
    }
    template <class T, class... Rule>
    void may(std::string_view key, const T& value, const Rule&... rule) {
        need(key, value, rule...);
    }
    template <class Rule>
    void may(std::string_view key, const std::optional<double>& value, const Rule& rule) {
        if (value) need(key, *value, rule);
    }
    void may(std::string_view key, const std::map<int, double>& value, const Bands& bands) {
        if (value.empty()) return;
        start(key);
        bands_out(out_, value, bands.nominals);
    }
    template <class T, class... Hint>
    void part(std::string_view key, const T& value, Hint... hint) {
        start(key);
        write_object(out_, value, hint...);
    }
    template <class T, class... Hint>
    void part(std::string_view key, const std::optional<T>& value, Hint... hint) {
        if (value) part(key, *value, hint...);
    }
    template <class T>
    void need_part(std::string_view key, const T& value) {
        part(key, value);
    }
    template <class T>
    void part_if_any(std::string_view key, const T& value) {
        if (value != T{}) part(key, value);
    }
    template <class T>
    void list(std::string_view key, const std::vector<T>& value, std::size_t) {
        start(key);
        out_.open('[', Layout::lines);
        for (const T& item : value) write_object(out_, item);
        out_.close(']');
    }
    template <class T>
    void list_if_any(std::string_view key, const std::vector<T>& value) {
        if (!value.empty()) list(key, value, 0);
    }
    template <class... Alternatives>
    void alternative(std::string_view key, const std::variant<Alternatives...>& value) {
        start(key);
        out_.text(word_of(value));
    }
    void only(std::string_view key, std::string_view word) {
        start(key);
        out_.text(word);
    }
    void version() { need("version", kVersion); }
    void note_presence(std::string_view, bool) {}

    /// Writes what was kept, but for keys that the show's own values have taken since.
    void rest(const Extras& extras);

  private:
    void start(std::string_view key) {
        written_.push_back(key);
        out_.key(key);
    }

    JsonWriter& out_;
    std::vector<std::string_view> written_;  // literals of the descriptions
};

template <class T, class... Hint>
void write_object(JsonWriter& out, const T& value, Hint... hint) {
    out.open('{', kLayout<T>);
    FieldsOut fields(out);
    describe(fields, value, hint...);
    fields.rest(kept_in(value));
    out.close('}');
}

}  // namespace howlmap::file
