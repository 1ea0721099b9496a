// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/counted_bands.h"

#include <algorithm>
#include <cmath>

namespace howlmap::cures {
namespace {
constexpr int kCountedRounds = 4;
constexpr double kCountedNearDb = 0.5;  // draws this close to what is wanted are kept in the conditions
constexpr double kEnoughDb = 0.05;      // short by no more than this is there
constexpr std::size_t kCountedMostConditions = 120;

class CountedSolver {
  public:
    CountedSolver(const Situation& now, double wanted_db, Analyst& analyst)
        : now_(now), model_(now), wanted_db_(wanted_db), analyst_(analyst) {}

    BandCuts solve() {
        BandCuts best;
        double most = look(best);
        double deeper = 0.0;  // what rounding and the straight line through a curve cost
        for (int round = 0; round < kCountedRounds && most < wanted_db_ - kEnoughDb && !now_.job.cancelled(); ++round) {
            collect(best_of_round_, deeper);
            if (bands_.empty()) break;
            bands_ = model_.smallest(conditions_, bands_);
            best_of_round_ = in_half_decibels(bands_);
            const double reached = look(best_of_round_);
            if (reached > most) {
                most = reached;
                best = best_of_round_;
            }
            deeper = std::clamp(wanted_db_ - reached, 0.0, 0.5);
        }
        return best;
    }

  private:
    Show cut(const BandCuts& cuts) const {
        return now_.after([&](Show& show) { apply_cuts(show, cuts); });
    }

    double look(const BandCuts& cuts) {
        const Show show = cut(cuts);
        draws_ = analyst_.few_draws(show, wanted_db_ + kCountedNearDb);
        return analyst_.screened_db(show);
    }

    /// The rings of draws that are too strong with these cuts; the worst twentieth may stay.
    void collect(const BandCuts& cuts, double deeper_db) {
        const Guard guard = now_.guard.changed(cut(cuts));
        std::vector<DrawnMargin> rings;
        for (const auto& draw : draws_)
            if (draw) rings.push_back(*draw);
        std::sort(rings.begin(), rings.end(), [](const auto& a, const auto& b) { return a.margin_db < b.margin_db; });
        for (std::size_t i = draws_.size() / 20; i < rings.size() && rings[i].margin_db < wanted_db_ + kCountedNearDb;
             ++i) {
            if (conditions_.size() >= kCountedMostConditions) break;
            const double over = wanted_db_ + deeper_db - rings[i].margin_db;
            const auto above = std::lower_bound(guard.hz().begin(), guard.hz().end() - 1, rings[i].hz);
            auto condition = model_.condition(
                rings[i].hz, over, model_.shares_at(guard, static_cast<std::size_t>(above - guard.hz().begin())), cuts);
            if (over > 0.0) model_.add_bands(condition, bands_);
            conditions_.push_back(std::move(condition));
        }
    }

    const Situation& now_;
    BandModel model_;
    double wanted_db_;
    Analyst& analyst_;
    std::vector<std::optional<DrawnMargin>> draws_;
    std::vector<BandCondition> conditions_;
    BandCuts bands_, best_of_round_;
};
}  // namespace

BandCuts smallest_counted_cuts(const Situation& now, double wanted_db, Analyst& analyst) {
    return CountedSolver(now, wanted_db, analyst).solve();
}

}  // namespace howlmap::cures
