// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <nlopt.hpp>
#include <stdexcept>

#include "core/cures/candidate.h"
#include "core/units/level.h"

namespace howlmap::cures {
namespace {
constexpr double kMattersDb = 9.0;  // frequencies this far below the strongest still say who matters
constexpr double kLeastPart = 0.04;
constexpr std::size_t kMostObjects = 4;

std::vector<std::size_t> largest_first(const std::vector<double>& weights) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < weights.size(); ++i)
        if (weights[i] >= kLeastPart) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return weights[a] > weights[b]; });
    if (order.size() > kMostObjects) order.resize(kMostObjects);
    return order;
}
}  // namespace

Show Situation::after(const Edit& edit) const {
    Show changed = show;
    edit(changed);
    return loudness.restored(changed);
}

double Situation::guessed_gain(const Edit& edit) const {
    return guard.changed(after(edit)).soft_margin_db() - guard.soft_margin_db();
}

Situation situation_of(const Show& show, const Loudness& loudness, const Guard& guard, double needed_db,
                       const std::string& input, const Job& job) {
    std::vector<double> inputs(show.inputs.size()), loudspeakers(show.loudspeakers.size()), mixes(show.mixes.size());
    const double least = -guard.margin_db() - kMattersDb;
    for (std::size_t at = 0; at < guard.hz().size(); ++at) {
        const double gain = guard.gains_db()[at];
        if (gain < least || gain < -100.0) continue;
        const double weight = db_to_energy(gain + guard.margin_db());
        std::vector<double> i(inputs.size()), l(loudspeakers.size()), m(mixes.size());
        for (const LoopPart& part : guard.parts(at)) {
            if (!input.empty() && show.inputs[static_cast<std::size_t>(part.heard)].id != input) continue;
            i[static_cast<std::size_t>(part.heard)] += part.share * weight;
            l[static_cast<std::size_t>(part.loudspeaker)] += part.share * weight;
            m[static_cast<std::size_t>(part.mix)] += part.share * weight;
        }
        const auto keep_largest = [](std::vector<double>& all, const std::vector<double>& here) {
            for (std::size_t k = 0; k < all.size(); ++k) all[k] = std::max(all[k], here[k]);
        };
        keep_largest(inputs, i);
        keep_largest(loudspeakers, l);
        keep_largest(mixes, m);
    }
    return {show,
            loudness,
            guard,
            std::max(needed_db, 0.5),
            largest_first(inputs),
            largest_first(loudspeakers),
            largest_first(mixes),
            job};
}

double turn_metres(const Aim& from, const Aim& to) {
    return 0.5 / 90.0 * std::hypot(turn_degrees(from.yaw_deg, to.yaw_deg), to.pitch_deg - from.pitch_deg);
}

namespace {
struct Largest {
    const std::function<double(const std::vector<double>&)>& value;
    const Job& job;
    nlopt::opt& search;
    std::vector<double> best;
    double most = kNotAllowed;
    double operator()(const std::vector<double>& x) {
        if (job.cancelled()) search.force_stop();
        const double v = value(x);
        if (v > most) {
            most = v;
            best = x;
        }
        return v;
    }
};

double largest_at(const std::vector<double>& x, std::vector<double>&, void* data) {
    return (*static_cast<Largest*>(data))(x);
}
}  // namespace

std::vector<double> search_largest(const std::vector<double>& low, const std::vector<double>& high,
                                   const std::vector<std::vector<double>>& starts, int evaluations, const Job& job,
                                   const std::function<double(const std::vector<double>&)>& value) {
    nlopt::opt search(nlopt::LN_SBPLX, static_cast<unsigned>(low.size()));
    Largest largest{value, job, search, starts.front(), kNotAllowed};
    for (const auto& start : starts)
        if (!job.cancelled()) largest(start);
    std::vector<double> step, x = largest.best;
    for (std::size_t i = 0; i < low.size(); ++i) step.push_back((high[i] - low[i]) / 12.0);
    search.set_lower_bounds(low);
    search.set_upper_bounds(high);
    search.set_initial_step(step);
    search.set_maxeval(evaluations);
    search.set_max_objective(largest_at, &largest);
    double most = 0.0;
    try {
        search.optimize(x, most);
    } catch (const std::runtime_error&) {
        // Stopped early, or no better point within rounding: the best so far stands.
    }
    return largest.best;
}

}  // namespace howlmap::cures
