// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/response.h"

#include <oneapi/tbb/blocked_range.h>
#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>

#include "core/analysis/response_gain.h"
#include "core/loop/sweep.h"
#include "core/units/bands.h"
#include "core/units/level.h"

namespace howlmap {

double floored_db(double gain) { return gain > 0.0 ? std::max(kResponseFloorDb, ratio_to_db(gain)) : kResponseFloorDb; }

double largest_modulus(const ComplexMatrix& matrix) {
    if (matrix.size() == 0) return 0.0;
    double largest = 0.0;
    for (const Complex value : eigenvalues_of(matrix)) largest = std::max(largest, std::abs(value));
    return largest;
}

std::vector<double> response_frequencies(const ResponseGrid& grid) {
    const double octaves = std::log2(kHighestHz / kLowestHz);
    const int steps = static_cast<int>(std::ceil(octaves * grid.per_octave));
    std::vector<double> hz;
    for (int i = 0; i < steps; ++i) hz.push_back(kLowestHz * std::exp2(octaves * i / steps));
    hz.push_back(kHighestHz);
    for (const double f : grid.also_at)
        if (f > kLowestHz && f < kHighestHz) hz.push_back(f);
    std::sort(hz.begin(), hz.end());
    hz.erase(std::unique(hz.begin(), hz.end()), hz.end());
    return hz;
}

Show with_only(const Show& show, const OpenLoops& open) {
    Show part = show;
    const auto other_mix = [&](const Mix& mix) { return !open.mix.empty() && mix.id != open.mix; };
    for (Mix& mix : part.mixes) {
        std::erase_if(mix.sends, [&](const Send& send) {
            return other_mix(mix) || (!open.input.empty() && send.input != open.input);
        });
        if (!open.loudspeaker.empty())
            std::erase_if(mix.loudspeakers, [&](const std::string& id) { return id != open.loudspeaker; });
    }
    return part;
}

std::optional<LoopResponse> loop_response(const Show& show, const OpenLoops& open, const ResponseGrid& grid,
                                          const Job& job) {
    const Show part = with_only(show, open);
    const LoopModel model(part);
    if (model.empty()) return LoopResponse{};
    LoopResponse response{response_frequencies(grid), {}, {}};
    const std::size_t n = response.hz.size();
    response.gain_db.resize(n);
    response.worst_phase_db.resize(n);
    tbb::parallel_for(tbb::blocked_range<std::size_t>(0, n, 32), [&](const tbb::blocked_range<std::size_t>& range) {
        if (job.cancelled()) return;
        for (std::size_t i = range.begin(); i < range.end(); ++i) {
            const LoopFactors factors = model.factors(response.hz[i]);
            response.gain_db[i] = floored_db(largest_modulus(model.small_matrix(factors)));
            response.worst_phase_db[i] = floored_db(worst_phase_gain(model, factors));
        }
    });
    if (job.cancelled()) return std::nullopt;
    return response;
}

}  // namespace howlmap
