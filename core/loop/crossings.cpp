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
        followed_.assign(bounds_.size(), false);
        if (sampled.points.empty()) exact_.resize(at_point.size());
    }

    /// Raises `best` to the strongest crossing, looking where the bounds are largest first.
    void find_strongest() {
        std::vector<std::size_t> order(bounds_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return bounds_[a] > bounds_[b]; });
        for (const std::size_t i : order) {
            if (bounds_[i] < best_ || job_.cancelled()) break;
            follow(i, 0.5 * best_);
        }
    }

    std::vector<Crossing> within(double range) {
        const double least = std::max(kLeastLoop, best_ / range);
        for (std::size_t i = 0; i < bounds_.size() && !job_.cancelled(); ++i)
            if (bounds_[i] >= least) follow(i, 0.5 * least);
        std::sort(open_.begin(), open_.end(), [](const Bracket& a, const Bracket& b) { return a.size > b.size; });
        for (const Bracket& bracket : open_) {
            if (bracket.size * kSizeSlack < least || found_.size() >= kMostCrossings || job_.cancelled()) break;
            found_.push_back(refine(loci_, bracket));
        }
        std::erase_if(found_, [&](const Crossing& c) { return c.lambda.real() < least; });
        std::sort(found_.begin(), found_.end(),
                  [](const Crossing& a, const Crossing& b) { return a.lambda.real() > b.lambda.real(); });
        return found_;
    }

  private:
    const LociPoint& point(std::size_t i) {
        if (!sampled_.points.empty()) return sampled_.points[i];
        if (!exact_[i]) exact_[i] = loci_.at(sampled_.hz[i]);
        return *exact_[i];
    }

    void follow(std::size_t i, double least) {
        if (followed_[i]) return;
        followed_[i] = true;
        // Weak loci are followed too, since this interval is not looked at again.
        for (Bracket& bracket : loci_.follow(point(i), point(i + 1), std::min(least, kLeastLoop + bounds_[i] / 16.0))) {
            if (bracket.size * kSizeSlack < best_) {
                open_.push_back(std::move(bracket));
                continue;
            }
            found_.push_back(refine(loci_, bracket));
            best_ = std::max(best_, found_.back().lambda.real());
        }
    }

    const Loci& loci_;
    const SampledLoci& sampled_;
    const Job& job_;
    std::vector<double> bounds_;  // of the largest modulus, by interval
    std::vector<std::optional<LociPoint>> exact_;
    std::vector<bool> followed_;
    std::vector<Bracket> open_;  // not refined yet
    std::vector<Crossing> found_;
    double best_ = kLeastLoop;
};
}  // namespace

std::vector<Crossing> find_crossings(const Loci& loci, const SampledLoci& sampled, double range, const Job& job) {
    Search search(loci, sampled, job);
    search.find_strongest();
    if (job.cancelled()) return {};
    return search.within(range);
}

}  // namespace howlmap
