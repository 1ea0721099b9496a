// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the fields of one object as core/file/fields describe them, and keeps the keys that nobody asked for.
// Private to core/file.
#pragma once
#include <string_view>
#include <vector>

#include "core/file/values_in.h"

namespace howlmap::file {

class FieldsIn;

/// Reads a described object, its unknown keys included, and what must hold between its fields.
template <class T, class... Hint>
void read_object(const Cursor& at, T& value, Hint... hint);

/// Where the unknown keys of an object are kept.
template <class T>
Extras& extras_of(T& value) {
    return value.extras;
}
Extras& extras_of(Directivity& value);

/// The reading half of a description: `need` and `may` fill a value from a key that must or may be there.
class FieldsIn {
  public:
    template <class T>
    using Of = T;

    explicit FieldsIn(const Cursor& at) : at_(at), members_(at.members()), taken_(members_.size(), false) {}

    template <class T, class... Rule>
    void need(std::string_view key, T& value, const Rule&... rule) {
        value_in(Cursor(at_, key, take(key)), value, rule...);
    }
    template <class T, class... Rule>
    void may(std::string_view key, T& value, const Rule&... rule) {
        if (const Value* found = take(key)) value_in(Cursor(at_, key, found), value, rule...);
    }
    template <class T>
    void need_part(std::string_view key, T& value) {
        read_object(Cursor(at_, key, take(key)), value);
    }
    template <class T, class... Hint>
    void part(std::string_view key, T& value, Hint... hint) {
        if (const Value* found = take(key)) read_object(Cursor(at_, key, found), value, hint...);
    }
    template <class T, class... Hint>
    void part(std::string_view key, std::optional<T>& value, Hint... hint) {
        if (const Value* found = take(key)) read_object(Cursor(at_, key, found), value.emplace(), hint...);
    }
    template <class T>
    void part_if_any(std::string_view key, T& value) {
        part(key, value);
    }
    template <class T>
    void list(std::string_view key, std::vector<T>& value, std::size_t most) {
        const Value* found = take(key);
        if (!found) return;
        const Cursor at(at_, key, found);
        const Array& items = at.items(0, most);
        value.assign(items.size(), T{});
        for (std::size_t i = 0; i < items.size(); ++i) read_object(Cursor(at, i, items[i]), value[i]);
    }
    template <class T>
    void list_if_any(std::string_view key, std::vector<T>& value) {
        list(key, value, SIZE_MAX);
    }
    /// The word that names a variant's alternative, which is put in place with its defaults.
    template <class... Alternatives>
    void alternative(std::string_view key, std::variant<Alternatives...>& value) {
        using Variant = std::variant<Alternatives...>;
        static const std::array<Variant, sizeof...(Alternatives)> fresh{Variant(Alternatives{})...};
        const Value* found = take(key);
        value = fresh[Cursor(at_, key, found).word(kWords<Variant>)];
    }
    /// A key with one possible word.
    void only(std::string_view key, std::string_view word) { Cursor(at_, key, take(key)).word(std::span(&word, 1)); }
    /// The version has been looked at before anything else.
    void version() { take("version"); }
    /// Whether a key is there, for values that may be absent without a default.
    void note_presence(std::string_view key, bool& there) const;

    /// The members that nobody took, in the order of the file.
    Extras rest() const;

  private:
    const Value* take(std::string_view key);

    const Cursor& at_;
    const Object& members_;
    std::vector<bool> taken_;
};

/// What must hold between the fields of an object; most have nothing of the kind.
template <class T>
void check_between(const Cursor&, const T&) {}
void check_between(const Cursor& at, const CapOnSphere& value);
void check_between(const Cursor& at, const DirectivityTable& value);
void check_between(const Cursor& at, const Directivity& value);
void check_between(const Cursor& at, const Response& value);
void check_between(const Cursor& at, const Mix& value);

template <class T, class... Hint>
void read_object(const Cursor& at, T& value, Hint... hint) {
    FieldsIn fields(at);
    describe(fields, value, hint...);
    extras_of(value) = fields.rest();
    check_between(at, value);
}

}  // namespace howlmap::file
