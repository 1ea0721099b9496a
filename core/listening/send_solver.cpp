// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/listening/send_solver.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/listening/bounded_squares.h"
#include "core/listening/headroom.h"
#include "core/show/find.h"
#include "core/units/level.h"
#include "core/units/translate.h"

namespace howlmap {
namespace {
constexpr double kMetDb = 0.05;
constexpr double kMostDb = 60.0;  // how far a factor may go either way in one solution

/// The unknowns: one factor of energy a wishing performer, on all her own sends in her mix.
struct Problem {
    const Show& show;
    SendModel model;
    std::vector<double> now;                 // energies of the sends
    std::vector<std::size_t> ear;            // row of each unknown's performer
    std::vector<std::vector<bool>> scaled;   // sends that each unknown scales
    std::vector<std::vector<double>> loads;  // a row a loudspeaker with a known maximum
    std::vector<double> most;                // its maximum as energy
    std::vector<std::size_t> loud;           // its index in the show
};

/// What an unknown's sends make of a row, at factor 1.
double part(const Problem& p, const std::vector<double>& row, std::size_t unknown) {
    double total = 0.0;
    for (std::size_t s = 0; s < row.size(); ++s)
        if (p.scaled[unknown][s]) total += row[s] * p.now[s];
    return total;
}

double all(const Problem& p, const std::vector<double>& row) {
    double total = 0.0;
    for (std::size_t s = 0; s < row.size(); ++s) total += row[s] * p.now[s];
    return total;
}

/// A row over the unknowns and what is left for factor 0.
LinearRow row_over_unknowns(const Problem& p, const std::vector<double>& row, double fixed) {
    LinearRow linear{std::vector<double>(p.ear.size()), all(p, row) + fixed};
    for (std::size_t u = 0; u < p.ear.size(); ++u) {
        linear.factors[u] = part(p, row, u);
        linear.constant -= linear.factors[u];
    }
    return linear;
}

LinearRow combine(const LinearRow& a, double ka, const LinearRow& b, double kb, double constant) {
    LinearRow c{a.factors, ka * a.constant + kb * b.constant + constant};
    for (std::size_t i = 0; i < c.factors.size(); ++i) c.factors[i] = ka * a.factors[i] + kb * b.factors[i];
    return c;
}

/// The wish as a residual that is 0 when it is met and about 1 when it is missed by its own size.
LinearRow residual(const Problem& p, const Wish& wish, const EarRow& ear) {
    const LinearRow own = row_over_unknowns(p, ear.own, ear.own_fixed);
    const LinearRow others = row_over_unknowns(p, ear.others, ear.others_fixed);
    const double wanted = db_to_energy(wish.value_db);
    if (wish.kind == WishKind::own_level) return combine(own, 1.0 / wanted, others, 0.0, -1.0);
    if (wish.kind == WishKind::ear_level) return combine(own, 1.0 / wanted, others, 1.0 / wanted, -1.0);
    const double size = wanted * (all(p, ear.others) + ear.others_fixed);
    if (!(size > 0.0)) return combine(own, 0.0, others, 0.0, 0.0);
    return combine(own, 1.0 / size, others, -wanted / size, 0.0);
}

Problem problem_of(const Show& show, const std::vector<const Wish*>& wishes) {
    Problem p{show, send_model(show), {}, {}, {}, {}, {}, {}};
    p.now = p.model.energies();
    for (const Wish* wish : wishes) {
        const auto ear = static_cast<std::size_t>(index_by_id(show.performers, wish->performer));
        std::vector<bool> scaled(p.now.size());
        for (std::size_t s = 0; s < scaled.size(); ++s) scaled[s] = p.model.ears[ear].own[s] > 0.0;
        p.ear.push_back(ear);
        p.scaled.push_back(scaled);
    }
    const ChainEnergies chains(show);
    for (std::size_t l = 0; l < show.loudspeakers.size(); ++l) {
        if (!show.loudspeakers[l].max_spl_db) continue;
        p.loads.push_back(load_row(show, chains, static_cast<int>(l)));
        p.most.push_back(db_to_energy(*show.loudspeakers[l].max_spl_db));
        p.loud.push_back(l);
    }
    return p;
}

std::vector<double> energies_at(const Problem& p, const std::vector<double>& factors) {
    std::vector<double> energies = p.now;
    for (std::size_t u = 0; u < factors.size(); ++u)
        for (std::size_t s = 0; s < energies.size(); ++s)
            if (p.scaled[u][s]) energies[s] *= factors[u];
    return energies;
}

/// Factors between -60 and +60 dB that come nearest to all wishes without overloading a loudspeaker further than it is
/// now.
std::vector<double> solve_factors(const Problem& p, const std::vector<const Wish*>& wishes) {
    BoundedSquares squares;
    squares.lowest.assign(wishes.size(), db_to_energy(-kMostDb));
    squares.highest.assign(wishes.size(), db_to_energy(kMostDb));
    for (std::size_t w = 0; w < wishes.size(); ++w)
        squares.rows.push_back(residual(p, *wishes[w], p.model.ears[p.ear[w]]));
    for (std::size_t l = 0; l < p.loads.size(); ++l) {
        const LinearRow load = row_over_unknowns(p, p.loads[l], 0.0);
        const double most = std::max(p.most[l], all(p, p.loads[l]));
        squares.at_most_zero.push_back(combine(load, 1.0 / most, load, 0.0, -1.0));
    }
    return squares.solve(std::vector<double>(wishes.size(), 1.0));
}

std::optional<double> value_of(const Wish& wish, const EarLevels& levels) {
    switch (wish.kind) {
        case WishKind::own_level:
            return levels.own_dba;
        case WishKind::ear_level:
            return levels.ear_dba;
        case WishKind::hear_margin:
            return levels.hear_margin_db;
    }
    return std::nullopt;
}

/// The largest share of the change, in dB, that the loops bear.
double bearable_share(const Problem& p, const std::vector<double>& factors, const SolveOptions& options,
                      double least_db) {
    const auto bears = [&](double share) {
        std::vector<double> part_way = factors;
        for (double& factor : part_way) factor = std::pow(factor, share);
        const auto margin = options.margin(with_energies(p.show, p.model, energies_at(p, part_way)));
        return !margin || *margin >= least_db - 1e-6;
    };
    if (bears(1.0)) return 1.0;
    double low = 0.0, high = 1.0;
    for (int i = 0; i < 12; ++i) (bears(0.5 * (low + high)) ? low : high) = 0.5 * (low + high);
    return low;
}

bool loudspeaker_is_full(const Problem& p, const std::vector<double>& energies, std::size_t unknown,
                         std::string& name) {
    for (std::size_t l = 0; l < p.loads.size(); ++l) {
        double load = 0.0;
        for (std::size_t s = 0; s < energies.size(); ++s) load += p.loads[l][s] * energies[s];
        if (part(p, p.loads[l], unknown) > 0.0 && load > 0.99 * p.most[l]) {
            name = p.show.loudspeakers[p.loud[l]].name;
            return true;
        }
    }
    return false;
}

void explain(WishOutcome& outcome, const Problem& p, std::size_t unknown, const std::vector<double>& energies,
             bool held_back) {
    std::string name;
    if (held_back) {
        outcome.limit = Limit::margin;
        outcome.reason = translate(
            "listening", "Turning up further would bring the stage closer to ringing than its target allows.");
    } else if (loudspeaker_is_full(p, energies, unknown, name)) {
        outcome.limit = Limit::loudspeaker;
        outcome.reason =
            fmt::format(fmt::runtime(translate("listening", "{} can give no more: it is at its largest level.")), name);
    } else if (outcome.wish.kind == WishKind::own_level) {
        outcome.limit = Limit::range;
        outcome.reason = translate(
            "listening", "The level that this takes is out of range, or her own acoustic sound is louder already.");
    } else {
        outcome.limit = Limit::neighbour;
        outcome.reason =
            translate("listening", "What others send or play is in the way: more for one takes the same from another.");
    }
}
}  // namespace

bool SendSolution::all_met() const {
    return std::all_of(outcomes.begin(), outcomes.end(), [](const WishOutcome& outcome) { return outcome.met; });
}

SendSolution solve_sends(const Show& show, const std::vector<Wish>& wishes, const SolveOptions& options) {
    SendSolution solution;
    const SendModel before = send_model(show);
    std::vector<const Wish*> open;
    for (const Wish& wish : wishes) {
        const int ear = index_by_id(show.performers, wish.performer);
        const bool can = ear >= 0 && before.ears[static_cast<std::size_t>(ear)].has_own_send();
        if (can) open.push_back(&wish);
        solution.outcomes.push_back(
            {wish, std::nullopt, std::nullopt, false, can ? Limit::none : Limit::no_own_send,
             can ? std::string() : translate("listening", "Nothing of her own is in the mix that she hears.")});
    }
    const Problem p = problem_of(show, open);
    std::vector<double> factors = open.empty() ? std::vector<double>{} : solve_factors(p, open);
    double share = 1.0;
    if (options.margin) {
        solution.margin_before_db = options.margin(show);
        const double least =
            std::min(options.target_margin_db, solution.margin_before_db.value_or(options.target_margin_db));
        share = bearable_share(p, factors, options, least);
        for (double& factor : factors) factor = std::pow(factor, share);
    }
    const std::vector<double> energies = energies_at(p, factors);
    solution.after = with_energies(show, p.model, energies);
    if (options.margin) solution.margin_after_db = options.margin(solution.after);
    solution.changes = send_changes(show, solution.after);
    std::size_t unknown = 0;
    for (WishOutcome& outcome : solution.outcomes) {
        const int ear = index_by_id(show.performers, outcome.wish.performer);
        if (ear < 0) continue;
        const EarRow& row = p.model.ears[static_cast<std::size_t>(ear)];
        outcome.before_db = value_of(outcome.wish, levels_at(row, p.now));
        outcome.after_db = value_of(outcome.wish, levels_at(row, energies));
        if (outcome.limit == Limit::no_own_send) continue;
        outcome.met = outcome.after_db && std::abs(*outcome.after_db - outcome.wish.value_db) <= kMetDb;
        if (!outcome.met) explain(outcome, p, unknown, energies, share < 1.0);
        ++unknown;
    }
    return solution;
}

}  // namespace howlmap
