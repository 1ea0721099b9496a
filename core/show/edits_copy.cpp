// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cctype>
#include <map>
#include <set>

#include "core/show/edits.h"
#include "core/show/find.h"
#include "core/show/limits.h"

namespace howlmap {
namespace {
using Renames = std::map<std::string, std::string>;

std::set<std::string> all_ids(const Show& show) {
    std::set<std::string> ids;
    for_each_placed_list(show, [&](const auto& list) {
        for (const auto& item : list) ids.insert(item.id);
    });
    for (const Mix& mix : show.mixes) ids.insert(mix.id);
    return ids;
}

std::set<std::string> all_names(const Show& show) {
    std::set<std::string> names;
    for (const Placed& object : placed_objects(show)) names.insert(object.name);
    return names;
}

/// The wish, or the wish without its number and with the first number from 2 up that is free.
std::string numbered(const std::set<std::string>& taken, std::string_view wish, char between) {
    if (!taken.contains(std::string(wish))) return std::string(wish);
    std::string stem(wish);
    std::size_t end = stem.size();
    while (end > 0 && std::isdigit(static_cast<unsigned char>(stem[end - 1]))) --end;
    if (end > 0 && end < stem.size() && stem[end - 1] == between) stem.resize(end - 1);
    for (int n = 2;; ++n) {
        std::string next = stem + between + std::to_string(n);
        if (!taken.contains(next)) return next;
    }
}

void rename(std::string& id, const Renames& renames) {
    if (const auto found = renames.find(id); found != renames.end()) id = found->second;
}

/// The mix with only what concerns the selection.
Mix part_of(const Mix& mix, const Ids& ids) {
    Mix part = mix;
    std::erase_if(part.loudspeakers, [&](const std::string& id) { return !has(ids, id); });
    std::erase_if(part.sends, [&](const Send& send) { return !has(ids, send.input); });
    return part;
}

Show picked(const Show& show, const Ids& ids) {
    Show part = show;
    part.mixes.clear();
    part.soundcheck.clear();
    for_each_placed_list(
        part, [&](auto& list) { std::erase_if(list, [&](const auto& item) { return !has(ids, item.id); }); });
    for (const Mix& mix : show.mixes) {
        Mix piece = part_of(mix, ids);
        const bool heard = std::any_of(part.performers.begin(), part.performers.end(),
                                       [&](const Performer& p) { return p.mix == mix.id; });
        if (heard || !piece.loudspeakers.empty() || !piece.sends.empty()) part.mixes.push_back(std::move(piece));
    }
    return part;
}

/// A mix of the part that the show has already: same id and same name.
bool joins(const Show& show, const Mix& mix) {
    const Mix* there = find_by_id(show.mixes, mix.id);
    return there && there->name == mix.name;
}

Renames renames_for(const Show& show, const Show& part) {
    Renames renames;
    std::set<std::string> taken = all_ids(show);
    const auto claim = [&](const std::string& id) {
        const std::string next = numbered(taken, id, '-');
        taken.insert(next);
        if (next != id) renames[id] = next;
    };
    for_each_placed_list(part, [&](const auto& list) {
        for (const auto& item : list) claim(item.id);
    });
    for (const Mix& mix : part.mixes)
        if (!joins(show, mix)) claim(mix.id);
    return renames;
}

void rename_references(Show& part, const Renames& renames) {
    for (Input& input : part.inputs) rename(input.performer, renames);
    for (Performer& performer : part.performers) rename(performer.mix, renames);
    for (Mix& mix : part.mixes) {
        for (std::string& id : mix.loudspeakers) rename(id, renames);
        for (Send& send : mix.sends) rename(send.input, renames);
    }
}

void join_mix(Show& show, const Mix& piece) {
    Mix& mix = *find_by_id(show.mixes, piece.id);
    mix.loudspeakers.insert(mix.loudspeakers.end(), piece.loudspeakers.begin(), piece.loudspeakers.end());
    mix.sends.insert(mix.sends.end(), piece.sends.begin(), piece.sends.end());
}

int free_mix_number(const Show& show) {
    int number = 1;
    while (std::any_of(show.mixes.begin(), show.mixes.end(), [&](const Mix& m) { return m.number == number; }))
        ++number;
    return number;
}

void add_mixes(Show& show, const Show& part, const Renames& renames) {
    for (Mix mix : part.mixes) {
        if (joins(show, mix)) {
            join_mix(show, mix);
            continue;
        }
        rename(mix.id, renames);
        const auto same = [&](const Mix& m) { return m.number == mix.number; };
        if (std::any_of(show.mixes.begin(), show.mixes.end(), same)) mix.number = free_mix_number(show);
        show.mixes.push_back(std::move(mix));
    }
}

void give_fresh_channel(const Show& show, Input& input) {
    const auto same = [&](const Input& i) { return i.channel == input.channel; };
    if (std::any_of(show.inputs.begin(), show.inputs.end(), same)) input.channel = free_channel(show);
}

template <class T>
void prepare(const Show&, T&) {}
void prepare(const Show& show, Input& input) { give_fresh_channel(show, input); }

template <class T>
std::string* name_of(T& item) {
    return &item.name;
}
std::string* name_of(Mark&) { return nullptr; }  // texts repeat on purpose: "16 A"
}  // namespace

std::string fresh_id(const Show& show, std::string_view wish) { return numbered(all_ids(show), wish, '-'); }

std::string fresh_name(const Show& show, std::string_view wish) { return numbered(all_names(show), wish, ' '); }

int free_channel(const Show& show) {
    std::set<int> taken;
    for (const Input& input : show.inputs) taken.insert(input.channel);
    int channel = 1;
    while (taken.contains(channel)) ++channel;
    return channel;
}

bool within_limits(const Show& show) {
    std::size_t all = show.mixes.size();
    for_each_placed_list(show, [&](const auto& list) { all += list.size(); });
    return show.inputs.size() <= limits::kInputs && show.mixes.size() <= limits::kMixes &&
           show.loudspeakers.size() <= limits::kLoudspeakers && all <= limits::kObjects;
}

Show extract(const Show& show, const Ids& ids) {
    Show part = picked(show, ids);
    for (Input& input : part.inputs)
        if (!has(ids, input.performer)) input.performer.clear();
    return part;
}

Ids insert(Show& show, Show part, Vec2 offset) {
    const Renames renames = renames_for(show, part);
    rename_references(part, renames);
    add_mixes(show, part, renames);
    Ids added;
    std::set<std::string> names = all_names(show);
    const auto add = [&](auto& to, auto& from) {
        for (auto& item : from) {
            rename(item.id, renames);
            std::erase_if(item.extras, [](const auto& key) { return key.first == "locked"; });
            if (std::string* name = name_of(item)) names.insert(*name = numbered(names, *name, ' '));
            prepare(show, item);
            added.push_back(item.id);
            to.push_back(std::move(item));
        }
    };
    add(show.stage.risers, part.stage.risers);
    add(show.backline, part.backline);
    add(show.performers, part.performers);
    add(show.loudspeakers, part.loudspeakers);
    add(show.inputs, part.inputs);
    add(show.listeners, part.listeners);
    add(show.marks, part.marks);
    move_by(show, added, offset);
    return added;
}

Ids duplicate(Show& show, const Ids& ids, Vec2 offset) { return insert(show, picked(show, ids), offset); }

void remove_objects(Show& show, const Ids& ids) {
    std::set<std::string> gone;
    for_each_placed_list(show, [&](auto& list) {
        std::erase_if(list, [&](const auto& item) {
            const bool goes = has(ids, item.id) && !is_locked(item.extras);
            if (goes) gone.insert(item.id);
            return goes;
        });
    });
    for (Mix& mix : show.mixes) {
        std::erase_if(mix.loudspeakers, [&](const std::string& id) { return gone.contains(id); });
        std::erase_if(mix.sends, [&](const Send& send) { return gone.contains(send.input); });
    }
    for (Input& input : show.inputs)
        if (gone.contains(input.performer)) input.performer.clear();
    for (SoundcheckEntry& entry : show.soundcheck)
        if (gone.contains(entry.input)) entry.input.clear();
}

}  // namespace howlmap
