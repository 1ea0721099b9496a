// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/crossings.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>
#include <span>

namespace howlmap {
namespace {
/// How far a locus may rise between two grid points above the bounds at both: about 2 dB, generous for turns below 45
/// deg.
constexpr double kBoundSlack = 1.25;
/// How far interpolation may be wrong about the size of a crossing.
constexpr double kSizeSlack = 1.1;
constexpr std::size_t kPortion = 32;  // brackets refined before it is asked whether they are enough

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
            for (const Bracket& bracket : loci_.follow(point(i), point(i + 1), best / kSizeSlack)) {
                if (bracket.size * kSizeSlack < best) continue;
                refine_all({&bracket, 1});
                best = std::max(best, known(bracket).lambda.real());
            }
        }
        return best;
    }

    /// Crossings of at least a size, largest first: all, or more than are `enough` and then no smaller ones.
    std::vector<Crossing> from(double least, std::size_t enough) {
        const std::vector<Bracket> brackets = brackets_from(least);
        std::vector<Crossing> found;
        for (std::size_t first = 0; first < brackets.size() && !job_.cancelled(); first += kPortion) {
            const std::size_t last = std::min(first + kPortion, brackets.size());
            refine_all(std::span(brackets).subspan(first, last - first));
            for (std::size_t i = first; i < last; ++i) found.push_back(known(brackets[i]));
            // Those not refined yet may come up to here.
            const double sure = last < brackets.size() ? std::max(least, brackets[last].size * kSizeSlack) : least;
            const auto is_sure = [&](const Crossing& c) { return c.lambda.real() >= sure; };
            if (last < brackets.size() && static_cast<std::size_t>(std::ranges::count_if(found, is_sure)) <= enough)
                continue;
            std::erase_if(found, [&](const Crossing& c) { return !is_sure(c); });
            break;
        }
        if (job_.cancelled()) return {};
        std::sort(found.begin(), found.end(),
                  [](const Crossing& a, const Crossing& b) { return a.lambda.real() > b.lambda.real(); });
        return found;
    }

  private:
    /// The strongest by estimate, strongest first. On all cores.
    std::vector<Bracket> brackets_from(double least) {
        std::vector<std::size_t> intervals;
        for (std::size_t i = 0; i < bounds_.size(); ++i)
            if (bounds_[i] >= least) intervals.push_back(i);
        for (const std::size_t i : intervals) point(i), point(i + 1);  // are there before they are shared
        std::vector<std::vector<Bracket>> parts(intervals.size());
        tbb::parallel_for(std::size_t{0}, intervals.size(), [&](std::size_t k) {
            if (job_.cancelled()) return;
            parts[k] = loci_.follow(point(intervals[k]), point(intervals[k] + 1), least / kSizeSlack);
        });
        std::vector<Bracket> brackets;
        for (std::vector<Bracket>& part : parts)
            for (Bracket& bracket : part)
                if (bracket.size * kSizeSlack >= least) brackets.push_back(std::move(bracket));
        std::stable_sort(brackets.begin(), brackets.end(),
                         [](const Bracket& a, const Bracket& b) { return a.size > b.size; });
        if (brackets.size() > kMostCrossings) brackets.resize(kMostCrossings);
        return brackets;
    }

    /// Those that are not known yet. On all cores.
    void refine_all(std::span<const Bracket> brackets) {
        std::vector<std::pair<const Bracket*, Crossing*>> work;
        for (const Bracket& bracket : brackets)
            if (const auto [at, is_new] = known_.try_emplace(key(bracket)); is_new)
                work.emplace_back(&bracket, &at->second);
        tbb::parallel_for(std::size_t{0}, work.size(), [&](std::size_t k) {
            if (!job_.cancelled()) *work[k].second = refine(loci_, *work[k].first);
        });
    }
    static std::pair<double, double> key(const Bracket& bracket) { return {bracket.hz, bracket.size}; }
    const Crossing& known(const Bracket& bracket) const { return known_.at(key(bracket)); }

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
    std::map<std::pair<double, double>, Crossing> known_;  // by estimates of a bracket's frequency and size
};
}  // namespace

std::vector<Crossing> find_crossings(const Loci& loci, const SampledLoci& sampled, double range, std::size_t enough,
                                     const Job& job) {
    Search search(loci, sampled, job);
    const double best = search.strongest();
    std::vector<Crossing> found;
    // Far down there are many crossings that nobody asks for: a narrow range first.
    for (double part = std::min(range, 1.2); !job.cancelled(); part = std::min(range, part * part)) {
        found = search.from(std::max(kLeastLoop, best / part * (1.0 - 1e-9)), enough);
        if (part >= range || found.size() > enough) break;
    }
    return job.cancelled() ? std::vector<Crossing>{} : found;
}

}  // namespace howlmap
