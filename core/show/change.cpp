// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/change.h"

#include <algorithm>
#include <stdexcept>
#include <unordered_map>
#include <unordered_set>

namespace howlmap {
namespace {
template <class T>
std::vector<std::string> ids_of(const std::vector<T>& list) {
    std::vector<std::string> out;
    out.reserve(list.size());
    for (const T& item : list) out.push_back(item.id);
    return out;
}

template <class T>
std::unordered_map<std::string_view, const T*> by_id(const std::vector<T>& list) {
    std::unordered_map<std::string_view, const T*> out;
    for (const T& item : list) out.emplace(item.id, &item);
    return out;
}

template <class T>
ListChange<T> list_difference(const std::vector<T>& before, const std::vector<T>& after) {
    ListChange<T> change;
    if (before == after) return change;
    const auto old_items = by_id(before), new_items = by_id(after);
    for (const T& item : before) {
        const auto found = new_items.find(item.id);
        if (found == new_items.end())
            change.items.push_back({item.id, item, std::nullopt});
        else if (*found->second != item)
            change.items.push_back({item.id, item, *found->second});
    }
    for (const T& item : after)
        if (!old_items.contains(item.id)) change.items.push_back({item.id, std::nullopt, item});
    auto order_before = ids_of(before), order_after = ids_of(after);
    if (order_before != order_after) {
        change.order_before = std::move(order_before);
        change.order_after = std::move(order_after);
    }
    return change;
}

template <class T>
std::unordered_map<std::string, T*> places_of(std::vector<T>& list) {
    std::unordered_map<std::string, T*> out;
    for (T& item : list) out.emplace(item.id, &item);
    return out;
}

/// The item with this id in the show; a change that names another was taken from another show.
template <class T>
T& at_id(const std::unordered_map<std::string, T*>& places, const std::string& id) {
    const auto found = places.find(id);
    if (found == places.end()) throw std::logic_error("a change does not fit the show: no object \"" + id + "\"");
    return *found->second;
}

/// Swaps the altered items in; where ids or their order changed, builds the list anew in its order.
template <class T>
void apply_list(std::vector<T>& list, const ListChange<T>& change) {
    if (change.empty()) return;
    auto places = places_of(list);
    if (change.order_before == change.order_after) {
        for (const ItemChange<T>& item : change.items) at_id(places, item.id) = *item.after;
        return;
    }
    std::vector<T> brought;
    brought.reserve(change.items.size());
    for (const ItemChange<T>& item : change.items)
        if (item.after) places[item.id] = &brought.emplace_back(*item.after);
    std::vector<T> out;
    out.reserve(change.order_after.size());
    for (const std::string& id : change.order_after) out.push_back(std::move(at_id(places, id)));
    list = std::move(out);
}

template <class T>
ListChange<T> inverted_list(ListChange<T> change) {
    for (ItemChange<T>& item : change.items) std::swap(item.before, item.after);
    std::swap(change.order_before, change.order_after);
    return change;
}

template <class T>
ListChange<T> merged_list(const ListChange<T>& first, const ListChange<T>& second) {
    ListChange<T> out = first;
    for (const ItemChange<T>& item : second.items) {
        const auto same = std::find_if(out.items.begin(), out.items.end(),
                                       [&](const ItemChange<T>& earlier) { return earlier.id == item.id; });
        if (same == out.items.end())
            out.items.push_back(item);
        else
            same->after = item.after;
    }
    std::erase_if(out.items, [](const ItemChange<T>& item) { return item.before == item.after; });
    if (second.order_before == second.order_after) return out;
    if (first.order_before == first.order_after) out.order_before = second.order_before;
    out.order_after = second.order_after;
    if (out.order_before == out.order_after) {
        out.order_before.clear();
        out.order_after.clear();
    }
    return out;
}

template <class T>
ValueChange<T> value_difference(const T& before, const T& after) {
    if (before == after) return {};
    return {std::pair(before, after)};
}

template <class T>
ValueChange<T> inverted_value(ValueChange<T> change) {
    if (change.before_after) std::swap(change.before_after->first, change.before_after->second);
    return change;
}

template <class T>
ValueChange<T> merged_value(const ValueChange<T>& first, const ValueChange<T>& second) {
    if (first.empty()) return second;
    if (second.empty()) return first;
    return value_difference(first.before_after->first, second.before_after->second);
}

Head head_of(const Show& show) {
    return {show.title, show.venue, show.date, show.act, show.contact, show.notes, show.display, show.extras};
}

void put_head(Show& show, const Head& head) {
    show.title = head.title;
    show.venue = head.venue;
    show.date = head.date;
    show.act = head.act;
    show.contact = head.contact;
    show.notes = head.notes;
    show.display = head.display;
    show.extras = head.extras;
}

StageShell shell_of(const Stage& stage) { return {stage.outline, stage.surfaces, stage.room, stage.extras}; }

void put_shell(Stage& stage, const StageShell& shell) {
    stage.outline = shell.outline;
    stage.surfaces = shell.surfaces;
    stage.room = shell.room;
    stage.extras = shell.extras;
}

/// Calls `each` with every value change of up to three changes, side by side.
template <class Each, class... Changes>
void for_each_value(Each each, Changes&... changes) {
    each(changes.head...);
    each(changes.air...);
    each(changes.system...);
    each(changes.tolerance...);
    each(changes.stage...);
    each(changes.soundcheck...);
}

/// The same with every list change.
template <class Each, class... Changes>
void for_each_list(Each each, Changes&... changes) {
    each(changes.risers...);
    each(changes.loudspeakers...);
    each(changes.inputs...);
    each(changes.performers...);
    each(changes.mixes...);
    each(changes.backline...);
    each(changes.listeners...);
    each(changes.marks...);
}
}  // namespace

bool Change::empty() const {
    bool all = true;
    const auto ask = [&](const auto& part) { all = all && part.empty(); };
    for_each_value(ask, *this);
    for_each_list(ask, *this);
    return all;
}

Change difference(const Show& before, const Show& after, std::string name) {
    Change change;
    change.name = std::move(name);
    change.head = value_difference(head_of(before), head_of(after));
    change.air = value_difference(before.air, after.air);
    change.system = value_difference(before.system, after.system);
    change.tolerance = value_difference(before.tolerance, after.tolerance);
    change.stage = value_difference(shell_of(before.stage), shell_of(after.stage));
    change.risers = list_difference(before.stage.risers, after.stage.risers);
    change.loudspeakers = list_difference(before.loudspeakers, after.loudspeakers);
    change.inputs = list_difference(before.inputs, after.inputs);
    change.performers = list_difference(before.performers, after.performers);
    change.mixes = list_difference(before.mixes, after.mixes);
    change.backline = list_difference(before.backline, after.backline);
    change.listeners = list_difference(before.listeners, after.listeners);
    change.marks = list_difference(before.marks, after.marks);
    change.soundcheck = value_difference(before.soundcheck, after.soundcheck);
    return change;
}

void apply(Show& show, const Change& change) {
    if (!change.head.empty()) put_head(show, change.head.before_after->second);
    if (!change.air.empty()) show.air = change.air.before_after->second;
    if (!change.system.empty()) show.system = change.system.before_after->second;
    if (!change.tolerance.empty()) show.tolerance = change.tolerance.before_after->second;
    if (!change.stage.empty()) put_shell(show.stage, change.stage.before_after->second);
    apply_list(show.stage.risers, change.risers);
    apply_list(show.loudspeakers, change.loudspeakers);
    apply_list(show.inputs, change.inputs);
    apply_list(show.performers, change.performers);
    apply_list(show.mixes, change.mixes);
    apply_list(show.backline, change.backline);
    apply_list(show.listeners, change.listeners);
    apply_list(show.marks, change.marks);
    if (!change.soundcheck.empty()) show.soundcheck = change.soundcheck.before_after->second;
}

Change inverted(const Change& change) {
    Change out = change;
    for_each_value([](auto& part) { part = inverted_value(std::move(part)); }, out);
    for_each_list([](auto& part) { part = inverted_list(std::move(part)); }, out);
    return out;
}

Change merged(const Change& first, const Change& second) {
    Change out;
    out.name = first.name;
    for_each_value([](auto& to, const auto& a, const auto& b) { to = merged_value(a, b); }, out, first, second);
    for_each_list([](auto& to, const auto& a, const auto& b) { to = merged_list(a, b); }, out, first, second);
    return out;
}

std::set<std::string> touched_ids(const Change& change) {
    std::set<std::string> out;
    for_each_list(
        [&](const auto& list) {
            for (const auto& item : list.items) out.insert(item.id);
        },
        change);
    return out;
}

}  // namespace howlmap
