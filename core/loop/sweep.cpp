// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/sweep.h"

#include <oneapi/tbb/blocked_range.h>
#include <oneapi/tbb/parallel_for.h>

#include "core/loop/eigenvalues.h"

namespace howlmap {

std::vector<Pair> pairs_of(const LoopModel& model) {
    std::vector<Pair> pairs;
    for (std::size_t m = 0; m < model.buses().size(); ++m)
        for (std::size_t c = 0; c < model.inputs().size(); ++c) {
            if (model.sends()(static_cast<Eigen::Index>(m), static_cast<Eigen::Index>(c)) == 0.0) continue;
            for (const int l : model.buses()[m].speakers)
                pairs.push_back({static_cast<int>(c), l, static_cast<int>(m)});
        }
    return pairs;
}

double pair_gain(const LoopModel& model, const Pair& pair, const LoopFactors& f) {
    return std::abs(f.b(pair.input) * f.h(pair.input, pair.speaker) * f.r(pair.speaker) * f.e(pair.bus) *
                    f.p(pair.input)) *
           model.sends()(pair.bus, pair.input);
}

double pair_gain(const LoopModel& model, const Pair& pair, double hz) {
    const auto& in = model.inputs()[static_cast<std::size_t>(pair.input)];
    const auto& speaker = model.speakers()[static_cast<std::size_t>(pair.speaker)];
    const auto& bus = model.buses()[static_cast<std::size_t>(pair.bus)];
    return std::abs(in.response.at(hz) * model.transfer(pair.input, pair.speaker, hz) * speaker.response.at(hz) *
                    bus.chain.at(hz) * in.chain.at(hz)) *
           model.sends()(pair.bus, pair.input);
}

double worst_phase_gain(const LoopModel& model, const LoopFactors& factors) {
    return perron_root(model.loop_matrix(factors).cwiseAbs(), 1e-5);
}

Sweep sweep(const LoopModel& model, const std::vector<Pair>& pairs, std::vector<double> grid, const Job& job) {
    Sweep result;
    result.hz = std::move(grid);
    const std::size_t n = result.hz.size();
    result.bounds.resize(n);
    result.worst_phase.resize(n);
    result.pair_gains.assign(pairs.size(), std::vector<double>(n));
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, n, 64), [&](const tbb::blocked_range<std::size_t>& range) {
        if (job.cancelled()) return;
        for (std::size_t i = range.begin(); i < range.end(); ++i) {
            const LoopFactors factors = model.factors(result.hz[i]);
            result.bounds[i] = spectral_bound(model.small_matrix(factors));
            result.worst_phase[i] = worst_phase_gain(model, factors);
            for (std::size_t p = 0; p < pairs.size(); ++p)
                result.pair_gains[p][i] = pair_gain(model, pairs[p], factors);
        }
    });
    return result;
}

}  // namespace howlmap
