// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/fields_in.h"

#include <algorithm>
#include <set>

#include "core/units/number_text.h"

namespace howlmap::file {
namespace {
/// Something that has been read.
Cursor child(const Cursor& at, std::string_view key) {
    const auto found = std::ranges::find(at.members(), key, &Member::key);
    return {at, key, found == at.members().end() ? nullptr : &found->value};
}

Cursor child(const Cursor& at, std::size_t index) { return {at, index, at.items(0, SIZE_MAX)[index]}; }
}  // namespace

Extras& extras_of(Directivity& value) {
    return std::visit([](auto& of) -> Extras& { return of.extras; }, value);
}

const Value* FieldsIn::take(std::string_view key) {
    for (std::size_t i = 0; i < members_.size(); ++i) {
        if (members_[i].key != key) continue;
        taken_[i] = true;
        return &members_[i].value;
    }
    return nullptr;
}

void FieldsIn::note_presence(std::string_view key, bool& there) const {
    there = std::any_of(members_.begin(), members_.end(), [&](const Member& member) { return member.key == key; });
}

Extras FieldsIn::rest() const {
    Extras out;
    for (std::size_t i = 0; i < members_.size(); ++i)
        if (!taken_[i]) out.emplace_back(members_[i].key, text_of(members_[i].value));
    return out;
}

void check_between(const Cursor& at, const CapOnSphere& value) {
    if (value.cap_radius_m <= value.sphere_radius_m) return;
    child(at, "cap_radius_m").refuse("at most the sphere's radius, " + number_text(value.sphere_radius_m));
}

void check_between(const Cursor& at, const DirectivityTable& value) {
    const Cursor rows = child(at, "db");
    if (value.db.size() != value.hz.size())
        rows.refuse(std::to_string(value.db.size()) + " rows",
                    "a row for each of the " + std::to_string(value.hz.size()) + " frequencies");
    for (std::size_t i = 0; i < value.db.size(); ++i)
        if (value.db[i].size() != value.angles_deg.size())
            child(rows, i).refuse(std::to_string(value.db[i].size()) + " numbers",
                                  "one for each of the " + std::to_string(value.angles_deg.size()) + " angles");
}

void check_between(const Cursor& at, const Directivity& value) {
    std::visit([&](const auto& of) { check_between(at, of); }, value);
}

void check_between(const Cursor& at, const Response& value) {
    for (std::size_t i = 1; i < value.table.size(); ++i) {
        if (value.table[i].hz > value.table[i - 1].hz) continue;
        const Cursor table = child(at, "table"), point = child(table, i);
        child(point, "hz").refuse("a number above the one before, " + number_text(value.table[i - 1].hz));
    }
}

void check_between(const Cursor& at, const Mix& value) {
    std::set<std::string_view> seen;
    for (std::size_t i = 0; i < value.sends.size(); ++i) {
        if (seen.insert(value.sends[i].input).second) continue;
        const Cursor sends = child(at, "sends"), send = child(sends, i);
        child(send, "input").refuse("one send of each input in a mix");
    }
}

}  // namespace howlmap::file
