// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/first_rings.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <map>
#include <tuple>

#include "core/loop/drawn_models.h"
#include "core/loop/ring.h"
#include "core/units/bands.h"
#include "core/units/level.h"

namespace howlmap {
namespace {
constexpr std::size_t kDrawsABand = 24;

/// Indices in the show: the input that hears, loudspeaker, mix.
using Round = std::tuple<int, int, int>;

struct FirstRing {
    std::size_t draw;
    DrawnMargin margin;
};

std::vector<FirstRing> rings_in(const std::vector<std::optional<DrawnMargin>>& margins, double band_hz) {
    const int band = third_octave_of(band_hz);
    std::vector<FirstRing> rings;
    for (std::size_t d = 0; d < margins.size(); ++d)
        if (margins[d] && third_octave_of(margins[d]->hz) == band) rings.push_back({d, *margins[d]});
    return rings;
}

double median_hz(std::vector<FirstRing> rings) {
    const auto middle = rings.begin() + static_cast<std::ptrdiff_t>(rings.size() / 2);
    std::nth_element(rings.begin(), middle, rings.end(),
                     [](const FirstRing& a, const FirstRing& b) { return a.margin.hz < b.margin.hz; });
    return middle->margin.hz;
}

std::map<Round, double> rounds_of(const LoopModel& model, const DrawnMargin& margin) {
    std::map<Round, double> rounds;
    const auto index = [](const auto& list, int position) { return list[static_cast<std::size_t>(position)].index; };
    for (const Way& way : ways_at(model, {margin.hz, db_to_ratio(-margin.margin_db)}))
        rounds[{index(model.inputs(), way.hears), index(model.speakers(), way.speaker),
                index(model.buses(), way.bus)}] += way.share;
    return rounds;
}

/// What all rings of a band have in common. Sums of shares.
void name_band(const Show& show, const std::map<Round, double>& rounds, BandProbability& band) {
    std::map<int, double> mixes;
    for (const auto& [round, share] : rounds) mixes[std::get<2>(round)] += std::max(0.0, share);
    double sum = 0.0;
    for (const auto& [mix, share] : mixes) sum += share;
    for (const auto& [mix, share] : mixes)
        if (share > 0.0) band.mixes.push_back({show.mixes[static_cast<std::size_t>(mix)].id, share / sum});
    std::ranges::stable_sort(band.mixes, std::ranges::greater{}, &BandProbability::MixShare::share);
    const auto most = std::ranges::max_element(rounds, {}, [](const auto& one) { return one.second; });
    if (most == rounds.end()) return;
    const auto [input, loudspeaker, mix] = most->first;
    band.input = show.inputs[static_cast<std::size_t>(input)].id;
    band.loudspeaker = show.loudspeakers[static_cast<std::size_t>(loudspeaker)].id;
    band.mix = show.mixes[static_cast<std::size_t>(mix)].id;
}
}  // namespace

void name_first_rings(const Show& show, const std::vector<std::optional<DrawnMargin>>& margins,
                      ToleranceFigures& figures, const Job& job) {
    const DrawnModels models(show);
    for (BandProbability& band : figures.first_ring) {
        std::vector<FirstRing> rings = rings_in(margins, band.band_hz);
        band.hz = median_hz(rings);
        if (rings.size() > kDrawsABand) rings.resize(kDrawsABand);
        std::vector<std::map<Round, double>> found(rings.size());
        tbb::parallel_for(std::size_t{0}, rings.size(), [&](std::size_t i) {
            if (job.cancelled()) return;
            models.with(rings[i].draw, [&](const LoopModel& model) { found[i] = rounds_of(model, rings[i].margin); });
        });
        std::map<Round, double> all;
        for (const auto& one : found)
            for (const auto& [round, share] : one) all[round] += share;
        name_band(show, all, band);
    }
}

}  // namespace howlmap
