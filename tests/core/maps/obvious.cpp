// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/core/maps/obvious.h"

#include <Eigen/LU>
#include <algorithm>
#include <cmath>

#include "core/listening/ears.h"
#include "core/loop/loop_model.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::test {
namespace {
/// Gain of loop k of a loop matrix with all other loops closed.
double opened(const ComplexMatrix& loops, Eigen::Index k) {
    const Eigen::Index n = loops.rows();
    ComplexMatrix order = ComplexMatrix::Zero(n, n);  // k first
    order(0, k) = 1.0;
    for (Eigen::Index i = 0, at = 1; i < n; ++i)
        if (i != k) order(at++, i) = 1.0;
    const ComplexMatrix sorted = order * loops * order.transpose();
    if (n == 1) return std::abs(sorted(0, 0));
    const ComplexMatrix rest = ComplexMatrix::Identity(n - 1, n - 1) - sorted.bottomRightCorner(n - 1, n - 1);
    const ComplexVector back = rest.fullPivLu().solve(sorted.bottomLeftCorner(n - 1, 1));
    return std::abs(sorted(0, 0) + (sorted.topRightCorner(1, n - 1) * back)(0));
}

double a_weighted_sum(const std::vector<EarSource>& sources, int mix, int band) {
    double energy = 0.0;
    for (const EarSource& source : sources)
        if (mix < 0 || source.mix == mix)
            energy += band < 0 ? source.weighted() : source.energies()[static_cast<std::size_t>(band)];
    return energy;
}

Vec3 at_ear_height(const Show& show, Vec2 place) {
    return {place.x, place.y, riser_height_at(show.stage, place) + 1.6};
}
}  // namespace

ObviousFeedback::ObviousFeedback(const Show& show, const std::string& input, Vec2 place)
    : show_(std::make_shared<Show>(show)), input_(index_by_id(show.inputs, input)) {
    Vec3& position = show_->inputs[static_cast<std::size_t>(input_)].position;
    position = {place.x, place.y, position.z};
    model_ = std::make_shared<LoopModel>(*show_);
}

double ObviousFeedback::margin_db(double hz) const {
    const LoopModel& model = *model_;
    Eigen::Index k = 0;
    while (model.inputs()[static_cast<std::size_t>(k)].index != input_) ++k;
    return -ratio_to_db(opened(model.loop_matrix(model.factors(hz)), k));
}

ObviousLoudspeaker::ObviousLoudspeaker(const Show& show, const std::string& loudspeaker, const std::string& performer,
                                       Vec2 place)
    : show_(std::make_shared<Show>(show)) {
    const Performer& hears = *find_by_id(show.performers, performer);
    mix_ = index_by_id(show.mixes, hears.mix);
    const Vec3 ear{hears.position.x, hears.position.y,
                   riser_height_at(show.stage, hears.position) + hears.ear_height_m};
    const double before = a_weighted_sum(sources_at_point(show, ChainEnergies(show), ear, false), mix_, -1);
    Loudspeaker& moved = *find_by_id(show_->loudspeakers, loudspeaker);
    moved.position = {place.x, place.y, moved.position.z};
    const Aim aim = aim_towards(moved.position, ear);
    moved.aim = {aim.yaw_deg, aim.pitch_deg, moved.aim.roll_deg};
    const double after = a_weighted_sum(sources_at_point(*show_, ChainEnergies(*show_), ear, false), mix_, -1);
    for (Send& send : show_->mixes[static_cast<std::size_t>(mix_)].sends) send.level_db += energy_to_db(before / after);
    model_ = std::make_shared<LoopModel>(*show_);
}

double ObviousLoudspeaker::margin_db(double hz) const {
    const LoopModel& model = *model_;
    const LoopFactors f = model.factors(hz);
    // Signal on the buses -> loudspeakers -> microphones -> buses.
    const auto buses = static_cast<Eigen::Index>(model.buses().size());
    ComplexMatrix feeds = ComplexMatrix::Zero(f.r.size(), buses);
    Eigen::Index k = 0;
    for (Eigen::Index m = 0; m < buses; ++m) {
        if (model.buses()[static_cast<std::size_t>(m)].index == mix_) k = m;
        for (const int l : model.buses()[static_cast<std::size_t>(m)].speakers) feeds(l, m) = f.r(l) * f.e(m);
    }
    const ComplexMatrix sends = model.sends().cast<Complex>() * f.p.asDiagonal();
    return -ratio_to_db(opened(sends * f.b.asDiagonal() * f.h * feeds, k));
}

template <class Obvious>
Peak smallest_margin(const Obvious& map, int per_octave) {
    const auto points = static_cast<int>(std::floor(per_octave * std::log2(1000.0))) + 1;
    std::vector<Peak> grid;
    for (int i = 0; i <= points; ++i) {
        const double hz = std::min(20.0 * std::exp2(static_cast<double>(i) / per_octave), 20000.0);
        grid.push_back({map.margin_db(hz), hz});
    }
    std::partial_sort(grid.begin(), grid.begin() + 12, grid.end(),
                      [](const Peak& a, const Peak& b) { return a.margin_db < b.margin_db; });
    Peak best = grid.front();
    for (std::size_t i = 0; i < 12; ++i) {
        const double from = grid[i].hz * std::exp2(-1.0 / per_octave), to = grid[i].hz * std::exp2(1.0 / per_octave);
        for (int j = 0; j <= 32; ++j) {
            const double hz = std::clamp(from + (to - from) * j / 32.0, 20.0, 20000.0);
            const double margin = map.margin_db(hz);
            if (margin < best.margin_db) best = {margin, hz};
        }
    }
    return best;
}
template Peak smallest_margin(const ObviousFeedback&, int);
template Peak smallest_margin(const ObviousLoudspeaker&, int);

double obvious_level(const Show& show, const std::string& mix, Vec2 place, int band) {
    const auto sources = sources_at_point(show, ChainEnergies(show), at_ear_height(show, place), false);
    return energy_to_db(a_weighted_sum(sources, index_by_id(show.mixes, mix), band));
}

double obvious_wash(const Show& show, Vec2 place) {
    return energy_to_db(
        a_weighted_sum(sources_at_point(show, ChainEnergies(show), at_ear_height(show, place), true), -1, -1));
}

}  // namespace howlmap::test
