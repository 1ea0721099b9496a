// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/locus_step.h"

#include <numeric>

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

namespace {
/// Distances between the eigenvalues of two frequencies, of which some have been paired already.
class Pairing {
  public:
    Pairing(const std::vector<Complex>& low, const std::vector<Complex>& high)
        : n_(low.size()), distance_(n_ * n_), from_left_(n_), to_left_(n_) {
        for (std::size_t i = 0; i < n_; ++i)
            for (std::size_t j = 0; j < n_; ++j) distance_[i * n_ + j] = std::norm(low[i] - high[j]);
        std::iota(from_left_.begin(), from_left_.end(), std::size_t{0});
        to_left_ = from_left_;
    }
    /// Those left that are each other's nearest, calling found(from, to). No pair with one of them is nearer, so that
    /// the order in which they are taken makes no difference; the nearest of all is always among them.
    template <class Found>
    void take_mutual(Found found) {
        for (std::size_t i = 0; i < from_left_.size();) {
            const std::size_t from = from_left_[i];
            const std::size_t to = nearest(to_left_, [&](std::size_t j) { return distance_[from * n_ + j]; });
            if (nearest(from_left_, [&](std::size_t k) { return distance_[k * n_ + to]; }) != from) {
                ++i;
                continue;
            }
            found(from, to);
            from_left_.erase(from_left_.begin() + static_cast<std::ptrdiff_t>(i));
            std::erase(to_left_, to);
        }
    }
    bool done() const { return from_left_.empty(); }

  private:
    template <class Distance>
    static std::size_t nearest(const std::vector<std::size_t>& left, Distance distance) {
        std::size_t best = left.front();
        for (const std::size_t one : left)
            if (distance(one) < distance(best)) best = one;
        return best;
    }

    std::size_t n_;
    std::vector<double> distance_;
    std::vector<std::size_t> from_left_, to_left_;
};
}  // namespace

std::vector<LocusStep> paired(const std::vector<Complex>& low, const std::vector<Complex>& high) {
    std::vector<LocusStep> steps(low.size());
    for (Pairing pairing(low, high); !pairing.done();)
        pairing.take_mutual([&](std::size_t from, std::size_t to) { steps[from] = {low[from], high[to]}; });
    return steps;
}

namespace {
// By squares: the root of a sum of squares and the angle of a complex number cost more than all the rest here.
bool turns_gently(const LocusStep& step) {
    const double from = std::norm(step.from), to = std::norm(step.to);
    const Complex turned = times(step.to, std::conj(step.from));
    return turned.real() > std::abs(turned.imag()) && from < 4.0 * to && to < 4.0 * from;
}

double crossings_of(const LocusStep& step, const StepSpan& span) {
    const Turning t = turning(step, span);
    return t.last() - t.first() + 1.0;
}

bool confusable(const LocusStep& a, const LocusStep& b, const StepSpan& span) {
    const double moved = std::max(std::norm(a.to - a.from), std::norm(b.to - b.from));
    if (moved < 0.25 * std::min(std::norm(a.from - b.from), std::norm(a.to - b.to))) return false;
    return crossings_of(a, span) + crossings_of(b, span) !=
           crossings_of({a.from, b.to}, span) + crossings_of({b.from, a.to}, span);
}
}  // namespace

bool is_clear(const std::vector<LocusStep>& steps, const StepSpan& span, double least) {
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (!steps[i].reaches(least)) continue;
        if (!turns_gently(steps[i])) return false;
        for (std::size_t j = 0; j < steps.size(); ++j)
            if (i != j && confusable(steps[i], steps[j], span)) return false;
    }
    return true;
}

}  // namespace howlmap
