// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/frequency_grid.h"

#include <algorithm>
#include <cmath>

#include "core/units/bands.h"

namespace howlmap {
namespace {
void add_resonances(LoopTiming& timing, const Filter& filter) {
    for (const Section& section : filter.sections)
        timing.resonances.push_back({section.hz, std::max(0.5, section.sharpness())});
}

void add_resonances(LoopTiming& timing, const LoopModel::In& in) {
    add_resonances(timing, in.chain);
    add_resonances(timing, in.response.filter());
    if (in.response.body())
        for (const BodyBank::Mode& mode : in.response.body()->modes) timing.resonances.push_back({mode.hz, mode.q});
}

/// Limits of the pieces within which no resonance's group delay varies much.
std::vector<double> pieces(const LoopTiming& timing) {
    std::vector<double> limits{kLowestHz, kHighestHz};
    for (double hz = kLowestHz; hz < kHighestHz; hz *= 1.25) limits.push_back(hz);
    for (const auto& resonance : timing.resonances) {
        const double half_width = resonance.hz / (2.0 * resonance.sharpness);
        limits.push_back(resonance.hz);
        for (double away = 0.5 * half_width; away < resonance.hz; away *= 2.0) {
            limits.push_back(resonance.hz - away);
            limits.push_back(resonance.hz + away);
        }
    }
    std::sort(limits.begin(), limits.end());
    std::erase_if(limits, [](double hz) { return hz < kLowestHz || hz > kHighestHz; });
    limits.erase(std::unique(limits.begin(), limits.end()), limits.end());
    return limits;
}
}  // namespace

double LoopTiming::Resonance::group_delay(double f) const {
    const double detune = 2.0 * sharpness * (f - hz) / hz;
    return sharpness / (kPi * hz) / (1.0 + detune * detune);
}

LoopTiming timing_of(const LoopModel& model) {
    LoopTiming timing;
    double least = 1e9, most = 0.0;
    const int inputs = static_cast<int>(model.inputs().size());
    for (const LoopModel::Bus& bus : model.buses())
        for (const int l : bus.speakers) {
            const double fixed = bus.chain.delay_s + model.speakers()[static_cast<std::size_t>(l)].response.delay_s;
            for (int c = 0; c < inputs; ++c)
                for (const Leg& leg : model.legs(c, l)) {
                    const double delay = fixed + leg.held_m / model.surroundings().speed;
                    least = std::min(least, delay);
                    most = std::max(most, delay);
                }
        }
    timing.common_s = model.latency_s() + 0.5 * (least + most);
    timing.spread_s = 0.5 * (most - least);
    for (const LoopModel::In& in : model.inputs()) add_resonances(timing, in);
    for (const LoopModel::Speaker& speaker : model.speakers()) add_resonances(timing, speaker.response);
    for (const LoopModel::Bus& bus : model.buses()) add_resonances(timing, bus.chain);
    return timing;
}

std::vector<double> frequency_grid(const LoopTiming& timing, double steps, double most_hz) {
    const std::vector<double> limits = pieces(timing);
    std::vector<double> grid;
    for (std::size_t i = 0; i + 1 < limits.size(); ++i) {
        const double low = limits[i], high = limits[i + 1];
        double low_delay = timing.spread_s, high_delay = timing.spread_s;
        for (const auto& resonance : timing.resonances) {
            low_delay = std::max(low_delay, timing.spread_s + resonance.group_delay(low));
            high_delay = std::max(high_delay, timing.spread_s + resonance.group_delay(high));
        }
        const double turns = std::max(low_delay, high_delay) * (high - low);
        const int count = static_cast<int>(std::max(1.0, std::ceil(std::max(turns * steps, (high - low) / most_hz))));
        for (int k = 0; k < count; ++k) grid.push_back(low + (high - low) * k / count);
    }
    grid.push_back(limits.back());
    return grid;
}

}  // namespace howlmap
