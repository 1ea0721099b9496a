// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/interval_bounds.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace howlmap {
namespace {
constexpr double kNarrowest = 1.08;    // ratio of the ends of an interval, at least
constexpr double kSampleSlack = 1.05;  // what a sample of a chain may miss of a peak
constexpr double kRare = 4.3;          // a Gaussian amplitude of unit variance exceeds it once in 10^8

/// Places in a stretch where a chain is sampled for its largest value: evenly, and at the centres of its resonances.
std::vector<double> samples(double low, double high, const std::vector<LoopTiming::Resonance>& resonances) {
    std::vector<double> places;
    for (int i = 0; i <= 16; ++i) places.push_back(low + (high - low) * i / 16.0);
    for (const auto& resonance : resonances)
        if (resonance.hz > low && resonance.hz < high) places.push_back(resonance.hz);
    return places;
}

template <class Function>
double largest(const std::vector<double>& places, Function function) {
    double most = 0.0;
    for (const double hz : places) most = std::max(most, function(hz));
    return kSampleSlack * most;
}
}  // namespace

IntervalBounds::IntervalBounds(const LoopModel& model, const Wiring& wiring, const BlockGrid& grid,
                               const RoomBlocks* room) {
    const auto resonances = timing_of(model).resonances;
    for (std::size_t b = 0; b < grid.blocks.size();) {
        Interval interval{b, b, grid.blocks[b].node, grid.blocks[b].node, {}, {}, {}};
        const double low = grid.blocks[b].low_hz;
        const std::size_t first_node = grid.blocks[b].node;
        // Whole stretches between nodes, as many as make the interval wide enough.
        while (b < grid.blocks.size() &&
               (grid.blocks[b].low_hz < kNarrowest * low || grid.blocks[b].node == interval.high_node - 1 ||
                grid.blocks[b].node == first_node)) {
            interval.high_node = grid.blocks[b].node + 1;
            ++b;
        }
        interval.last = b;
        const auto places = samples(low, grid.blocks[b - 1].hz(kBlockPoints - 1), resonances);
        for (const LoopModel::In& in : model.inputs())
            interval.hears.push_back(
                largest(places, [&](double hz) { return std::abs(in.response.at(hz) * in.chain.at(hz)); }));
        for (const Wiring::Slot& slot : wiring.slots)
            interval.speaks.push_back(largest(places, [&](double hz) {
                return std::abs(model.buses()[slot.bus].chain.at(hz) * model.speakers()[slot.speaker].response.at(hz));
            }));
        if (room)
            for (std::size_t pair = 0; pair < room->pairs(); ++pair)
                interval.rms.push_back(room->largest_rms(pair, interval.low_node, interval.high_node));
        intervals_.push_back(std::move(interval));
    }
    balances_.resize(intervals_.size());
    weights_.resize(room ? room->pairs() : 0);
}

void IntervalBounds::fill_matrix(const Interval& interval, const Placement& placement, const Wiring& w) {
    const std::size_t n = w.size();
    heard_.assign(w.inputs * w.buses, 0.0);
    for (std::size_t c = 0; c < w.inputs; ++c)
        for (std::size_t slot = 0; slot < w.slots.size(); ++slot) {
            const double size =
                placement.largest_size(c * w.speakers + w.slots[slot].speaker, interval.low_node, interval.high_node);
            heard_[c * w.buses + w.slots[slot].bus] += size * interval.hears[c] * interval.speaks[slot];
        }
    matrix_.assign(n * n, 0.0);
    for (std::size_t m = 0; m < w.buses; ++m)
        for (std::size_t sent = 0; sent < w.inputs; ++sent) {
            const double send = w.sends[m * w.inputs + sent];
            if (send == 0.0) continue;
            if (w.by_inputs())
                for (std::size_t c = 0; c < n; ++c) matrix_[c * n + sent] += heard_[c * w.buses + m] * send;
            else
                for (std::size_t j = 0; j < n; ++j) matrix_[m * n + j] += send * heard_[sent * w.buses + j];
        }
}

namespace {
/// A few steps of the power iteration towards the Perron vector, from the right or the left; all elements stay
/// positive.
void towards_perron(const std::vector<double>& matrix, std::size_t n, bool left, std::vector<double>& x,
                    std::vector<double>& next) {
    x.assign(n, 1.0);
    next.resize(n);
    for (int pass = 0; pass < 4; ++pass) {
        double most = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            double sum = 0.0;
            for (std::size_t j = 0; j < n; ++j) sum += (left ? matrix[j * n + i] : matrix[i * n + j]) * x[j];
            next[i] = sum;
            most = std::max(most, sum);
        }
        if (most == 0.0) break;
        for (std::size_t i = 0; i < n; ++i) x[i] = std::max(next[i] / most + 0.05 * x[i], 1e-4);
    }
}
}  // namespace

void IntervalBounds::fill_squares(const Interval& interval, const Wiring& w) {
    const std::size_t n = w.size();
    squares_.resize(n * n);
    for (std::size_t i = 0; i < n * n; ++i) squares_[i] = matrix_[i] * matrix_[i];
    for (std::size_t slot = 0; slot < w.slots.size(); ++slot) {
        const std::size_t m = w.slots[slot].bus;
        for (std::size_t c = 0; c < w.inputs; ++c) {
            const double rms =
                interval.hears[c] * interval.speaks[slot] * interval.rms[c * w.speakers + w.slots[slot].speaker];
            for (std::size_t i = 0; i < n; ++i) {
                const double value = rms * (w.by_inputs() ? w.sends[m * w.inputs + i] : w.sends[i * w.inputs + c]);
                squares_[w.by_inputs() ? c * n + i : i * n + m] += value * value;
            }
        }
    }
}

namespace {
/// Largest of the ratios of A x to x.
double largest_ratio(const std::vector<double>& matrix, std::size_t n, bool left, const std::vector<double>& x) {
    double most = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        double sum = 0.0;
        for (std::size_t j = 0; j < n; ++j) sum += (left ? matrix[j * n + i] : matrix[i * n + j]) * x[j];
        most = std::max(most, sum / x[i]);
    }
    return most;
}
}  // namespace

/// Weights from the Perron vectors of the rms values, or of the magnitudes without a room; returns the rough size.
double IntervalBounds::find_balance(std::size_t n, std::vector<double>& balance) {
    const std::vector<double>& matrix = squares_.empty() ? matrix_ : squares_;
    towards_perron(matrix, n, false, right_, next_);
    towards_perron(matrix, n, true, left_, next_);
    double rough = 0.0;
    if (!squares_.empty()) {
        rough = std::pow(largest_ratio(matrix, n, false, right_) * largest_ratio(matrix, n, true, left_), 0.25);
        for (auto* vector : {&right_, &left_})
            for (double& x : *vector) x = std::sqrt(x);
    }
    balance.resize(n);
    for (std::size_t i = 0; i < n; ++i) balance[i] = std::sqrt(right_[i] / left_[i]);
    return rough;
}

/// Spectral norm of D^-1 M D: at most the root of the largest row sum times the largest column sum. Schur's test with
/// Perron vectors as weights makes both sums the Perron root.
double IntervalBounds::balanced_norm(std::size_t n) const {
    return std::sqrt(largest_ratio(matrix_, n, false, right_) * largest_ratio(matrix_, n, true, left_));
}

double IntervalBounds::room_norm(const Interval& interval, const Wiring& w, const std::vector<double>& balance) {
    // Frobenius norm of the room part of D^-1 M D as a sum over pairs of weights |z|^2.
    std::fill(weights_.begin(), weights_.end(), 0.0);
    for (std::size_t slot = 0; slot < w.slots.size(); ++slot) {
        const std::size_t m = w.slots[slot].bus;
        double together = 0.0;  // loudspeakers of the same bus add up
        for (const Wiring::Slot& other : w.slots) together += other.bus == m ? 1.0 : 0.0;
        for (std::size_t c = 0; c < w.inputs; ++c) {
            double spread = 0.0;
            const std::size_t n = w.by_inputs() ? w.inputs : w.buses;
            for (std::size_t i = 0; i < n; ++i) {
                const double send =
                    w.by_inputs() ? w.sends[m * w.inputs + i] * balance[i] : w.sends[i * w.inputs + c] / balance[i];
                spread += send * send;
            }
            const double side = w.by_inputs() ? 1.0 / balance[c] : balance[m];
            const std::size_t pair = c * w.speakers + w.slots[slot].speaker;
            const double size = interval.hears[c] * interval.speaks[slot] * interval.rms[pair] * side;
            weights_[pair] += together * size * size * spread;
        }
    }
    double sum = 0.0, most = 0.0;
    for (const double weight : weights_) {
        sum += weight;
        most = std::max(most, weight);
    }
    return std::sqrt(sum) + kRare * std::sqrt(most);
}

void IntervalBounds::order(const Placement& placement, const Wiring& wiring, const std::vector<double>& most,
                           std::vector<Entry>& entries) {
    entries.clear();
    const std::size_t n = wiring.size();
    for (std::size_t i = 0; i < intervals_.size(); ++i) {
        const Interval& interval = intervals_[i];
        fill_matrix(interval, placement, wiring);
        if (!interval.rms.empty()) fill_squares(interval, wiring);
        const double rough = find_balance(n, balances_[i]);
        double bound = most.empty() ? std::numeric_limits<double>::infinity() : rough * most[i];
        if (!std::isfinite(bound)) {  // nothing is known
            bound = balanced_norm(n);
            if (!interval.rms.empty()) bound += room_norm(interval, wiring, balances_[i]);
        }
        entries.push_back({bound, rough, i});
    }
    std::sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.bound > b.bound; });
}

}  // namespace howlmap
