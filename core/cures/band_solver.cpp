// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/band_solver.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/air/weighting.h"
#include "core/listening/bounded_squares.h"
#include "core/listening/transfer.h"
#include "core/loop/filter.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::cures {
namespace {
constexpr double kDeepest = -12.0, kLowestSetting = -15.0;
constexpr int kRounds = 6;
constexpr std::size_t kMostBands = 40, kMostConditions = 60;
constexpr double kMixCounts = 0.08;   // share of a loop gain from which on a mix's bands are looked at
constexpr double kNearDb = 1.5;       // frequencies this close to the limit are kept in the conditions
constexpr double kIdleDb = 0.02;      // a cut must take this much off the strongest frequency for each of its decibels
constexpr double kOutsideTone = 0.1;  // weight of a band in which the players have next to nothing

using Key = std::pair<std::size_t, int>;

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

class Solver {
  public:
    Solver(const Situation& now, double needed_db)
        : now_(now), limit_db_(-now.guard.margin_db() - needed_db), guard_(now.guard), gains_(now.guard.gains_db()) {
        const ChainEnergies chains(now.show);
        for (std::size_t m = 0; m < now.show.mixes.size(); ++m) shares_.push_back(shares_of(now.show, chains, m));
    }

    BandCuts solve() {
        BandCuts best;
        double least_over = over();
        for (int round = 0; round < kRounds && !now_.job.cancelled(); ++round) {
            collect();
            if (bands_.empty()) break;
            step();
            look(bands_);
            if (over() < least_over - 0.02) {
                least_over = over();
                best = bands_;
            }
            if (std::abs(strongest_db() - limit_db_) < 0.1) break;
        }
        return without_idle(rounded(best));
    }

  private:
    struct Condition {
        std::size_t at;
        double gain_db;
        std::vector<double> mix_share;
    };

    /// Frequencies that are, were or nearly are too strong, and the bands that reach them.
    void collect() {
        for (std::size_t at = 0; at < gains_.size(); ++at)
            if (gains_[at] > limit_db_ - kNearDb) watched_.insert(at);
        std::vector<std::size_t> strong(watched_.begin(), watched_.end());
        std::stable_sort(strong.begin(), strong.end(),
                         [&](std::size_t a, std::size_t b) { return gains_[a] > gains_[b]; });
        if (strong.size() > kMostConditions) strong.resize(kMostConditions);
        conditions_.clear();
        for (std::size_t at : strong) {
            Condition condition{at, gains_[at], std::vector<double>(now_.show.mixes.size())};
            for (const LoopPart& part : guard_.parts(at))
                condition.mix_share[static_cast<std::size_t>(part.mix)] += part.share;
            if (gains_[at] > limit_db_) add_bands(condition);
            conditions_.push_back(std::move(condition));
        }
    }

    void add_bands(const Condition& condition) {
        const double place = 10.0 * std::log10(guard_.hz()[condition.at] / 1000.0) + 17.0;
        for (std::size_t m = 0; m < condition.mix_share.size(); ++m)
            for (const double band : {std::floor(place), std::ceil(place)})
                if (condition.mix_share[m] >= kMixCounts && band >= 0.0 && band < kThirdOctaves &&
                    bands_.size() < kMostBands)
                    bands_.try_emplace({m, static_cast<int>(band)}, 0.0);
    }

    double setting(const Key& key) const {
        const auto& eq = now_.show.mixes[key.first].graphic_eq;
        const auto found = eq.find(key.second);
        return found == eq.end() ? 0.0 : found->second;
    }

    /// Change of a condition's gain per dB of a band: the filter itself, less the send that goes up to keep the
    /// loudness.
    double effect(const Condition& condition, const Key& key, double cut) const {
        const double gain = setting(key) + cut, share = condition.mix_share[key.first];
        if (share == 0.0) return 0.0;
        double louder = 0.0;
        for (std::size_t b = 0; b < shares_[key.first].size(); ++b)
            if (std::abs(static_cast<int>(b) - key.second) <= 3)
                louder += shares_[key.first][b] * slope(key.second, gain, third_octave_centre(static_cast<int>(b)));
        return share * (slope(key.second, gain, guard_.hz()[condition.at]) - louder);
    }

    double weight(const Key& key) const {
        const BandEnergies& shares = shares_[key.first];
        const double most = *std::max_element(shares.begin(), shares.end());
        return shares[static_cast<std::size_t>(key.second)] >= 0.01 * most ? 1.0 : kOutsideTone;
    }

    void step() {
        BoundedSquares squares;
        std::vector<double> start;
        std::size_t column = 0;
        for (const auto& [key, cut] : bands_) {
            LinearRow row{std::vector<double>(bands_.size()), 0.0};
            row.factors[column++] = std::sqrt(weight(key)) / 10.0;
            squares.rows.push_back(row);
            squares.lowest.push_back(std::min(0.0, std::max(kDeepest, kLowestSetting - setting(key))));
            squares.highest.push_back(0.0);
            start.push_back(std::clamp(cut, squares.lowest.back(), 0.0));
        }
        for (const Condition& condition : conditions_) {
            LinearRow row{{}, condition.gain_db - limit_db_};
            for (const auto& [key, cut] : bands_) {
                row.factors.push_back(effect(condition, key, cut));
                row.constant -= row.factors.back() * cut;
            }
            squares.at_most_zero.push_back(row);
        }
        const std::vector<double> solved = squares.solve(start);
        column = 0;
        for (auto& [key, cut] : bands_) cut = solved[column++];
    }

    void look(const BandCuts& cuts) {
        guard_ = now_.guard.changed(now_.after([&](Show& show) { apply_cuts(show, cuts); }));
        gains_ = guard_.gains_db();
    }

    double strongest_db() const { return *std::max_element(gains_.begin(), gains_.end()); }
    /// How far the strongest frequency lies over the limit, dB; being far below it is waste and counts a little.
    double over() const {
        const double over = strongest_db() - limit_db_;
        return over > 0.0 ? over : -0.1 * over;
    }

    static BandCuts rounded(const BandCuts& cuts) {
        BandCuts halves;
        for (const auto& [key, cut] : cuts)
            if (const double half = std::floor(cut * 2.0 + 0.3) / 2.0; half < 0.0) halves[key] = half;
        return halves;
    }

    /// Leaves out every cut without which the strongest frequency is no stronger to speak of, shallow ones first.
    BandCuts without_idle(BandCuts cuts) {
        look(cuts);
        std::vector<std::pair<double, Key>> order;
        for (const auto& [key, cut] : cuts) order.emplace_back(-cut, key);
        std::sort(order.begin(), order.end());
        for (const auto& [depth, key] : order) {
            if (now_.job.cancelled()) break;
            const double before = strongest_db();
            BandCuts less = cuts;
            less.erase(key);
            look(less);
            if (strongest_db() <= std::max(before, limit_db_) + kIdleDb * depth)
                cuts = std::move(less);
            else
                look(cuts);
        }
        return cuts;
    }

    const Situation& now_;
    double limit_db_;
    Guard guard_;
    std::vector<double> gains_;
    std::vector<BandEnergies> shares_;
    std::set<std::size_t> watched_;
    std::vector<Condition> conditions_;
    BandCuts bands_;
};
}  // namespace

BandCuts smallest_cuts(const Situation& now, double needed_db) { return Solver(now, needed_db).solve(); }

void apply_cuts(Show& show, const BandCuts& cuts) {
    for (const auto& [key, cut] : cuts) {
        double& gain = show.mixes[key.first].graphic_eq[key.second];
        gain = std::max(gain + cut, std::min(gain, kLowestSetting));
    }
}

}  // namespace howlmap::cures
