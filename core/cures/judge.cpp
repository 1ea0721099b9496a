// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/judge.h"

#include <algorithm>
#include <cmath>

#include "core/cures/changed_values.h"
#include "core/cures/words.h"
#include "core/listening/send_model.h"
#include "core/show/find.h"

namespace howlmap::cures {
namespace {
constexpr double kMostLostDb = 2.0;  // an input that is gone is one trouble, however far it fell
constexpr double kEndlessDb = 60.0;  // what a cure counts that leaves no loop at all

std::optional<double> gain(const std::optional<double>& before, const std::optional<double>& after) {
    if (!before || !after) return std::nullopt;
    return *after - *before;
}

/// " Then set voice in mix 1 to 101.2 dB (+1.2), guitar to 95.0 dB (-0.3), so that it stays as loud."
std::string sends_words(const Show& from, const Show& after) {
    const auto changes = send_changes(from, after);
    if (changes.empty()) return {};
    std::string list;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        const SendChange& change = changes[i];
        const std::string& input = name(*find_by_id(from.inputs, change.input));
        const double by_db = change.to_db - change.from_db;
        list += i ? ", " : "";
        list += i && change.mix == changes[i - 1].mix
                    ? words("{} to {:.1f} dB ({:+.1f})", input, change.to_db, by_db)
                    : words("{} in mix {} to {:.1f} dB ({:+.1f})", input, find_by_id(from.mixes, change.mix)->number,
                            change.to_db, by_db);
    }
    return " " + words("Then set {}, so that it stays as loud.", list);
}
}  // namespace

std::string id_of(const Candidate& candidate) { return std::string(to_string(candidate.kind)) + ":" + candidate.key; }

Show applied(const Show& show, const Loudness& reference, const Candidate& candidate) {
    Show changed = show;
    candidate.edit(changed);
    return candidate.keeps_level ? reference.restored(changed) : changed;
}

double cost_of(const Candidate& candidate, const Show& from, const Show& after, const Loss& loss, double tone_db,
               const TroubleWeights& weights) {
    const double lost = std::max(0.0, std::abs(loss.change_db) - 0.1);
    const double counted = candidate.kind == CureKind::turn_down ? lost : std::min(lost, kMostLostDb);
    const double set_again = candidate.keeps_level ? static_cast<double>(send_changes(from, after).size()) : 0.0;
    return weights.of(candidate.kind) + weights.per_metre * candidate.movement_m + weights.per_send * set_again +
           weights.per_lost_db * counted + weights.tone_per_db * tone_db;
}

std::optional<Cure> judged(const Show& from, const Margins& before, const Loudness& reference,
                           const Candidate& candidate, const TroubleWeights& weights, Analyst& analyst) {
    Cure cure;
    cure.after = applied(from, reference, candidate);
    const auto findings = analyst.full(cure.after);
    if (!findings) return std::nullopt;
    const Loudness here(from);
    const Loss loss = here.loss(cure.after);
    cure.id = id_of(candidate);
    cure.kind = candidate.kind;
    cure.instruction = candidate.instruction;
    if (candidate.keeps_level) cure.instruction += sends_words(from, cure.after);
    cure.buys = candidate.buys;
    cure.loses = loss.words;
    cure.caution = candidate.caution;
    cure.objects = candidate.objects;
    cure.change = difference(from, cure.after, candidate.instruction);
    cure.changes = changed_values(from, cure.after);
    cure.margins_after = findings->margins;
    cure.margin_gain_db = gain(before.margin_db, findings->margins.margin_db);
    cure.count_on_gain_db = gain(before.margin_p05_db, findings->margins.margin_p05_db);
    cure.tone_cost_db = here.tone_cost_db(cure.after);
    cure.loudness_change_db = loss.change_db;
    cure.worst_after = findings->worst;
    cure.movement_m = candidate.movement_m;
    const double cost = cost_of(candidate, from, cure.after, loss, cure.tone_cost_db, weights);
    cure.trouble = cost - weights.tone_per_db * cure.tone_cost_db;
    const bool endless = before.margin_p05_db && !findings->margins.margin_p05_db;
    cure.score = (endless ? kEndlessDb : cure.count_on_gain_db.value_or(0.0)) / std::max(cost, 0.05);
    return cure;
}

}  // namespace howlmap::cures
