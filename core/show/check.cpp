// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/show/check.h"

#include <algorithm>
#include <map>

#include "core/geometry/polygon.h"

namespace howlmap {
namespace {
using Names = std::vector<std::pair<std::string, std::string>>;  ///< id and name

template <class T>
void take(Names& names, const T& of) {
    names.emplace_back(of.id, of.name.empty() ? of.id : of.name);
}

/// "voice", "voice and fiddle", "voice, fiddle and 3 more".
std::string listed(const Names& names) {
    constexpr std::size_t kShown = 4;
    const std::size_t shown = names.size() <= kShown ? names.size() : kShown - 1;
    std::string out;
    for (std::size_t i = 0; i < shown; ++i) {
        const bool last = i + 1 == names.size();
        out += (i == 0 ? "" : last ? " and " : ", ") + names[i].second;
    }
    if (shown < names.size()) out += " and " + std::to_string(names.size() - shown) + " more";
    return out;
}

void add(std::vector<Finding>& out, const Names& names, const char* one, const char* several) {
    if (names.empty()) return;
    Finding finding{listed(names) + (names.size() == 1 ? one : several), {}};
    for (const auto& [id, name] : names) finding.ids.push_back(id);
    out.push_back(std::move(finding));
}

/// Mains, subs and fills for the house stand off the stage by design.
bool stands_on_stage(LoudspeakerKind kind) { return makes_wash(kind) && kind != LoudspeakerKind::flown_fill; }

bool is_fed(const Show& show, const std::string& loudspeaker) {
    return std::any_of(show.mixes.begin(), show.mixes.end(), [&](const Mix& mix) {
        return std::find(mix.loudspeakers.begin(), mix.loudspeakers.end(), loudspeaker) != mix.loudspeakers.end();
    });
}

bool is_sent(const Show& show, const std::string& input) {
    return std::any_of(show.mixes.begin(), show.mixes.end(), [&](const Mix& mix) {
        return std::any_of(mix.sends.begin(), mix.sends.end(), [&](const Send& send) { return send.input == input; });
    });
}

bool has_in_ears(const Show& show, const std::string& mix) {
    return std::any_of(show.performers.begin(), show.performers.end(), [&](const Performer& performer) {
        return performer.hears == Hears::in_ear && performer.mix == mix;
    });
}

/// Objects whose number another one has too.
template <class List, class Number>
Names same_numbers(const List& list, Number number) {
    std::map<int, int> count;
    for (const auto& item : list) ++count[number(item)];
    Names out;
    for (const auto& item : list)
        if (count[number(item)] > 1) take(out, item);
    return out;
}

void check_places(std::vector<Finding>& out, const Show& show) {
    Names outside;
    for (const Loudspeaker& loudspeaker : show.loudspeakers)
        if (stands_on_stage(loudspeaker.kind) && !covers(show.stage.outline, loudspeaker.position.xy()))
            take(outside, loudspeaker);
    for (const Input& input : show.inputs)
        if (!is_line(input) && !covers(show.stage.outline, input.position.xy())) take(outside, input);
    for (const Performer& performer : show.performers)
        if (!covers(show.stage.outline, performer.position)) take(outside, performer);
    add(out, outside, " is outside the stage outline.", " are outside the stage outline.");
}

void check_numbers(std::vector<Finding>& out, const Show& show) {
    add(out, same_numbers(show.inputs, [](const Input& input) { return input.channel; }), "",
        " have a channel number that another input has too.");
    add(out, same_numbers(show.mixes, [](const Mix& mix) { return mix.number; }), "",
        " have a mix number that another mix has too.");
}

void check_listening(std::vector<Finding>& out, const Show& show) {
    Names unheard, without;
    for (const Mix& mix : show.mixes)
        if (mix.loudspeakers.empty() && !has_in_ears(show, mix.id)) take(unheard, mix);
    for (const Performer& performer : show.performers)
        if (performer.hears != Hears::acoustic && performer.mix.empty()) take(without, performer);
    add(out, unheard, " is a mix with neither a loudspeaker nor anyone on in-ears: nobody hears it.",
        " are mixes with neither a loudspeaker nor anyone on in-ears: nobody hears them.");
    add(out, without, " has no mix to hear.", " have no mix to hear.");
}

void check_feeds(std::vector<Finding>& out, const Show& show) {
    Names unsent, silent;
    for (const Input& input : show.inputs)
        if (!is_sent(show, input.id)) take(unsent, input);
    for (const Loudspeaker& loudspeaker : show.loudspeakers)
        if (makes_wash(loudspeaker.kind) && !is_fed(show, loudspeaker.id)) take(silent, loudspeaker);
    add(out, unsent, " is in no mix.", " are in no mix.");
    add(out, silent, " belongs to no mix and plays nothing.", " belong to no mix and play nothing.");
}
}  // namespace

std::vector<Finding> findings(const Show& show) {
    std::vector<Finding> out;
    check_places(out, show);
    check_numbers(out, show);
    check_listening(out, show);
    check_feeds(out, show);
    return out;
}

}  // namespace howlmap
