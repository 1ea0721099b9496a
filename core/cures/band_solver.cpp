// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/band_solver.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace howlmap::cures {
namespace {
constexpr int kRounds = 6;
constexpr std::size_t kMostConditions = 60;
constexpr double kNearDb = 1.5;   // frequencies this close to the limit are kept in the conditions
constexpr double kIdleDb = 0.02;  // a cut must take this much off the strongest frequency for each of its decibels

using Key = BandCuts::key_type;

class Solver {
  public:
    Solver(const Situation& now, double needed_db)
        : now_(now),
          model_(now),
          limit_db_(-now.guard.margin_db() - needed_db),
          guard_(now.guard),
          gains_(now.guard.gains_db()) {}

    BandCuts solve() {
        BandCuts best;
        double least_over = over();
        for (int round = 0; round < kRounds && !now_.job.cancelled(); ++round) {
            collect();
            if (bands_.empty()) break;
            bands_ = model_.smallest(conditions_, bands_).cuts;
            look(bands_);
            if (over() < least_over - 0.02) {
                least_over = over();
                best = bands_;
            }
            if (std::abs(strongest_db() - limit_db_) < 0.1) break;
        }
        return without_idle(in_half_decibels(best));
    }

  private:
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
            auto condition =
                model_.condition(guard_.hz()[at], gains_[at] - limit_db_, model_.shares_at(guard_, at), bands_);
            if (gains_[at] > limit_db_) model_.add_bands(condition, bands_);
            conditions_.push_back(std::move(condition));
        }
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
    BandModel model_;
    double limit_db_;
    Guard guard_;
    std::vector<double> gains_;
    std::set<std::size_t> watched_;
    std::vector<BandCondition> conditions_;
    BandCuts bands_;
};
}  // namespace

BandCuts smallest_cuts(const Situation& now, double needed_db) { return Solver(now, needed_db).solve(); }

}  // namespace howlmap::cures
