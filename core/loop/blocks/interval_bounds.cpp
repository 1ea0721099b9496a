// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/interval_bounds.h"

#include <algorithm>
#include <cmath>

namespace howlmap {
namespace {
/// Places in a stretch where a chain is sampled for its largest value: evenly, and at the centres of its resonances.
std::vector<double> samples(double low, double high, const std::vector<LoopTiming::Resonance>& resonances) {
    std::vector<double> places;
    for (int i = 0; i <= 16; ++i) places.push_back(low + (high - low) * i / 16.0);
    for (const auto& resonance : resonances)
        if (resonance.hz > low && resonance.hz < high) places.push_back(resonance.hz);
    return places;
}
constexpr double kSampleSlack = 1.05;  // what a sample may miss of a peak

template <class Function>
double largest(const std::vector<double>& places, Function function) {
    double most = 0.0;
    for (const double hz : places) most = std::max(most, function(hz));
    return kSampleSlack * most;
}

/// Upper bound of the Perron root: bounds of Collatz and Wielandt after a few steps of the power iteration.
double perron_bound(const std::vector<double>& matrix, std::size_t n, std::vector<double>& x, std::vector<double>& y) {
    x.assign(n, 1.0);
    y.resize(n);
    double bound = 0.0;
    for (int pass = 0; pass < 6; ++pass) {
        double ratio = 0.0, size = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            double sum = 0.0;
            for (std::size_t j = 0; j < n; ++j) sum += matrix[i * n + j] * x[j];
            ratio = std::max(ratio, sum / x[i]);
            y[i] = sum + 0.05 * x[i];  // stays positive
            size = std::max(size, y[i]);
        }
        bound = pass == 0 ? ratio : std::min(bound, ratio);
        if (size == 0.0) return 0.0;
        for (std::size_t i = 0; i < n; ++i) x[i] = std::max(y[i] / size, 1e-9);
    }
    return bound;
}
}  // namespace

IntervalBounds::IntervalBounds(const LoopModel& model, const Wiring& wiring, const BlockGrid& grid) {
    const auto resonances = timing_of(model).resonances;
    for (std::size_t b = 0; b < grid.blocks.size();) {
        const std::size_t node = grid.blocks[b].node, first = b;
        while (b < grid.blocks.size() && grid.blocks[b].node == node) ++b;
        intervals_.push_back({0.0, first, b});
        nodes_.push_back(node);
        const auto places = samples(grid.blocks[first].low_hz, grid.blocks[b - 1].hz(kBlockPoints - 1), resonances);
        auto& hears = hears_.emplace_back();
        for (const LoopModel::In& in : model.inputs())
            hears.push_back(largest(places, [&](double hz) { return std::abs(in.response.at(hz) * in.chain.at(hz)); }));
        auto& speaks = speaks_.emplace_back();
        for (const Wiring::Slot& slot : wiring.slots)
            speaks.push_back(largest(places, [&](double hz) {
                return std::abs(model.buses()[slot.bus].chain.at(hz) * model.speakers()[slot.speaker].response.at(hz));
            }));
    }
}

double IntervalBounds::bound(std::size_t interval, const Placement& placement, const Wiring& w,
                             const RoomDraw* room) const {
    static thread_local std::vector<double> heard, matrix, x, y;
    const std::size_t node = nodes_[interval], n = w.size();
    heard.assign(w.inputs * w.buses, 0.0);
    for (std::size_t c = 0; c < w.inputs; ++c)
        for (std::size_t slot = 0; slot < w.slots.size(); ++slot) {
            const std::size_t pair = c * w.speakers + w.slots[slot].speaker;
            double size = std::max(placement.size_at(pair, node), placement.size_at(pair, node + 1));
            if (room) size += room->largest(pair, node);
            heard[c * w.buses + w.slots[slot].bus] += size * hears_[interval][c] * speaks_[interval][slot];
        }
    matrix.assign(n * n, 0.0);
    for (std::size_t m = 0; m < w.buses; ++m)
        for (std::size_t sent = 0; sent < w.inputs; ++sent) {
            const double send = w.sends[m * w.inputs + sent];
            if (send == 0.0) continue;
            if (w.by_inputs())
                for (std::size_t c = 0; c < n; ++c) matrix[c * n + sent] += heard[c * w.buses + m] * send;
            else
                for (std::size_t j = 0; j < n; ++j) matrix[m * n + j] += send * heard[sent * w.buses + j];
        }
    return perron_bound(matrix, n, x, y);
}

std::vector<IntervalBounds::Entry> IntervalBounds::ordered(const Placement& placement, const Wiring& wiring,
                                                           const RoomDraw* room) const {
    std::vector<Entry> entries = intervals_;
    for (std::size_t i = 0; i < entries.size(); ++i) entries[i].bound = bound(i, placement, wiring, room);
    std::sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.bound > b.bound; });
    return entries;
}

}  // namespace howlmap
