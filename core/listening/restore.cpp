// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/restore.h"

#include <algorithm>
#include <cmath>

namespace howlmap {
namespace {
constexpr double kMostFactor = 1e6;  // +60 dB
constexpr double kSettled = 1e-10;   // relative change of a factor
constexpr int kMostRounds = 20000;

void set_factor(const EarRow& row, const std::vector<double>& start, double factor, std::vector<double>& energies) {
    for (std::size_t s = 0; s < energies.size(); ++s)
        if (row.own[s] > 0.0) energies[s] = start[s] * factor;
}
}  // namespace

Restored restore_hearing(const SendModel& model, const std::vector<double>& start,
                         const std::vector<HearWish>& wishes) {
    Restored result{true, {}, start};
    for (const HearWish& wish : wishes) {
        result.factors.push_back(wish.lowest);
        set_factor(model.ears[wish.ear], start, wish.lowest, result.energies);
    }
    for (int round = 0; round < kMostRounds; ++round) {
        double moved = 0.0;
        for (std::size_t w = 0; w < wishes.size(); ++w) {
            const EarRow& row = model.ears[wishes[w].ear];
            const double others = weighed(row.others, result.energies) + row.others_fixed;
            const double needed = (wishes[w].ratio * others - row.own_fixed) / weighed(row.own, start);
            const double factor = std::max(wishes[w].lowest, needed);
            moved = std::max(moved, std::abs(factor - result.factors[w]) / std::max(factor, 1e-30));
            result.factors[w] = factor;
            set_factor(row, start, factor, result.energies);
            if (factor > kMostFactor) {
                result.settles = false;
                return result;
            }
        }
        if (moved < kSettled) return result;
    }
    result.settles = false;
    return result;
}

}  // namespace howlmap
