// SPDX-License-Identifier: GPL-3.0-or-later
// The one kind of edit: what changed between two shows, as before and after of whole items. Applying swaps them in.
#pragma once
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <variant>
#include <vector>

#include "core/show/show.h"

namespace howlmap {

enum class ObjectKind { loudspeaker, input, performer, mix, backline, listener, mark, riser };

/// One object before and after; absent on one side when it is added or removed.
template <class T>
struct ItemChange {
    std::string id;
    std::optional<T> before, after;
    friend bool operator==(const ItemChange&, const ItemChange&) = default;
};

/// Changes within one list; `order_*` hold all ids and are filled only where ids or their order changed.
template <class T>
struct ListChange {
    std::vector<ItemChange<T>> items;
    std::vector<std::string> order_before, order_after;
    bool empty() const { return items.empty() && order_before == order_after; }
    friend bool operator==(const ListChange&, const ListChange&) = default;
};

/// A value that is swapped as a whole, absent when it did not change.
template <class T>
struct ValueChange {
    std::optional<std::pair<T, T>> before_after;
    bool empty() const { return !before_after.has_value(); }
    friend bool operator==(const ValueChange&, const ValueChange&) = default;
};

/// The texts at the head of a show and its unknown keys.
struct Head {
    std::string title, venue, date, act;
    Contact contact;
    std::string notes;
    Display display;
    Extras extras;
    friend bool operator==(const Head&, const Head&) = default;
};

/// Stage without its risers, which are a list of their own.
struct StageShell {
    Outline outline;
    Surfaces surfaces;
    std::optional<Room> room;
    Extras extras;
    friend bool operator==(const StageShell&, const StageShell&) = default;
};

struct Change {
    std::string name;  ///< what the undo menu says: "Move wedge 1"
    ValueChange<Head> head;
    ValueChange<Air> air;
    ValueChange<System> system;
    ValueChange<Tolerance> tolerance;
    ValueChange<StageShell> stage;
    ListChange<Riser> risers;
    ListChange<Loudspeaker> loudspeakers;
    ListChange<Input> inputs;
    ListChange<Performer> performers;
    ListChange<Mix> mixes;
    ListChange<Backline> backline;
    ListChange<Listener> listeners;
    ListChange<Mark> marks;
    ValueChange<std::vector<SoundcheckEntry>> soundcheck;

    bool empty() const;  ///< nothing changed: such an edit is not stacked
    friend bool operator==(const Change&, const Change&) = default;
};

/// What differs between two shows. Ids within each list must be unique in both.
Change difference(const Show& before, const Show& after, std::string name);
/// Swaps the "after" side in. The show must be the one that the change was taken from (its "before" side).
void apply(Show& show, const Change& change);
/// The change that takes it back, under the same name.
Change inverted(const Change& change);
/// One change with the effect of `first`, then `second`.
Change merged(const Change& first, const Change& second);
/// Ids of all objects that a change adds, removes or alters.
std::set<std::string> touched_ids(const Change& change);

}  // namespace howlmap
