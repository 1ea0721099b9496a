// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/counted_bands.h"

#include <algorithm>
#include <cmath>

namespace howlmap::cures {
namespace {
constexpr int kCountedRounds = 4;
constexpr double kCountedNearDb = 0.5;  // draws this close to what is wanted are kept in the conditions
constexpr double kEnoughDb = 0.05;      // short by no more than this is there
constexpr double kFittedDb = 0.25;      // what is fitted to a few draws gives all about so much less, on the examples
constexpr std::size_t kCountedMostConditions = 120;
constexpr int kMostThinned = 4;  // trials with fewer faders

using Key = BandCuts::key_type;

class CountedSolver {
  public:
    CountedSolver(const Situation& now, double wanted_db, Analyst& analyst)
        : now_(now), model_(now), wanted_db_(wanted_db + kFittedDb), analyst_(analyst) {}

    BandCuts solve() {
        look({});
        most_ = reached_;
        for (int round = 0; round < kCountedRounds && short_db() > kEnoughDb && !now_.job.cancelled(); ++round) {
            collect(latest_);
            if (bands_.empty()) break;
            solve_round();
            if (reached_ > most_) {
                most_ = reached_;
                best_ = latest_;
            }
        }
        thin_out();
        return best_;
    }

  private:
    Show cut(const BandCuts& cuts) const {
        return now_.after([&](Show& show) { apply_cuts(show, cuts); });
    }

    void look(const BandCuts& cuts) {
        const Show show = cut(cuts);
        draws_ = analyst_.few_draws(show, wanted_db_ + kCountedNearDb);
        reached_ = analyst_.screened_db(show);
    }

    /// What the latest cuts are short of, but for what is not worth its price.
    double short_db() const { return wanted_db_ - missed_db_ - reached_; }

    /// The smallest cuts in the bands, a little deeper for what rounding and the straight line through a curve cost.
    void solve_round() {
        const BandModel::Smallest smallest = model_.smallest(conditions_, bands_);
        bands_ = smallest.cuts;
        missed_db_ = smallest.short_db;
        latest_ = in_half_decibels(bands_);
        look(latest_);
        deeper_db_ = std::clamp(short_db(), 0.0, 0.5);
    }

    /// The rings of draws that are too strong with these cuts; the worst twentieth may stay.
    void collect(const BandCuts& cuts) {
        const Guard guard = now_.guard.changed(cut(cuts));
        std::vector<DrawnMargin> rings;
        for (const auto& draw : draws_)
            if (draw) rings.push_back(*draw);
        std::sort(rings.begin(), rings.end(), [](const auto& a, const auto& b) { return a.margin_db < b.margin_db; });
        for (std::size_t i = draws_.size() / 20; i < rings.size() && rings[i].margin_db < wanted_db_ + kCountedNearDb;
             ++i) {
            if (conditions_.size() >= kCountedMostConditions) break;
            const double over = wanted_db_ + deeper_db_ - rings[i].margin_db;
            const auto above = std::lower_bound(guard.hz().begin(), guard.hz().end() - 1, rings[i].hz);
            auto condition = model_.condition(
                rings[i].hz, over, model_.shares_at(guard, static_cast<std::size_t>(above - guard.hz().begin())), cuts);
            if (over > 0.0) model_.add_bands(condition, bands_);
            conditions_.push_back(std::move(condition));
        }
    }

    /// As few faders as give the same: those that seem to do least go back together, then ever fewer.
    void thin_out() {
        const double enough = std::min(most_, wanted_db_) - kEnoughDb;
        std::size_t together = best_.size() / 2;
        for (int trial = 0; trial < kMostThinned && together > 0 && best_.size() > 1 && !now_.job.cancelled();
             ++trial) {
            const std::vector<Key> order = idlest(best_);
            latest_ = best_;
            for (std::size_t i = 0; i < together; ++i) latest_.erase(order[i]);
            look(latest_);
            if (reached_ >= enough) best_ = latest_;
            together = std::min(reached_ >= enough ? together : together / 2, best_.size() - 1);
        }
    }

    /// Cuts by how much the rings of all draws would rise over the limit without each, least first.
    std::vector<Key> idlest(const BandCuts& cuts) const {
        std::vector<std::pair<double, Key>> losses;
        for (const auto& [key, gain] : cuts) {
            BandCuts less = cuts;
            less.erase(key);
            losses.emplace_back(model_.excess_db(conditions_, less), key);
        }
        std::sort(losses.begin(), losses.end());
        std::vector<Key> order;
        for (const auto& [loss, key] : losses) order.push_back(key);
        return order;
    }

    const Situation& now_;
    BandModel model_;
    double wanted_db_;
    Analyst& analyst_;
    std::vector<std::optional<DrawnMargin>> draws_;
    std::vector<BandCondition> conditions_;
    BandCuts bands_, latest_, best_;  // as solved; the same in half decibels; the best of those
    double reached_ = 0.0, most_ = 0.0;
    double deeper_db_ = 0.0, missed_db_ = 0.0;
};
}  // namespace

BandCuts smallest_counted_cuts(const Situation& now, double wanted_db, Analyst& analyst) {
    return CountedSolver(now, wanted_db, analyst).solve();
}

}  // namespace howlmap::cures
