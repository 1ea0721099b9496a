// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/response.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/response_gain.h"
#include "core/loop/blocks/block_sweep.h"
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

std::vector<double> response_frequencies(int per_octave) {
    const double octaves = std::log2(kHighestHz / kLowestHz);
    const int steps = static_cast<int>(std::ceil(octaves * per_octave));
    std::vector<double> hz;
    for (int i = 0; i < steps; ++i) hz.push_back(kLowestHz * std::exp2(octaves * i / steps));
    hz.push_back(kHighestHz);
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

namespace {
struct CurvePoint {
    double hz, gain, worst_phase;
};

double modulus_of(const LociPoint& point) {
    double largest = 0.0;
    for (const Complex mu : point.mu) largest = std::max(largest, std::abs(mu));
    return largest;
}

CurvePoint exact_point(const LoopModel& model, double hz) {
    const LoopFactors factors = model.factors(hz);
    return {hz, largest_modulus(model.small_matrix(factors)), worst_phase_gain(model, factors)};
}

/// By frequency; of two at the same one the first.
LoopResponse response_of(std::vector<CurvePoint> points) {
    std::ranges::stable_sort(points, {}, &CurvePoint::hz);
    const auto alike = [](const CurvePoint& a, const CurvePoint& b) { return a.hz == b.hz; };
    points.erase(std::unique(points.begin(), points.end(), alike), points.end());
    LoopResponse response;
    for (const CurvePoint& point : points) {
        response.hz.push_back(point.hz);
        response.gain_db.push_back(floored_db(point.gain));
        response.worst_phase_db.push_back(floored_db(point.worst_phase));
    }
    return response;
}
}  // namespace

std::optional<LoopResponse> loop_response(const Show& show, const OpenLoops& open, const std::vector<double>& also_at,
                                          const Job& job) {
    const Show part = with_only(show, open);
    const BlockModel blocks(part, Purpose::curve);
    if (blocks.model().empty()) return LoopResponse{};
    const Sweep swept = block_sweep(blocks, {}, job);
    std::vector<CurvePoint> points;
    for (const double hz : also_at)
        if (hz >= kLowestHz && hz <= kHighestHz && !job.cancelled()) points.push_back(exact_point(blocks.model(), hz));
    if (job.cancelled()) return std::nullopt;
    for (std::size_t i = 0; i < swept.hz.size(); ++i)
        points.push_back({swept.hz[i], modulus_of(swept.points[i]), swept.worst_phase[i]});
    return response_of(std::move(points));
}

}  // namespace howlmap
