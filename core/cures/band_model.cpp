// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/band_model.h"

#include <algorithm>
#include <cmath>

#include "core/air/weighting.h"
#include "core/listening/transfer.h"
#include "core/loop/filter.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::cures {
namespace {
constexpr double kDeepest = -12.0, kLowestSetting = -15.0;
constexpr std::size_t kMostBands = 40;
constexpr double kMixCounts = 0.08;   // share of a loop gain from which on a mix's bands are looked at
constexpr double kOutsideTone = 0.1;  // weight of a band in which the players have next to nothing
// Common practice, no source: a decibel that is missed counts as much as a cut of 17 dB in one band, or of 10 dB in
// three: the last decibels of a margin would otherwise be bought with everything that can be cut. As a square it is
// (kBend x + kPrice / (2 kBend))^2, nearly a straight line.
constexpr double kPrice = 3.0, kBend = 0.1;
constexpr double kAffordedDb = 0.4, kMostMissedDb = 60.0;

/// dB at a frequency for each dB of a band's gain, around the gain that it has.
double slope(int band, double gain_db, double hz) {
    const double step = -0.5;
    return (ratio_to_db(std::abs(graphic_band(band, gain_db + step).at(hz))) -
            ratio_to_db(std::abs(graphic_band(band, gain_db).at(hz)))) /
           step;
}

/// What a mix's listeners hear of it, as A-weighted shares of the third-octaves; they sum to 1.
BandEnergies shares_of(const Show& show, const ChainEnergies& chains, std::size_t m) {
    BandEnergies total{};
    for (const Send& send : show.mixes[m].sends)
        if (const int c = index_by_id(show.inputs, send.input); c >= 0)
            total += chains.mixes[m] * chains.inputs[static_cast<std::size_t>(c)] * db_to_energy(send.level_db);
    for (std::size_t b = 0; b < total.size(); ++b) total[b] *= a_weighting_energies()[b];
    const double all = sum(total);
    return all > 0.0 ? total * (1.0 / all) : total;
}

}  // namespace

BandModel::BandModel(const Situation& now) : now_(now) {
    const ChainEnergies chains(now.show);
    for (std::size_t m = 0; m < now.show.mixes.size(); ++m) shares_.push_back(shares_of(now.show, chains, m));
}

std::vector<double> BandModel::shares_at(const Guard& guard, std::size_t at) const {
    std::vector<double> shares(now_.show.mixes.size());
    for (const LoopPart& part : guard.parts(at)) shares[static_cast<std::size_t>(part.mix)] += part.share;
    return shares;
}

BandCondition BandModel::condition(double hz, double over_db, std::vector<double> mix_share,
                                   const BandCuts& cuts) const {
    BandCondition condition{hz, over_db, std::move(mix_share)};
    for (const auto& [key, cut] : cuts) condition.over_db -= effect(condition, key, cut) * cut;
    return condition;
}

void BandModel::add_bands(const BandCondition& condition, BandCuts& bands) const {
    const double place = 10.0 * std::log10(condition.hz / 1000.0) + 17.0;
    for (std::size_t m = 0; m < condition.mix_share.size(); ++m)
        for (const double band : {std::floor(place), std::ceil(place)})
            if (condition.mix_share[m] >= kMixCounts && band >= 0.0 && band < kThirdOctaves &&
                bands.size() < kMostBands)
                bands.try_emplace({m, static_cast<int>(band)}, 0.0);
}

double BandModel::setting(const Key& key) const {
    const auto& eq = now_.show.mixes[key.first].graphic_eq;
    const auto found = eq.find(key.second);
    return found == eq.end() ? 0.0 : found->second;
}

/// Change of a condition's gain per dB of a band: the filter itself, less the send that goes up to keep the
/// loudness.
double BandModel::effect(const BandCondition& condition, const Key& key, double cut) const {
    const double gain = setting(key) + cut, share = condition.mix_share[key.first];
    if (share == 0.0) return 0.0;
    double louder = 0.0;
    for (std::size_t b = 0; b < shares_[key.first].size(); ++b)
        if (std::abs(static_cast<int>(b) - key.second) <= 3)
            louder += shares_[key.first][b] * slope(key.second, gain, third_octave_centre(static_cast<int>(b)));
    return share * (slope(key.second, gain, condition.hz) - louder);
}

double BandModel::weight(const Key& key) const {
    const BandEnergies& shares = shares_[key.first];
    const double most = *std::max_element(shares.begin(), shares.end());
    return shares[static_cast<std::size_t>(key.second)] >= 0.01 * most ? 1.0 : kOutsideTone;
}

double BandModel::excess_db(const std::vector<BandCondition>& conditions, const BandCuts& cuts) const {
    double total = 0.0;
    for (const BandCondition& condition : conditions) {
        double over = condition.over_db;
        for (const auto& [key, cut] : cuts) over += effect(condition, key, cut) * cut;
        total += std::max(0.0, over);
    }
    return total;
}

/// The last variable is what all conditions are missed by.
BoundedSquares BandModel::problem(const std::vector<BandCondition>& conditions, const BandCuts& bands) const {
    BoundedSquares squares;
    for (const auto& [key, cut] : bands) {
        LinearRow row{std::vector<double>(bands.size() + 1), 0.0};
        row.factors[squares.lowest.size()] = std::sqrt(weight(key)) / 10.0;
        squares.rows.push_back(row);
        squares.lowest.push_back(std::min(0.0, std::max(kDeepest, kLowestSetting - setting(key))));
        squares.highest.push_back(0.0);
    }
    LinearRow missed{std::vector<double>(bands.size() + 1), kPrice / (2.0 * kBend)};
    missed.factors.back() = kBend;
    squares.rows.push_back(missed);
    squares.lowest.push_back(0.0);
    squares.highest.push_back(kMostMissedDb);
    for (const BandCondition& condition : conditions) {
        LinearRow row{{}, condition.over_db};
        for (const auto& [key, cut] : bands) row.factors.push_back(effect(condition, key, cut));
        row.factors.push_back(-1.0);
        squares.at_most_zero.push_back(row);
    }
    return squares;
}

BandModel::Smallest BandModel::smallest(const std::vector<BandCondition>& conditions, const BandCuts& bands) const {
    BoundedSquares squares = problem(conditions, bands);
    std::vector<double> start;
    for (const auto& [key, cut] : bands) start.push_back(std::clamp(cut, squares.lowest[start.size()], 0.0));
    start.push_back(0.0);
    for (const LinearRow& row : squares.at_most_zero)
        start.back() = std::clamp(row.at(start) + start.back(), start.back(), kMostMissedDb);
    std::vector<double> solved = squares.solve(start);
    if (solved.back() < kAffordedDb) {  // not worth missing
        solved.back() = squares.highest.back() = 0.0;
        solved = squares.solve(solved);
    }
    Smallest smallest{bands, solved.back()};
    std::size_t column = 0;
    for (auto& [key, cut] : smallest.cuts) cut = solved[column++];
    return smallest;
}

BandCuts in_half_decibels(const BandCuts& cuts) {
    BandCuts halves;
    for (const auto& [key, cut] : cuts)
        if (const double half = std::floor(cut * 2.0 + 0.3) / 2.0; half < 0.0) halves[key] = half;
    return halves;
}

void apply_cuts(Show& show, const BandCuts& cuts) {
    for (const auto& [key, cut] : cuts) {
        double& gain = show.mixes[key.first].graphic_eq[key.second];
        gain = std::max(gain + cut, std::min(gain, kLowestSetting));
    }
}

}  // namespace howlmap::cures
