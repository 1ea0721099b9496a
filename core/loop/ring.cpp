// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/ring.h"

#include <algorithm>
#include <cmath>

#include "core/units/bands.h"
#include "core/units/level.h"
#include "core/units/notes.h"

namespace howlmap {
namespace {
LocusSlope slope_of(const LoopModel& model, const EigenPair& pair, double hz) {
    const double step = 1e-6 * hz;
    const ComplexMatrix change =
        model.loop_matrix(model.factors(hz + step)) - model.loop_matrix(model.factors(hz - step));
    const Complex slope = (pair.left.transpose() * change * pair.right)(0, 0) /
                          (pair.left.transpose() * pair.right)(0, 0) / (4.0 * kPi * step) / pair.value;
    return {-slope.imag(), slope.real()};
}

std::vector<Way> ways_of(const LoopModel& model, const LoopFactors& f, const EigenPair& pair) {
    const Complex scale = 1.0 / (pair.value * (pair.left.transpose() * pair.right)(0, 0));
    std::vector<Way> ways;
    for (std::size_t m = 0; m < model.buses().size(); ++m)
        for (const int l : model.buses()[m].speakers)
            for (Eigen::Index c = 0; c < f.p.size(); ++c) {
                const auto bus = static_cast<Eigen::Index>(m);
                if (model.sends()(bus, c) == 0.0) continue;
                const Complex sent = f.r(l) * f.e(bus) * model.sends()(bus, c) * f.p(c) * pair.right(c) * scale;
                for (Eigen::Index hears = 0; hears < f.b.size(); ++hears)
                    ways.push_back({static_cast<int>(hears), l, static_cast<int>(c), static_cast<int>(m),
                                    (pair.left(hears) * f.b(hears) * f.h(hears, l) * sent).real()});
            }
    return ways;
}

std::vector<Share> shares_of(const LoopModel& model, const std::vector<Way>& ways) {
    RealMatrix sums = RealMatrix::Zero(static_cast<Eigen::Index>(model.inputs().size()),
                                       static_cast<Eigen::Index>(model.speakers().size()));
    for (const Way& way : ways) sums(way.hears, way.speaker) += way.share;
    std::vector<Share> shares;
    for (Eigen::Index c = 0; c < sums.rows(); ++c)
        for (Eigen::Index l = 0; l < sums.cols(); ++l) {
            if (std::abs(sums(c, l)) < 0.005) continue;
            const auto input = static_cast<std::size_t>(model.inputs()[static_cast<std::size_t>(c)].index);
            const auto speaker = static_cast<std::size_t>(model.speakers()[static_cast<std::size_t>(l)].index);
            shares.push_back({model.show().inputs[input].id, model.show().loudspeakers[speaker].id, sums(c, l)});
        }
    std::stable_sort(shares.begin(), shares.end(), [](const Share& a, const Share& b) { return a.share > b.share; });
    return shares;
}

/// The part of a loop's phase that is not the way through the air, in turns.
double turns_of(const LoopModel& model, const Way& way, double hz) {
    const auto& hears = model.inputs()[static_cast<std::size_t>(way.hears)];
    const auto& source = model.inputs()[static_cast<std::size_t>(way.source)];
    const auto& speaker = model.speakers()[static_cast<std::size_t>(way.speaker)];
    const auto& bus = model.buses()[static_cast<std::size_t>(way.bus)];
    const double delay = model.latency_s() + bus.chain.delay_s + speaker.response.delay_s;
    const double filters = source.chain.section_turns(hz) + bus.chain.section_turns(hz) +
                           speaker.response.section_turns(hz) + hears.response.turns(hz);
    const bool lobe = hears.receiver.pattern.gain(model.legs(way.hears, way.speaker).front().in_angle, hz) < 0.0;
    const bool odd = source.chain.inverted() ^ bus.chain.inverted() ^ speaker.response.inverted() ^ lobe;
    return hz * delay - filters + (odd ? 0.5 : 0.0);
}

void name_strongest(const LoopModel& model, const std::vector<Way>& ways, Ring& ring) {
    const Way& way =
        *std::max_element(ways.begin(), ways.end(), [](const Way& a, const Way& b) { return a.share < b.share; });
    const Show& show = model.show();
    const auto input_id = [&](int position) {
        return show.inputs[static_cast<std::size_t>(model.inputs()[static_cast<std::size_t>(position)].index)].id;
    };
    ring.whole_waves = model.legs(way.hears, way.speaker).front().held_m * ring.hz / model.surroundings().speed;
    ring.turns = turns_of(model, way, ring.hz);
    ring.strongest_input = input_id(way.hears);
    ring.strongest_source = input_id(way.source);
    ring.strongest_loudspeaker =
        show.loudspeakers[static_cast<std::size_t>(model.speakers()[static_cast<std::size_t>(way.speaker)].index)].id;
    ring.strongest_mix =
        show.mixes[static_cast<std::size_t>(model.buses()[static_cast<std::size_t>(way.bus)].index)].id;
}
}  // namespace

double build_up_db_per_s(double lambda, const LocusSlope& slope) {
    return ratio_to_db(lambda) * slope.delay_s / (slope.delay_s * slope.delay_s + slope.growth_s * slope.growth_s);
}

std::vector<Way> ways_at(const LoopModel& model, const Crossing& crossing) {
    const LoopFactors factors = model.factors(crossing.hz);
    return ways_of(model, factors, eigen_pair(model.loop_matrix(factors), crossing.lambda));
}

std::optional<Ring> ring_at(const LoopModel& model, const Crossing& crossing) {
    const LoopFactors factors = model.factors(crossing.hz);
    const EigenPair pair = eigen_pair(model.loop_matrix(factors), crossing.lambda);
    const LocusSlope slope = slope_of(model, pair, crossing.hz);
    if (slope.delay_s <= 0.0) return std::nullopt;
    Ring ring;
    ring.hz = crossing.hz;
    ring.band_hz = kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(crossing.hz))];
    const Note note = note_of(crossing.hz);
    ring.note = note.name;
    ring.cents = note.cents;
    ring.margin_db = -ratio_to_db(crossing.lambda.real());
    ring.build_up_db_per_s = build_up_db_per_s(crossing.lambda.real(), slope);
    const std::vector<Way> ways = ways_of(model, factors, pair);
    ring.shares = shares_of(model, ways);
    name_strongest(model, ways, ring);
    return ring;
}

}  // namespace howlmap
