// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/block_sweep.h"

#include <oneapi/tbb/blocked_range.h>
#include <oneapi/tbb/enumerable_thread_specific.h>
#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/loop/blocks/block_spectrum.h"
#include "core/loop/eigenvalues.h"

namespace howlmap {
namespace {
/// Works through blocks one after another; one a thread.
class Sweeper {
  public:
    Sweeper(const BlockModel& blocks, const Placement& placement, const std::vector<Pair>& pairs, Sweep& sweep)
        : blocks_(blocks),
          placement_(placement),
          pairs_(pairs),
          sweep_(sweep),
          wiring_(blocks.wiring()),
          h_(wiring_.inputs * wiring_.speakers),
          scratch_(wiring_.inputs * wiring_.buses),
          spectrum_(wiring_.size()),
          sizes_(wiring_.inputs * wiring_.inputs),
          at_point_(static_cast<Eigen::Index>(wiring_.inputs), static_cast<Eigen::Index>(wiring_.inputs)) {}

    void block(std::size_t b) {
        const Block& block = blocks_.grid().blocks[b];
        const ChainValues& chains = blocks_.chains().at(b);
        for (std::size_t pair = 0; pair < h_.size(); ++pair) placement_.transfer(pair, block, h_[pair]);
        loop_matrix(wiring_, h_.data(), chains.hears.data(), chains.speaks.data(), scratch_.data(), spectrum_.matrix());
        spectrum_.find_bounds();
        spectrum_.find_eigenvalues();
        const RealLanes bounds = loop_sizes(wiring_, scratch_.data(), sizes_.data());
        for (std::size_t i = 0; i < kBlockPoints; ++i) {
            const std::size_t at = b * kBlockPoints + i;
            sweep_.hz[at] = block.hz(i);
            sweep_.bounds[at] = spectrum_.bound(i);
            sweep_.points[at].hz = block.hz(i);
            sweep_.points[at].mu.resize(spectrum_.size());
            for (std::size_t n = 0; n < spectrum_.size(); ++n) sweep_.points[at].mu[n] = spectrum_.eigenvalue(n, i);
            sweep_.worst_phase[at] = worst_phase(bounds.v[i], i);
        }
        for (std::size_t p = 0; p < pairs_.size(); ++p)
            pair_gains(pairs_[p], chains, sweep_.pair_gains[p].data() + b * kBlockPoints);
    }

  private:
    /// Perron root of |B A S P|: the same as of |B P A S|, which is similar to it. Its upper bound is enough where that
    /// is small and only the largest is asked for.
    double worst_phase(double bound, std::size_t i) {
        const double least = blocks_.purpose() == Purpose::curve ? 0.0 : 0.7 * largest_;
        if (bound < least) return bound;
        for (Eigen::Index c = 0; c < at_point_.rows(); ++c)
            for (Eigen::Index from = 0; from < at_point_.cols(); ++from)
                at_point_(c, from) = sizes_[static_cast<std::size_t>(c * at_point_.cols() + from)].v[i];
        const double root = perron_root(at_point_, 1e-5, least);
        largest_ = std::max(largest_, root);
        return root;
    }

    /// Loop gains of a pair at all points of the block.
    void pair_gains(const Pair& pair, const ChainValues& chains, double* gains) const {
        const auto input = static_cast<std::size_t>(pair.input), speaker = static_cast<std::size_t>(pair.speaker);
        const auto bus = static_cast<std::size_t>(pair.bus);
        std::size_t slot = 0;
        while (wiring_.slots[slot].bus != bus || wiring_.slots[slot].speaker != speaker) ++slot;
        const Lanes &h = h_[input * wiring_.speakers + speaker], &hears = chains.hears[input],
                    &speaks = chains.speaks[slot];
        const double send = wiring_.sends[bus * wiring_.inputs + input];
        const auto square = [](const Lanes& x, std::size_t i) { return x.re[i] * x.re[i] + x.im[i] * x.im[i]; };
        for (std::size_t i = 0; i < kBlockPoints; ++i)
            gains[i] = send * std::sqrt(square(h, i) * square(hears, i) * square(speaks, i));
    }

    const BlockModel& blocks_;
    const Placement& placement_;
    const std::vector<Pair>& pairs_;
    Sweep& sweep_;
    const Wiring& wiring_;
    std::vector<Lanes> h_, scratch_;
    BlockSpectrum spectrum_;
    std::vector<RealLanes> sizes_;
    RealMatrix at_point_;
    double largest_ = 0.0;  // of the Perron roots so far
};
}  // namespace

Sweep block_sweep(const BlockModel& blocks, const std::vector<Pair>& pairs, const Job& job) {
    const std::size_t count = blocks.grid().blocks.size() * kBlockPoints;
    Sweep sweep;
    sweep.hz.resize(count);
    sweep.bounds.resize(count);
    sweep.worst_phase.resize(count);
    sweep.pair_gains.assign(pairs.size(), std::vector<double>(count));
    sweep.points.resize(count);
    Placement placement(blocks.model(), blocks.tables());
    placement.set(blocks.plan().as_drawn());
    tbb::enumerable_thread_specific<Sweeper> sweepers([&] { return Sweeper(blocks, placement, pairs, sweep); });
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, blocks.grid().blocks.size(), 4), [&](const auto& range) {
        if (job.cancelled()) return;
        for (std::size_t b = range.begin(); b < range.end(); ++b) sweepers.local().block(b);
    });
    return sweep;
}

}  // namespace howlmap
