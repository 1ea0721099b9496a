// SPDX-License-Identifier: GPL-3.0-or-later
// Looking things up by id. Nothing is found for an empty or unknown id: a null pointer, never an exception.
#pragma once
#include <algorithm>
#include <string_view>

#include "core/show/show.h"

namespace howlmap {

/// The item with this id in a list of a show, or nullptr.
template <class List>
auto* find_by_id(List& list, std::string_view id) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& item) { return item.id == id; });
    return found == list.end() ? nullptr : &*found;
}

/// Index of the item with this id, or -1.
template <class List>
int index_by_id(const List& list, std::string_view id) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& item) { return item.id == id; });
    return found == list.end() ? -1 : static_cast<int>(found - list.begin());
}

/// The send of an input in a mix, or nullptr.
template <class M>
auto* find_send(M& mix, std::string_view input) {
    const auto found =
        std::find_if(mix.sends.begin(), mix.sends.end(), [&](const Send& s) { return s.input == input; });
    return found == mix.sends.end() ? nullptr : &*found;
}

}  // namespace howlmap
