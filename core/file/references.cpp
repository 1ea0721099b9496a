// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/file/references.h"

#include <unordered_map>
#include <unordered_set>

#include "core/file/json_tree.h"
#include "core/show/limits.h"

namespace howlmap::file {
namespace {
using Ids = std::unordered_set<std::string_view>;

template <class List>
Ids ids_of(const List& list) {
    Ids out;
    for (const auto& item : list) out.insert(item.id);
    return out;
}

/// Looks for the first breach; once it is found, the rest is passed over.
class Checker {
  public:
    std::optional<FileError> error;

    template <class List>
    void unique(const std::string& pointer, const List& list) {
        count_ += list.size();
        for (std::size_t i = 0; i < list.size() && !error; ++i) {
            const std::string place = pointer + "/" + std::to_string(i) + "/id";
            const auto [first, fresh] = places_.try_emplace(list[i].id, place);
            if (!fresh)
                error = FileError{place, in_quotes(list[i].id), "an id of its own (" + first->second + " has it)"};
        }
    }
    void count() {
        if (!error && count_ > limits::kObjects)
            error = FileError{"/", std::to_string(count_) + " objects", std::to_string(limits::kObjects) + " at most"};
    }
    void leads(const std::string& place, const std::string& id, const Ids& ids, const char* what) {
        if (!error && !ids.contains(id)) error = FileError{place, in_quotes(id), std::string("the id of ") + what};
    }
    void may_lead(const std::string& place, const std::string& id, const Ids& ids, const char* what) {
        if (!id.empty()) leads(place, id, ids, what);
    }

  private:
    std::unordered_map<std::string_view, std::string> places_;
    std::size_t count_ = 0;
};

void check_ids(Checker& check, const Show& show) {
    check.unique("/stage/risers", show.stage.risers);
    check.unique("/loudspeakers", show.loudspeakers);
    check.unique("/inputs", show.inputs);
    check.unique("/performers", show.performers);
    check.unique("/mixes", show.mixes);
    check.unique("/backline", show.backline);
    check.unique("/listeners", show.listeners);
    check.unique("/marks", show.marks);
    check.count();
}

std::string at(const char* list, std::size_t index, const char* key) {
    return "/" + std::string(list) + "/" + std::to_string(index) + "/" + key;
}
}  // namespace

std::optional<FileError> check_references(const Show& show) {
    Checker check;
    check_ids(check, show);
    const Ids loudspeakers = ids_of(show.loudspeakers), inputs = ids_of(show.inputs);
    const Ids performers = ids_of(show.performers), mixes = ids_of(show.mixes);
    for (std::size_t i = 0; i < show.inputs.size(); ++i)
        check.may_lead(at("inputs", i, "performer"), show.inputs[i].performer, performers, "a performer");
    for (std::size_t i = 0; i < show.performers.size(); ++i)
        check.may_lead(at("performers", i, "mix"), show.performers[i].mix, mixes, "a mix");
    for (std::size_t i = 0; i < show.mixes.size(); ++i) {
        const Mix& mix = show.mixes[i];
        for (std::size_t j = 0; j < mix.loudspeakers.size(); ++j)
            check.leads(at("mixes", i, "loudspeakers/") + std::to_string(j), mix.loudspeakers[j], loudspeakers,
                        "a loudspeaker");
        for (std::size_t j = 0; j < mix.sends.size(); ++j)
            check.leads(at("mixes", i, "sends/") + std::to_string(j) + "/input", mix.sends[j].input, inputs,
                        "an input");
    }
    for (std::size_t i = 0; i < show.soundcheck.size(); ++i) {
        check.may_lead(at("soundcheck", i, "input"), show.soundcheck[i].input, inputs, "an input");
        check.may_lead(at("soundcheck", i, "mix"), show.soundcheck[i].mix, mixes, "a mix");
    }
    return check.error;
}

}  // namespace howlmap::file
