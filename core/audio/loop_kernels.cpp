// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audio/loop_kernels.h"

#include <oneapi/tbb/blocked_range.h>
#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/audio/causal_response.h"
#include "core/audio/turn.h"
#include "core/loop/frequency_grid.h"

namespace howlmap {
namespace {

constexpr std::size_t kFewestBins = 1u << 13, kMostBins = 1u << 16;  // at 48 kHz 0.34 and 2.7 s of sound
constexpr double kSilent = 1e-5;  // of the whole: what may be left off a response's end, in amplitude
constexpr std::size_t kMostExact = 8;
constexpr double kNearZero = 1e-4;  // bins: so low that the longest delay turns nothing

using Values = std::vector<Complex>;

// Everything that is wanted, at one frequency: the loop matrix's factors joined as the simulation takes them.
struct Point {
    ComplexMatrix loop;            // input x bus
    ComplexVector channel, heard;  // by input; by bus
};

Point point_at(const LoopModel& model, double hz) {
    const LoopFactors f = model.factors(hz);
    const auto inputs = static_cast<Eigen::Index>(model.inputs().size()),
               buses = static_cast<Eigen::Index>(model.buses().size());
    Point out{ComplexMatrix::Zero(inputs, buses), f.p, ComplexVector::Zero(buses)};
    for (Eigen::Index m = 0; m < buses; ++m) {
        const auto& speakers = model.buses()[static_cast<std::size_t>(m)].speakers;
        for (const int l : speakers) {
            out.heard(m) += f.e(m) * f.r(l) / static_cast<double>(speakers.size());
            for (Eigen::Index c = 0; c < inputs; ++c) out.loop(c, m) += f.p(c) * f.b(c) * f.h(c, l) * f.r(l) * f.e(m);
        }
    }
    return out;
}

// Bins enough for the longest way and for the slowest resonance to fall by 60 dB, so that little comes round the
// circle.
std::size_t bins_for(const LoopModel& model, double rate_hz) {
    const LoopTiming timing = timing_of(model);
    double slowest_s = 0.0;
    for (const LoopTiming::Resonance& r : timing.resonances)
        slowest_s = std::max(slowest_s, r.sharpness / (std::numbers::pi * r.hz));
    const double wanted_s = 0.1 + timing.common_s + timing.spread_s + 7.0 * slowest_s;
    std::size_t bins = kFewestBins;
    while (bins < kMostBins && static_cast<double>(2 * bins) * 7.0 / 8.0 < wanted_s * rate_hz) bins *= 2;
    return bins;
}

std::vector<Point> sampled(const LoopModel& model, double rate_hz, const Job& job) {
    const std::size_t bins = bins_for(model, rate_hz);
    std::vector<Point> points(bins + 1);
    tbb::parallel_for(
        tbb::blocked_range<std::size_t>(0, points.size(), 256), [&](const tbb::blocked_range<std::size_t>& range) {
            for (std::size_t k = range.begin(); k < range.end() && !job.cancelled(); ++k)
                points[k] = point_at(
                    model, std::max(kNearZero, static_cast<double>(k)) * rate_hz / static_cast<double>(2 * bins));
        });
    return points;
}

// Cuts what comes before `block` (the end of the circle included) and what is silent at the end.
std::vector<double> cut(std::vector<double> response, std::size_t block) {
    std::fill_n(response.begin(), block, 0.0);
    const std::size_t kept = response.size() - response.size() / 8;  // the rest of the circle is time before 0
    double energy = 0.0, tail = 0.0;
    for (std::size_t n = 0; n < kept; ++n) energy += response[n] * response[n];
    std::size_t end = kept;
    while (end > block + 1 && tail + response[end - 1] * response[end - 1] < kSilent * kSilent * energy) {
        tail += response[end - 1] * response[end - 1];
        --end;
    }
    response.resize(energy > 0.0 ? end : 0);
    return response;
}

std::vector<float> to_float(const std::vector<double>& taps) { return {taps.begin(), taps.end()}; }

// The same, later by `block` samples: for what lies outside the loop and may wait.
std::vector<float> waiting(Values values, double rate_hz, std::size_t block) {
    const std::size_t bins = values.size() - 1;
    for (std::size_t k = 0; k < values.size(); ++k)
        values[k] *= std::polar(
            1.0, -kTurn * static_cast<double>(k) * static_cast<double>(block + 16) / static_cast<double>(2 * bins));
    return to_float(cut(impulse_response(std::move(values), rate_hz), block));
}

// The shortest way of sound round the loops, in samples, as a block that fits into it.
std::size_t block_for(const LoopModel& model, double rate_hz) {
    double shortest_s = 1.0;
    for (const LoopModel::Bus& bus : model.buses())
        for (const int l : bus.speakers)
            for (int c = 0; c < static_cast<int>(model.inputs().size()); ++c)
                for (const Leg& leg : model.legs(c, l))
                    shortest_s = std::min(
                        shortest_s, leg.held_m / model.surroundings().speed + model.latency_s() + bus.chain.delay_s +
                                        model.speakers()[static_cast<std::size_t>(l)].response.delay_s);
    std::size_t block = 8;
    while (2.0 * static_cast<double>(2 * block) < shortest_s * rate_hz && block < 128) block *= 2;
    return block;
}

std::vector<double> apart(std::vector<double> hz) {
    std::vector<double> out;
    for (const double f : hz)
        if (out.size() < kMostExact &&
            std::none_of(out.begin(), out.end(), [&](double g) { return std::abs(f - g) < 12.0; }))
            out.push_back(f);
    return out;
}

// Value and slope of every loop element at a frequency, slopes by central difference.
struct Exact {
    Point low, middle, high;
    double hz, step;
    Wanted at(Eigen::Index input, Eigen::Index bus) const {
        return {hz, middle.loop(input, bus), (high.loop(input, bus) - low.loop(input, bus)) / (2.0 * kTurn * step)};
    }
};

}  // namespace

LoopKernels loop_kernels(const LoopModel& model, double rate_hz, std::vector<double> exact_hz, const Job& job) {
    LoopKernels out;
    out.rate_hz = rate_hz;
    out.block = block_for(model, rate_hz);
    const std::vector<Point> points = sampled(model, rate_hz, job);
    if (job.cancelled()) return {};
    std::vector<Exact> exact;
    for (const double hz : exact_hz = apart(std::move(exact_hz))) {
        const double step = 1e-3;
        exact.push_back({point_at(model, hz - step), point_at(model, hz), point_at(model, hz + step), hz, step});
    }
    const Correction correction(exact_hz, out.block, rate_hz);
    const auto values_of = [&](auto&& pick) {
        Values values;
        for (const Point& p : points) values.push_back(pick(p));
        return values;
    };
    const auto inputs = static_cast<Eigen::Index>(model.inputs().size()),
               buses = static_cast<Eigen::Index>(model.buses().size());
    for (Eigen::Index c = 0; c < inputs; ++c) {
        out.channel.push_back(waiting(values_of([&](const Point& p) { return p.channel(c); }), rate_hz, out.block));
        out.loop.emplace_back();
        for (Eigen::Index m = 0; m < buses; ++m) {
            std::vector<double> taps =
                cut(impulse_response(values_of([&](const Point& p) { return p.loop(c, m); }), rate_hz), out.block);
            std::vector<Wanted> wanted;
            for (const Exact& e : exact) wanted.push_back(e.at(c, m));
            if (!taps.empty()) {
                taps.resize(std::max(taps.size(), correction.reach()), 0.0);
                correction.apply(taps, wanted);
            }
            out.loop.back().push_back(to_float(taps));
        }
        if (job.cancelled()) return {};
    }
    for (Eigen::Index m = 0; m < buses; ++m)
        out.heard.push_back(waiting(values_of([&](const Point& p) { return p.heard(m); }), rate_hz, out.block));
    return out;
}

}  // namespace howlmap
