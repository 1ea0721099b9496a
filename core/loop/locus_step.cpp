// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/locus_step.h"

#include "core/geometry/pose.h"

namespace howlmap {

double Turning::first() const {
    return std::min(std::floor(start / (2.0 * kPi)), std::floor((start + turn) / (2.0 * kPi))) + 1.0;
}
double Turning::last() const {
    return std::max(std::floor(start / (2.0 * kPi)), std::floor((start + turn) / (2.0 * kPi)));
}

Turning turning(const LocusStep& step, const StepSpan& span) {
    return {std::arg(step.from) - 2.0 * kPi * std::fmod(span.low_hz * span.common_s, 1.0),
            step.turn() - 2.0 * kPi * (span.high_hz - span.low_hz) * span.common_s};
}

std::vector<LocusStep> paired(const std::vector<Complex>& low, const std::vector<Complex>& high) {
    struct Candidate {
        double distance;
        std::size_t from, to;
    };
    const std::size_t n = low.size();
    std::vector<Candidate> candidates;
    candidates.reserve(n * n);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = 0; j < n; ++j) candidates.push_back({std::norm(low[i] - high[j]), i, j});
    std::sort(candidates.begin(), candidates.end(),
              [](const Candidate& a, const Candidate& b) { return a.distance < b.distance; });
    std::vector<LocusStep> steps(n);
    std::vector<bool> from_taken(n), to_taken(n);
    for (const Candidate& c : candidates) {
        if (from_taken[c.from] || to_taken[c.to]) continue;
        from_taken[c.from] = to_taken[c.to] = true;
        steps[c.from] = {low[c.from], high[c.to]};
    }
    return steps;
}

namespace {
bool turns_gently(const LocusStep& step) {
    const double from = std::abs(step.from), to = std::abs(step.to);
    return std::abs(step.turn()) < kPi / 4.0 && from < 2.0 * to && to < 2.0 * from;
}

double crossings_of(const LocusStep& step, const StepSpan& span) {
    const Turning t = turning(step, span);
    return t.last() - t.first() + 1.0;
}

bool confusable(const LocusStep& a, const LocusStep& b, const StepSpan& span) {
    const double moved = std::max(std::abs(a.to - a.from), std::abs(b.to - b.from));
    if (moved < 0.5 * std::min(std::abs(a.from - b.from), std::abs(a.to - b.to))) return false;
    return crossings_of(a, span) + crossings_of(b, span) !=
           crossings_of({a.from, b.to}, span) + crossings_of({b.from, a.to}, span);
}
}  // namespace

bool is_clear(const std::vector<LocusStep>& steps, const StepSpan& span, double least) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (steps[i].largest() < least) continue;
        if (!turns_gently(steps[i])) return false;
        for (std::size_t j = 0; j < steps.size(); ++j)
            if (i != j && confusable(steps[i], steps[j], span)) return false;
    }
    return true;
}

}  // namespace howlmap
