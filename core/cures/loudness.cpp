// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/loudness.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "core/cures/words.h"
#include "core/listening/listening.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::cures {
namespace {
constexpr double kHeardDb = 0.1;  // smaller changes are not worth a word
constexpr double kSetDb = 0.095;  // smaller corrections are not worth a hand on the fader
constexpr double kToneRangeDb = 20.0;
constexpr std::size_t kNamedChanges = 3;
constexpr double kMostCutDb = 40.0;  // a send is not pulled further than this by another's spill

std::size_t at(int index) { return static_cast<std::size_t>(index); }

bool hears(const Performer& performer) { return performer.hears != Hears::acoustic; }
}  // namespace

Loudness::Loudness(const Show& reference) : reference_(reference) {
    for (const Performer& performer : reference_.performers)
        for (const Loudspeaker& loudspeaker : reference_.loudspeakers)
            paths_.push_back(path_energies(reference_, loudspeaker, howlmap::ear_of(reference_, performer)));
    const ChainEnergies chains(reference_);
    ears_ = ears_of(reference_, chains);
    unheard_ = unheard_mixes(reference_, chains);
    figures_ = performer_figures(reference_);
}

BandEnergies Loudness::path(const Show& show, std::size_t p, std::size_t l) const {
    const bool same = show.performers[p].position == reference_.performers[p].position &&
                      show.performers[p].ear_height_m == reference_.performers[p].ear_height_m &&
                      l < reference_.loudspeakers.size() && show.loudspeakers[l] == reference_.loudspeakers[l] &&
                      !paths_.empty();
    if (same) return paths_[p * reference_.loudspeakers.size() + l];
    return path_energies(show, show.loudspeakers[l], howlmap::ear_of(show, show.performers[p]));
}

Loudness::Ear Loudness::ear_of_performer(const Show& show, const ChainEnergies& chains, std::size_t p) const {
    const Performer& performer = show.performers[p];
    Ear ear;
    ear.by_input.assign(show.inputs.size(), 0.0);
    ear.mix = hears(performer) ? index_by_id(show.mixes, performer.mix) : -1;
    const bool sealed = performer.hears == Hears::in_ear;
    const double seal = sealed ? db_to_energy(-performer.seal_db) : 1.0;
    std::vector<BandEnergies> from(show.loudspeakers.size());
    for (std::size_t l = 0; l < from.size(); ++l) from[l] = path(show, p, l) * chains.loudspeakers[l] * seal;
    for (std::size_t m = 0; m < show.mixes.size(); ++m) {
        BandEnergies way{};
        for (const std::string& id : show.mixes[m].loudspeakers)
            if (const int l = index_by_id(show.loudspeakers, id); l >= 0) way += from[at(l)];
        if (sealed && static_cast<int>(m) == ear.mix)
            for (double& band : way) band += 1.0;
        way = way * chains.mixes[m];
        for (std::size_t s = 0; s < show.mixes[m].sends.size(); ++s) {
            const int c = index_by_id(show.inputs, show.mixes[m].sends[s].input);
            if (c < 0) continue;
            Way one{static_cast<int>(m), static_cast<int>(s), c, way * chains.inputs[at(c)], 0.0};
            one.weighted = a_weighted(one.ratio);
            ear.by_input[at(c)] += one.weighted * db_to_energy(show.mixes[m].sends[s].level_db);
            ear.ways.push_back(one);
        }
    }
    return ear;
}

std::vector<Loudness::Ear> Loudness::ears_of(const Show& show) const { return ears_of(show, ChainEnergies(show)); }

std::vector<Loudness::Ear> Loudness::ears_of(const Show& show, const ChainEnergies& chains) const {
    std::vector<Ear> ears;
    for (std::size_t p = 0; p < show.performers.size(); ++p) ears.push_back(ear_of_performer(show, chains, p));
    return ears;
}

void Loudness::solve_input(Show& show, const std::vector<Ear>& ears, std::size_t c) const {
    std::vector<int> mixes;  // whose level of this input is free: somebody listens to it
    std::vector<std::size_t> listeners;
    for (std::size_t p = 0; p < ears.size(); ++p) {
        if (ears[p].mix < 0 || !find_send(show.mixes[at(ears[p].mix)], show.inputs[c].id)) continue;
        if (!(ears_[p].by_input[c] > 0.0)) continue;
        listeners.push_back(p);
        if (std::find(mixes.begin(), mixes.end(), ears[p].mix) == mixes.end()) mixes.push_back(ears[p].mix);
    }
    if (listeners.empty()) return;
    Eigen::MatrixXd ratio =
        Eigen::MatrixXd::Zero(static_cast<Eigen::Index>(listeners.size()), static_cast<Eigen::Index>(mixes.size()));
    Eigen::VectorXd wanted = Eigen::VectorXd::Ones(ratio.rows());
    for (Eigen::Index row = 0; row < ratio.rows(); ++row) {
        const std::size_t p = listeners[static_cast<std::size_t>(row)];
        for (const Way& way : ears[p].ways) {
            if (at(way.input) != c) continue;
            const double heard = way.weighted * db_to_energy(show.mixes[at(way.mix)].sends[at(way.send)].level_db) /
                                 ears_[p].by_input[c];
            const auto free = std::find(mixes.begin(), mixes.end(), way.mix);
            if (free == mixes.end())
                wanted(row) -= heard;
            else
                ratio(row, free - mixes.begin()) += heard;
        }
    }
    const Eigen::VectorXd factors = ratio.colPivHouseholderQr().solve(wanted);
    for (std::size_t m = 0; m < mixes.size(); ++m) {
        Send& send = *find_send(show.mixes[at(mixes[m])], show.inputs[c].id);
        const double change = energy_to_db(std::max(factors(static_cast<Eigen::Index>(m)), db_to_energy(-kMostCutDb)));
        if (std::abs(change) < kSetDb) continue;
        send.level_db = std::clamp(std::round((send.level_db + change) * 10.0) / 10.0, -60.0, 160.0);
    }
}

Show Loudness::restored(const Show& changed) const {
    Show show = changed;
    const std::vector<Ear> ears = ears_of(show);
    for (std::size_t c = 0; c < show.inputs.size(); ++c) solve_input(show, ears, c);
    return show;
}

namespace {
struct HeardChange {
    double db;
    std::string words;
};

/// `more` and `less` take {0} the listener, {1} the change in dB, {2} the sound.
void note(std::vector<HeardChange>& all, std::optional<double> before, std::optional<double> after, const char* more,
          const char* less, const std::string& who, const std::string& what = {}) {
    if (!before || !after) return;
    const double change = *after - *before;
    if (std::abs(change) > kHeardDb)
        all.push_back({change, words(change > 0.0 ? more : less, who, std::abs(change), what)});
}
}  // namespace

Loss Loudness::loss(const Show& changed) const {
    const std::vector<Ear> now = ears_of(changed);
    const auto& before = figures_;
    const auto after = performer_figures(changed);
    std::vector<HeardChange> all;
    for (std::size_t p = 0; p < now.size(); ++p) {
        const std::string who = called(reference_.performers[p]);
        for (std::size_t c = 0; c < reference_.inputs.size(); ++c) {
            const int mix = ears_[p].mix;
            if (mix < 0 || !find_send(reference_.mixes[at(mix)], reference_.inputs[c].id)) continue;
            const std::string what = called(reference_.inputs[c]);
            if (now[p].mix >= 0 && !find_send(changed.mixes[at(now[p].mix)], reference_.inputs[c].id))
                all.push_back(
                    {now[p].by_input[c] > 0.0 ? energy_to_db(now[p].by_input[c] / ears_[p].by_input[c]) : -60.0,
                     words("{} no longer has {} in the mix.", who, what)});
            else
                note(all, level_of(ears_[p].by_input[c]), level_of(now[p].by_input[c]),
                     "{0} hears {1:.1f} dB more of {2}.", "{0} hears {1:.1f} dB less of {2}.", who, what);
        }
        note(all, before[p].own_dba, after[p].own_dba, "{0} hears {1:.1f} dB more of what {0} plays.",
             "{0} hears {1:.1f} dB less of what {0} plays.", who);
        note(all, before[p].ear_dba, after[p].ear_dba, "All in all it gets {1:.1f} dB louder at {0}.",
             "All in all it gets {1:.1f} dB quieter at {0}.", who);
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return std::abs(a.db) > std::abs(b.db); });
    Loss loss;
    const std::size_t named = all.size() <= kNamedChanges ? all.size() : kNamedChanges - 1;
    for (std::size_t i = 0; i < named; ++i) loss.words += (i ? " " : "") + all[i].words;
    if (all.size() > named) loss.words += " " + words("{} more things change by as much or less.", all.size() - named);
    if (!all.empty()) loss.change_db = all.front().db;
    return loss;
}

namespace {
/// Rms over the third-octaves within 20 dB of the strongest. A change of level alone is no change of tone.
double tone_change_db(const BandEnergies& before, const BandEnergies& after) {
    const double least = *std::max_element(before.begin(), before.end()) * db_to_energy(-kToneRangeDb);
    const double level = a_weighted(after) > 0.0 && a_weighted(before) > 0.0
                             ? energy_to_db(a_weighted(after) / a_weighted(before))
                             : 0.0;
    double squares = 0.0;
    int bands = 0;
    for (std::size_t b = 0; b < before.size(); ++b) {
        if (!(before[b] > 0.0) || before[b] < least || !(after[b] > 0.0)) continue;
        const double change = energy_to_db(after[b] / before[b]) - level;
        squares += change * change;
        ++bands;
    }
    return bands > 0 ? std::sqrt(squares / bands) : 0.0;
}
}  // namespace

double Loudness::tone_cost_db(const Show& changed) const {
    const ChainEnergies chains(changed);
    const std::vector<Ear> now = ears_of(changed, chains);
    const auto tone = [](const Show& show, const std::vector<Ear>& ears, std::size_t p, bool own_only) {
        BandEnergies energies{};
        for (const Way& way : ears[p].ways) {
            const bool own = show.inputs[at(way.input)].performer == show.performers[p].id;
            if (way.mix != ears[p].mix || (own_only && !own)) continue;
            energies += way.ratio * db_to_energy(show.mixes[at(way.mix)].sends[at(way.send)].level_db);
        }
        return energies;
    };
    double worst = 0.0;
    for (std::size_t p = 0; p < now.size(); ++p) {
        const bool own_only = sum(tone(reference_, ears_, p, true)) > 0.0;
        worst = std::max(worst, tone_change_db(tone(reference_, ears_, p, own_only), tone(changed, now, p, own_only)));
    }
    const std::vector<BandEnergies> sent = unheard_mixes(changed, chains);
    for (std::size_t m = 0; m < std::min(sent.size(), unheard_.size()); ++m)
        worst = std::max(worst, tone_change_db(unheard_[m], sent[m]));
    return worst;
}

std::vector<BandEnergies> Loudness::unheard_mixes(const Show& show, const ChainEnergies& chains) const {
    std::vector<BandEnergies> sent(show.mixes.size());
    for (std::size_t m = 0; m < sent.size(); ++m) {
        const Mix& mix = show.mixes[m];
        const bool heard = std::any_of(reference_.performers.begin(), reference_.performers.end(),
                                       [&](const Performer& p) { return hears(p) && p.mix == mix.id; });
        if (heard) continue;
        BandEnergies out{}, in{};
        for (const std::string& id : mix.loudspeakers)
            if (const int l = index_by_id(show.loudspeakers, id); l >= 0) out += chains.loudspeakers[at(l)];
        for (const Send& send : mix.sends)
            if (const int c = index_by_id(show.inputs, send.input); c >= 0)
                in += chains.inputs[at(c)] * db_to_energy(send.level_db);
        sent[m] = in * out * chains.mixes[m];
    }
    return sent;
}

}  // namespace howlmap::cures
