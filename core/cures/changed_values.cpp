// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/changed_values.h"

#include <nlohmann/json.hpp>
#include <set>

#include "core/file/write.h"

namespace howlmap::cures {
namespace {
using Json = nlohmann::ordered_json;

std::string escaped(const std::string& key) {
    std::string text;
    for (char c : key) text += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
    return text;
}

/// What an item of a list is known by; empty where it has no such key.
std::string known_by(const Json& item) {
    for (const char* key : {"id", "input"})
        if (item.is_object() && item.contains(key) && item[key].is_string()) return item[key].get<std::string>();
    return {};
}

void compare(const std::string& pointer, const Json* before, const Json* after, std::vector<ChangedValue>& all);

void compare_objects(const std::string& pointer, const Json& before, const Json& after,
                     std::vector<ChangedValue>& all) {
    for (const auto& [key, value] : before.items())
        compare(pointer + "/" + escaped(key), &value, after.contains(key) ? &after[key] : nullptr, all);
    for (const auto& [key, value] : after.items())
        if (!before.contains(key)) compare(pointer + "/" + escaped(key), nullptr, &value, all);
}

const Json* find(const Json& list, const std::string& name) {
    for (const Json& item : list)
        if (known_by(item) == name) return &item;
    return nullptr;
}

void compare_lists(const std::string& pointer, const Json& before, const Json& after, std::vector<ChangedValue>& all) {
    for (std::size_t i = 0; i < before.size(); ++i)
        compare(pointer + "/" + std::to_string(i), &before[i], find(after, known_by(before[i])), all);
    std::size_t end = before.size();
    for (const Json& item : after)
        if (!find(before, known_by(item))) compare(pointer + "/" + std::to_string(end++), nullptr, &item, all);
}

bool has_names(const Json& list) {
    std::set<std::string> names;
    for (const Json& item : list)
        if (known_by(item).empty() || !names.insert(known_by(item)).second) return false;
    return true;
}

void compare(const std::string& pointer, const Json* before, const Json* after, std::vector<ChangedValue>& all) {
    if (before && after && *before == *after) return;
    if (before && after && before->is_object() && after->is_object())
        return compare_objects(pointer, *before, *after, all);
    if (before && after && before->is_array() && after->is_array() && has_names(*before) && has_names(*after))
        return compare_lists(pointer, *before, *after, all);
    all.push_back({pointer, before ? before->dump() : "null", after ? after->dump() : "null"});
}
}  // namespace

std::vector<ChangedValue> changed_values(const Show& before, const Show& after) {
    std::vector<ChangedValue> all;
    const Json from = Json::parse(write_show(before)), to = Json::parse(write_show(after));
    compare("", &from, &to, all);
    return all;
}

}  // namespace howlmap::cures
