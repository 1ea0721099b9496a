// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/band_solver.h"

#include <algorithm>
#include <cmath>

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
        for (int round = 0; round < kRounds && !now_.job.cancelled(); ++round) {
            collect();
            if (bands_.empty()) break;
            step();
            look();
            if (*std::max_element(gains_.begin(), gains_.end()) <= limit_db_ + 0.05 && round > 0) break;
        }
        return rounded();
    }

  private:
    struct Condition {
        std::size_t at;
        double gain_db;
        std::vector<double> mix_share;
    };

    /// Frequencies that are or are close to being too strong, and the bands that reach them.
    void collect() {
        conditions_.clear();
        std::vector<std::size_t> strong;
        for (std::size_t at = 0; at < gains_.size(); ++at)
            if (gains_[at] > limit_db_ - kNearDb) strong.push_back(at);
        std::stable_sort(strong.begin(), strong.end(),
                         [&](std::size_t a, std::size_t b) { return gains_[a] > gains_[b]; });
        if (strong.size() > kMostConditions) strong.resize(kMostConditions);
        for (std::size_t at : strong) {
            std::vector<double> share(now_.show.mixes.size());
            for (const LoopPart& part : guard_.parts(at)) share[static_cast<std::size_t>(part.mix)] += part.share;
            const double place = 10.0 * std::log10(guard_.hz()[at] / 1000.0) + 17.0;
            for (std::size_t m = 0; m < share.size() && gains_[at] > limit_db_; ++m)
                for (int band = static_cast<int>(std::floor(place)); band <= static_cast<int>(std::ceil(place)); ++band)
                    if (share[m] >= kMixCounts && band >= 0 && band < kThirdOctaves && bands_.size() < kMostBands)
                        bands_.try_emplace({m, band}, 0.0);
            conditions_.push_back({at, gains_[at], std::move(share)});
        }
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

    void look() {
        const BandCuts cuts = bands_;
        guard_ = now_.guard.changed(now_.after([&](Show& show) { apply_cuts(show, cuts); }));
        gains_ = guard_.gains_db();
    }

    BandCuts rounded() const {
        BandCuts cuts;
        for (const auto& [key, cut] : bands_)
            if (const double half = std::floor(cut * 2.0 + 0.3) / 2.0; half < 0.0) cuts[key] = half;
        return cuts;
    }

    const Situation& now_;
    double limit_db_;
    Guard guard_;
    std::vector<double> gains_;
    std::vector<BandEnergies> shares_;
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
