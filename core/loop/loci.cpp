// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/loci.h"

#include <algorithm>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>

#include "core/geometry/pose.h"

namespace howlmap {
namespace {
constexpr double kLargestTurn = kPi / 4.0;  // a step
constexpr double kSmallestStep = 1e-5;      // Hz

/// One locus between two points.
struct Step {
    Complex from, to;
};

double turn_of(const Step& step) { return std::arg(step.to * std::conj(step.from)); }

/// Angle of lambda at the low end and how far it turns, delay included, rad.
struct Turning {
    double start, turn;
};
Turning turning(const Step& step, double low_hz, double high_hz, double common_s) {
    return {std::arg(step.from) - 2.0 * kPi * std::fmod(low_hz * common_s, 1.0),
            turn_of(step) - 2.0 * kPi * (high_hz - low_hz) * common_s};
}

/// Whole turns n with 2 pi n in (start, start + turn] (or [start + turn, start)): each crossing belongs to one step
/// only.
std::pair<double, double> passed(const Turning& t) {
    const double from = std::floor(t.start / (2.0 * kPi)), to = std::floor((t.start + t.turn) / (2.0 * kPi));
    return {std::min(from, to) + 1.0, std::max(from, to)};
}

double crossings_of(const Step& step, double low_hz, double high_hz, double common_s) {
    const auto [first, last] = passed(turning(step, low_hz, high_hz, common_s));
    return last - first + 1.0;
}

/// Pairs the eigenvalues of two points, nearest first.
std::vector<Step> paired(const LociPoint& low, const LociPoint& high) {
    struct Candidate {
        double distance;
        std::size_t from, to;
    };
    const std::size_t n = low.mu.size();
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j) candidates.push_back({std::norm(low.mu[i] - high.mu[j]), i, j});
    std::sort(candidates.begin(), candidates.end(),
              [](const Candidate& a, const Candidate& b) { return a.distance < b.distance; });
    std::vector<Step> steps(n);
    std::vector<bool> from_taken(n), to_taken(n);
    for (const Candidate& c : candidates) {
        if (from_taken[c.from] || to_taken[c.to]) continue;
        from_taken[c.from] = to_taken[c.to] = true;
        steps[c.from] = {low.mu[c.from], high.mu[c.to]};
    }
    return steps;
}

bool matters(const Step& step, double least) { return std::max(std::abs(step.from), std::abs(step.to)) >= least; }

bool turns_gently(const Step& step) {
    const double from = std::abs(step.from), to = std::abs(step.to);
    return std::abs(turn_of(step)) < kLargestTurn && from < 2.0 * to && to < 2.0 * from;
}

/// Whether two loci might have been taken for each other with another number of crossings as the result.
bool confusable(const Step& a, const Step& b, double low_hz, double high_hz, double common_s) {
    const double moved = std::max(std::abs(a.to - a.from), std::abs(b.to - b.from));
    if (moved < 0.5 * std::min(std::abs(a.from - b.from), std::abs(a.to - b.to))) return false;
    const Step ab{a.from, b.to}, ba{b.from, a.to};
    const auto count = [&](const Step& step) { return crossings_of(step, low_hz, high_hz, common_s); };
    return count(a) + count(b) != count(ab) + count(ba);
}

bool is_clear(const std::vector<Step>& steps, double low_hz, double high_hz, double common_s, double least) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (!matters(steps[i], least)) continue;
        if (!turns_gently(steps[i])) return false;
        for (std::size_t j = 0; j < steps.size(); ++j)
            if (i != j && confusable(steps[i], steps[j], low_hz, high_hz, common_s)) return false;
    }
    return true;
}

void add_brackets(std::vector<Bracket>& brackets, const LociPoint& low, const LociPoint& high, const Step& step,
                  double common_s) {
    const Turning t = turning(step, low.hz, high.hz, common_s);
    const auto [first, last] = passed(t);
    for (double n = first; n <= last; ++n) {
        const double along = std::clamp((2.0 * kPi * n - t.start) / t.turn, 0.0, 1.0);
        brackets.push_back({low, high, step.from, step.to, n, low.hz + (high.hz - low.hz) * along,
                            std::pow(std::abs(step.from), 1.0 - along) * std::pow(std::abs(step.to), along)});
    }
}
}  // namespace

LociPoint Loci::at(double hz) const {
    LociPoint point{hz, eigenvalues_of(matrix(hz))};
    const Complex back = std::polar(1.0, 2.0 * kPi * std::fmod(hz * common_s, 1.0));
    for (Complex& mu : point.mu) mu *= back;
    return point;
}

std::vector<Bracket> Loci::follow(const LociPoint& low, const LociPoint& high, double least) const {
    std::vector<Bracket> brackets;
    const std::vector<Step> steps = paired(low, high);
    if (high.hz - low.hz > kSmallestStep && !is_clear(steps, low.hz, high.hz, common_s, least)) {
        const LociPoint middle = at(0.5 * (low.hz + high.hz));
        brackets = follow(low, middle, least);
        for (Bracket& bracket : follow(middle, high, least)) brackets.push_back(std::move(bracket));
        return brackets;
    }
    for (const Step& step : steps)
        if (matters(step, least)) add_brackets(brackets, low, high, step, common_s);
    return brackets;
}

namespace {
/// The locus of a bracket at a frequency inside it: the eigenvalue nearest to what interpolation says.
Complex locus_at(const Loci& loci, const Bracket& b, double hz) {
    const double t = (hz - b.low.hz) / (b.high.hz - b.low.hz);
    const Complex expected = b.mu_low * std::pow(std::abs(b.mu_high) / std::abs(b.mu_low), t) *
                             std::polar(1.0, t * turn_of({b.mu_low, b.mu_high}));
    const LociPoint point = loci.at(hz);
    return *std::min_element(point.mu.begin(), point.mu.end(),
                             [&](Complex x, Complex y) { return std::norm(x - expected) < std::norm(y - expected); });
}
}  // namespace

Crossing refine(const Loci& loci, const Bracket& b) {
    const double start =
        std::arg(b.mu_low) - 2.0 * kPi * std::fmod(b.low.hz * loci.common_s, 1.0) - 2.0 * kPi * b.turns;
    const auto angle = [&](double hz) {  // of lambda, less the whole turns: 0 at the crossing
        return start + std::arg(locus_at(loci, b, hz) * std::conj(b.mu_low)) -
               2.0 * kPi * (hz - b.low.hz) * loci.common_s;
    };
    double low = b.low.hz, high = b.high.hz;
    const double at_low = start, at_high = angle(high);
    double hz = b.hz;
    if (at_low == 0.0 || at_high == 0.0 || (at_low < 0.0) == (at_high < 0.0)) {
        hz = std::abs(at_low) < std::abs(at_high) ? low : high;
    } else {
        std::uintmax_t most = 60;
        const auto close = [](double a, double c) { return std::abs(c - a) <= 1e-9 * std::abs(a); };
        const auto found = boost::math::tools::toms748_solve(angle, low, high, at_low, at_high, close, most);
        hz = 0.5 * (found.first + found.second);
    }
    return {hz, locus_at(loci, b, hz) * std::polar(1.0, -2.0 * kPi * std::fmod(hz * loci.common_s, 1.0))};
}

}  // namespace howlmap
