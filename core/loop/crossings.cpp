// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/crossings.h"

#include <algorithm>
#include <numeric>
#include <optional>

namespace howlmap {
namespace {
/// How far a locus may rise between two grid points above the bounds at both: about 2 dB, generous for turns below 45
/// deg.
constexpr double kBoundSlack = 1.25;
/// How far interpolation may be wrong about the size of a crossing.
constexpr double kSizeSlack = 1.1;

class Search {
  public:
    Search(const Loci& loci, const SampledLoci& sampled, const Job& job) : loci_(loci), sampled_(sampled), job_(job) {
        const std::vector<double>& at_point = sampled.bounds;
        for (std::size_t i = 0; i + 1 < at_point.size(); ++i)
            bounds_.push_back(kBoundSlack * std::max(at_point[i], at_point[i + 1]));
        if (sampled.points.empty()) exact_.resize(at_point.size());
    }

    /// The largest crossing, looking where the bounds are largest first. At least kLeastLoop.
    double strongest() {
        std::vector<std::size_t> order(bounds_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return bounds_[a] > bounds_[b]; });
        double best = kLeastLoop;
        for (const std::size_t i : order) {
            if (bounds_[i] < best || job_.cancelled()) break;
            for (const Bracket& bracket : loci_.follow(point(i), point(i + 1), best / kSizeSlack))
                if (bracket.size * kSizeSlack >= best) best = std::max(best, refine(loci_, bracket).lambda.real());
        }
        return best;
    }

    /// All crossings of at least a size, largest first.
    std::vector<Crossing> from(double least) {
        std::vector<Bracket> brackets;
        for (std::size_t i = 0; i < bounds_.size() && !job_.cancelled(); ++i) {
            if (bounds_[i] < least) continue;
            for (Bracket& bracket : loci_.follow(point(i), point(i + 1), least / kSizeSlack))
                if (bracket.size * kSizeSlack >= least) brackets.push_back(std::move(bracket));
        }
        std::sort(brackets.begin(), brackets.end(), [](const Bracket& a, const Bracket& b) { return a.size > b.size; });
        if (brackets.size() > kMostCrossings) brackets.resize(kMostCrossings);
        std::vector<Crossing> found;
        for (const Bracket& bracket : brackets)
            if (!job_.cancelled()) found.push_back(refine(loci_, bracket));
        std::erase_if(found, [&](const Crossing& c) { return c.lambda.real() < least; });
        std::sort(found.begin(), found.end(),
                  [](const Crossing& a, const Crossing& b) { return a.lambda.real() > b.lambda.real(); });
        return found;
    }

  private:
    const LociPoint& point(std::size_t i) {
        if (!sampled_.points.empty()) return sampled_.points[i];
        if (!exact_[i]) exact_[i] = loci_.at(sampled_.hz[i]);
        return *exact_[i];
    }

    const Loci& loci_;
    const SampledLoci& sampled_;
    const Job& job_;
    std::vector<double> bounds_;  // of the largest modulus, by interval
    std::vector<std::optional<LociPoint>> exact_;
};
}  // namespace

std::vector<Crossing> find_crossings(const Loci& loci, const SampledLoci& sampled, double range, std::size_t enough,
                                     const Job& job) {
    Search search(loci, sampled, job);
    const double best = search.strongest();
    std::vector<Crossing> found;
    // Far down there are many crossings that nobody asks for: a narrow range first.
    for (double part = std::min(range, 1.2); !job.cancelled(); part = std::min(range, part * part)) {
        found = search.from(std::max(kLeastLoop, best / part * (1.0 - 1e-9)));
        if (part >= range || found.size() > enough) break;
    }
    return job.cancelled() ? std::vector<Crossing>{} : found;
}

}  // namespace howlmap
