// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/loci.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/pose.h"
#include "core/loop/locus_step.h"

namespace howlmap {
namespace {
constexpr double kSmallestStep = 1e-5;  // Hz
constexpr double kClose = 1e-9;         // of a frequency
constexpr int kMostSecants = 60;

void add_brackets(std::vector<Bracket>& brackets, const LociPoint& low, const LociPoint& high, const LocusStep& step,
                  double common_s) {
    for_each_passing(step, {low.hz, high.hz, common_s}, [&](const Passing& passing) {
        brackets.push_back({low, high, step.from, step.to, passing.turns, passing.hz, passing.size});
    });
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
    const std::vector<LocusStep> steps = paired(low.mu, high.mu);
    if (high.hz - low.hz > kSmallestStep && !is_clear(steps, {low.hz, high.hz, common_s}, least)) {
        const LociPoint middle = at(0.5 * (low.hz + high.hz));
        brackets = follow(low, middle, least);
        for (Bracket& bracket : follow(middle, high, least)) brackets.push_back(std::move(bracket));
        return brackets;
    }
    for (const LocusStep& step : steps)
        if (step.reaches(least)) add_brackets(brackets, low, high, step, common_s);
    return brackets;
}

namespace {
/// The locus of a bracket at a frequency inside it: the eigenvalue nearest to what interpolation says.
Complex locus_at(const Loci& loci, const Bracket& b, double hz) {
    const double t = (hz - b.low.hz) / (b.high.hz - b.low.hz);
    const Complex expected = b.mu_low * std::pow(std::abs(b.mu_high) / std::abs(b.mu_low), t) *
                             std::polar(1.0, t * LocusStep{b.mu_low, b.mu_high}.turn());
    const LociPoint point = loci.at(hz);
    return *std::min_element(point.mu.begin(), point.mu.end(),
                             [&](Complex x, Complex y) { return std::norm(x - expected) < std::norm(y - expected); });
}
}  // namespace

/// Secants from where interpolation puts the crossing; where they leave the ends that are known to hold it, halves.
Crossing refine(const Loci& loci, const Bracket& b) {
    const auto crossing = [&](double hz, Complex mu) {
        return Crossing{hz, mu * std::polar(1.0, -2.0 * kPi * std::fmod(hz * loci.common_s, 1.0))};
    };
    // Points of the grid may coincide: nothing lies between them, and interpolation would divide by their distance.
    if (!(b.low.hz < b.high.hz)) return crossing(b.low.hz, b.mu_low);
    const double start =
        std::arg(b.mu_low) - 2.0 * kPi * std::fmod(b.low.hz * loci.common_s, 1.0) - 2.0 * kPi * b.turns;
    const auto angle = [&](double hz, Complex mu) {  // of lambda, less the whole turns: 0 at the crossing
        return start + std::arg(mu * std::conj(b.mu_low)) - 2.0 * kPi * (hz - b.low.hz) * loci.common_s;
    };
    double low = b.low.hz, high = b.high.hz, before = low, at_before = start;
    double hz = std::clamp(b.hz, low, high);
    Complex mu;
    for (int i = 0; i < kMostSecants; ++i) {
        mu = locus_at(loci, b, hz);
        const double at_hz = angle(hz, mu), secant = hz - at_hz * (hz - before) / (at_hz - at_before);
        ((at_hz < 0.0) == (start < 0.0) ? low : high) = hz;
        if (at_hz == 0.0 || std::abs(secant - hz) <= kClose * hz || high - low <= kClose * hz) break;
        before = hz;
        at_before = at_hz;
        hz = secant > low && secant < high ? secant : 0.5 * (low + high);
    }
    return crossing(hz, mu);
}

}  // namespace howlmap
