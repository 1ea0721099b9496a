// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cures/guard.h"

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <optional>

#include "core/loop/chain.h"
#include "core/loop/room_field.h"
#include "core/propagation/transfer.h"
#include "core/show/find.h"
#include "core/units/level.h"

namespace howlmap::cures {
namespace {
constexpr int kPerOctave = 12;
constexpr int kPowerSteps = 24;
constexpr double kNothingDb = -200.0;
constexpr double kSharpness = 8.0;  // of the soft maximum
// Loops of different pairs are added as |.|^p: p = 1 is the worst phase, 2 is chance, which tells better what a cure
// gains in the draws.
constexpr double kPower = 2.0;
constexpr double kPathSpread = 0.82;  // rms path change per half width of the position draws: two ends, sqrt(2 / 3)

std::vector<double> grid_of(const Show& show) {
    std::vector<double> hz;
    for (int i = 0;; ++i) {
        hz.push_back(kLowestHz * std::exp2(i / static_cast<double>(kPerOctave)));
        if (hz.back() >= kHighestHz) break;
    }
    hz.back() = kHighestHz;
    for (const Input& input : show.inputs)
        if (const Pickup* pickup = pickup_of(input))
            for (const BodyMode& mode : pickup->modes)
                if (mode.hz > kLowestHz && mode.hz < kHighestHz) hz.push_back(mode.hz);
    std::sort(hz.begin(), hz.end());
    hz.erase(std::unique(hz.begin(), hz.end()), hz.end());
    return hz;
}

/// Mean of the strongest of the independent values of the room term within a third-octave, over its rms: they lie 2.2 /
/// RT60 apart (Schroeder 1954), and the largest of n Rayleigh values squared is ln n + 0.577 in the mean (Gumbel).
double likely_peak(double hz, double rt60_s) {
    const double count = std::max(1.0, 0.23 * hz * rt60_s / 2.2);
    return std::sqrt(std::log(count) + 0.577);
}

/// A first-order pattern whose null is filled by what the aim may be off: mean square to second order in the angle.
double blunted(const ReceiverPattern& pattern, double angle, double hz, double off) {
    const double gain = pattern.gain(angle, hz);
    if (pattern.is_table()) return gain;
    const double b = 1.0 - pattern.a(), slope = b * std::sin(angle) * off, bend = b * std::cos(angle) * off * off;
    const double size = std::sqrt(gain * gain + slope * slope + bend * bend);
    return gain < 0.0 ? -size : size;
}
}  // namespace

struct Guard::Surround {
    std::vector<double> hz;
    Surroundings air;
    std::vector<std::array<double, kVias>> reflections;
    std::vector<double> air_db_per_m, known;  // known: how much of the phases survives the tolerance, 0..1
    std::optional<RoomField> room;
    std::vector<double> room_peak;
    double aim_off, position_off;

    explicit Surround(const Show& show) : hz(grid_of(show)), air(show.air, show.stage.surfaces) {
        const double spread = kPathSpread * show.tolerance.position_m;
        for (double f : hz) {
            reflections.push_back(air.reflections(f));
            air_db_per_m.push_back(air.air.db_per_m(f));
            const double turn = 2.0 * kPi * f / air.speed * spread;
            known.push_back(std::exp(-turn * turn));
        }
        if (show.stage.room) room.emplace(show);
        for (double f : hz) room_peak.push_back(show.stage.room ? likely_peak(f, show.stage.room->rt60_s) : 0.0);
        aim_off = radians(show.tolerance.aim_deg);
        position_off = show.tolerance.position_m;
    }
};

/// What a loudspeaker sends where, by frequency.
struct Guard::Beam {
    std::shared_ptr<const Show> of;  // that the slices refer to
    std::vector<LoudspeakerSlice> slices;

    Beam(std::shared_ptr<const Show> show, const Directivity& directivity, const Surround& around)
        : of(std::move(show)) {
        for (const double hz : around.hz) slices.emplace_back(directivity, hz, around.air.speed);
    }
};

Guard::Guard(const Show& show) : show_(std::make_shared<const Show>(show)) {
    surround_ = std::make_shared<const Surround>(*show_);
    compute(nullptr);
}

Guard Guard::changed(const Show& after) const {
    Guard next;
    next.show_ = std::make_shared<const Show>(after);
    next.surround_ = surround_;
    next.compute(this);
    return next;
}

const std::vector<double>& Guard::hz() const { return surround_->hz; }

Guard::Curve Guard::path_curve(std::size_t i, std::size_t l) const {
    const Input& input = show_->inputs[i];
    const Loudspeaker& loudspeaker = show_->loudspeakers[l];
    const Receiver receiver = receiver_of(input);
    const auto legs = legs_between(emitter_of(loudspeaker), receiver,
                                   planes_between(show_->stage, loudspeaker.position, input.position));
    const Surround& s = *surround_;
    std::vector<double> aim_off;  // of each leg
    for (const Leg& leg : legs) aim_off.push_back(std::hypot(s.aim_off, s.position_off / leg.held_m));
    auto curve = std::make_shared<std::vector<double>>(s.hz.size());
    for (std::size_t at = 0; at < s.hz.size(); ++at) {
        const LoudspeakerSlice& slice = beams_[l]->slices[at];
        const double k = 2.0 * kPi * s.hz[at] / s.air.speed;
        double re = 0.0, im = 0.0, full = 0.0;
        for (std::size_t n = 0; n < legs.size(); ++n) {
            const Leg& leg = legs[n];
            const double gain = s.reflections[at][static_cast<std::size_t>(leg.via)] * slice.gain(leg.out) *
                                blunted(receiver.pattern, leg.in_angle, s.hz[at], aim_off[n]) / leg.held_m *
                                db_to_ratio(-s.air_db_per_m[at] * leg.held_m);
            re += gain * std::cos(k * leg.held_m);
            im += gain * std::sin(k * leg.held_m);
            full += std::abs(gain);
        }
        const double known = s.known[at];
        double size = std::sqrt(known * (re * re + im * im) + (1.0 - known) * full * full);
        if (s.room) size += s.room_peak[at] * s.room->rms(static_cast<int>(i), static_cast<int>(l), s.hz[at]);
        (*curve)[at] = std::pow(size, kPower);
    }
    return curve;
}

void Guard::find_beams(const Guard* before) {
    for (std::size_t l = 0; l < show_->loudspeakers.size(); ++l) {
        const Directivity& directivity = show_->loudspeakers[l].directivity;
        if (before && before->show_->loudspeakers[l].directivity == directivity)
            beams_.push_back(before->beams_[l]);
        else
            beams_.push_back(std::make_shared<const Beam>(show_, directivity, *surround_));
    }
}

void Guard::compute(const Guard* before) {
    const Show& show = *show_;
    const auto& hz = surround_->hz;
    find_beams(before);
    const auto curve_of = [&](auto&& gain) {
        auto curve = std::make_shared<std::vector<double>>(hz.size());
        for (std::size_t at = 0; at < hz.size(); ++at) (*curve)[at] = std::pow(std::abs(gain(hz[at])), kPower);
        return Curve(curve);
    };
    const auto same_input = [&](std::size_t i) { return before && before->show_->inputs[i] == show.inputs[i]; };
    const auto same_speaker = [&](std::size_t l) {
        return before && before->show_->loudspeakers[l] == show.loudspeakers[l];
    };
    for (std::size_t i = 0; i < show.inputs.size(); ++i) {
        const InputResponse body(show.inputs[i]);
        const Filter chain = input_chain(show.inputs[i]);
        bodies_.push_back(same_input(i) ? before->bodies_[i] : curve_of([&](double f) { return body.at(f); }));
        chains_.push_back(same_input(i) ? before->chains_[i] : curve_of([&](double f) { return chain.at(f); }));
        for (std::size_t l = 0; l < show.loudspeakers.size(); ++l) {
            const std::size_t pair = paths_.size();
            if (is_line(show.inputs[i]))
                paths_.push_back(nullptr);
            else
                paths_.push_back(same_input(i) && same_speaker(l) ? before->paths_[pair] : path_curve(i, l));
        }
    }
    for (std::size_t l = 0; l < show.loudspeakers.size(); ++l) {
        const Filter response = loudspeaker_response(show.loudspeakers[l]);
        responses_.push_back(same_speaker(l) ? before->responses_[l]
                                             : curve_of([&](double f) { return response.at(f); }));
    }
    for (std::size_t m = 0; m < show.mixes.size(); ++m) {
        const Mix& mix = show.mixes[m];
        const Filter chain = mix_chain(mix);
        const bool same =
            before && m < before->show_->mixes.size() && before->show_->mixes[m].graphic_eq == mix.graphic_eq &&
            before->show_->mixes[m].notches == mix.notches && before->show_->mixes[m].high_pass == mix.high_pass;
        mixes_.push_back(same ? before->mixes_[m] : curve_of([&](double f) { return chain.at(f); }));
        sends_.emplace_back(show.inputs.size(), 0.0);
        for (const Send& send : mix.sends)
            if (const int c = index_by_id(show.inputs, send.input);
                c >= 0 && !is_line(show.inputs[static_cast<std::size_t>(c)]))
                sends_.back()[static_cast<std::size_t>(c)] =
                    std::pow(send_gain(send.level_db, show.inputs[static_cast<std::size_t>(c)].source_spl_db), kPower);
        fed_.emplace_back();
        for (const std::string& id : mix.loudspeakers)
            if (const int l = index_by_id(show.loudspeakers, id); l >= 0) fed_.back().push_back(l);
    }
    compute_gains();
}

/// |L| at one frequency as a product: what inputs hear of mixes, times what mixes are sent of inputs.
struct Guard::Slice {
    Eigen::MatrixXd heard, sent;
    /// Perron root of heard * sent by power iteration, with its vector (largest element 1). Half of the old vector is
    /// kept each step, so that loops that hand on to each other in turn settle too.
    static double perron(const Eigen::MatrixXd& first, const Eigen::MatrixXd& second, Eigen::VectorXd& vector) {
        double value = 0.0;
        for (int step = 0; step < kPowerSteps; ++step) {
            const Eigen::VectorXd next = first * (second * vector);
            value = next.maxCoeff();
            if (!(value > 0.0)) return 0.0;
            vector = 0.5 * (next / value + vector);
            vector /= vector.maxCoeff();
        }
        return value;
    }
};

Guard::Slice Guard::slice(std::size_t at) const {
    const auto inputs = static_cast<Eigen::Index>(show_->inputs.size()),
               mixes = static_cast<Eigen::Index>(sends_.size());
    Slice s{Eigen::MatrixXd::Zero(inputs, mixes), Eigen::MatrixXd::Zero(mixes, inputs)};
    for (Eigen::Index i = 0; i < inputs; ++i) {
        const auto input = static_cast<std::size_t>(i);
        for (Eigen::Index m = 0; m < mixes; ++m) {
            const auto mix = static_cast<std::size_t>(m);
            s.sent(m, i) = sends_[mix][input] * (*chains_[input])[at];
            if (is_line(show_->inputs[input])) continue;
            double from = 0.0;
            for (int fed : fed_[mix]) {
                const auto l = static_cast<std::size_t>(fed);
                from += (*paths_[input * show_->loudspeakers.size() + l])[at] * (*responses_[l])[at];
            }
            s.heard(i, m) = from * (*bodies_[input])[at] * (*mixes_[mix])[at];
        }
    }
    return s;
}

void Guard::compute_gains() {
    gains_db_.assign(hz().size(), kNothingDb);
    if (show_->inputs.empty() || sends_.empty()) return;
    for (std::size_t at = 0; at < gains_db_.size(); ++at) {
        const Slice s = slice(at);
        Eigen::VectorXd vector = Eigen::VectorXd::Ones(s.heard.rows());
        const double value = Slice::perron(s.heard, s.sent, vector);
        if (value > 0.0) gains_db_[at] = std::max(kNothingDb, ratio_to_db(value) / kPower);
    }
}

std::size_t Guard::strongest() const {
    return static_cast<std::size_t>(std::max_element(gains_db_.begin(), gains_db_.end()) - gains_db_.begin());
}

double Guard::margin_db() const { return -gains_db_[strongest()]; }

double Guard::soft_margin_db() const {
    double total = 0.0;
    for (double db : gains_db_) total += std::pow(10.0, kSharpness * db / 20.0);
    return total > 0.0 ? -20.0 / kSharpness * std::log10(total) : -kNothingDb;
}

double Guard::part(std::size_t at, std::size_t heard, std::size_t loudspeaker, std::size_t mix,
                   std::size_t source) const {
    return (*bodies_[heard])[at] * (*paths_[heard * show_->loudspeakers.size() + loudspeaker])[at] *
           (*responses_[loudspeaker])[at] * (*mixes_[mix])[at] * sends_[mix][source] * (*chains_[source])[at];
}

std::vector<LoopPart> Guard::parts(std::size_t at) const {
    std::vector<LoopPart> all;
    if (show_->inputs.empty() || sends_.empty()) return all;
    const Slice s = slice(at);
    Eigen::VectorXd right = Eigen::VectorXd::Ones(s.heard.rows()), left = right;
    Slice::perron(s.heard, s.sent, right);
    Slice::perron(s.sent.transpose(), s.heard.transpose(), left);
    double total = 0.0;
    for (std::size_t m = 0; m < sends_.size(); ++m)
        for (int l : fed_[m])
            for (std::size_t i = 0; i < show_->inputs.size(); ++i)
                for (std::size_t c = 0; c < show_->inputs.size(); ++c) {
                    if (is_line(show_->inputs[i]) || sends_[m][c] == 0.0) continue;
                    const double size = left[static_cast<Eigen::Index>(i)] * right[static_cast<Eigen::Index>(c)] *
                                        part(at, i, static_cast<std::size_t>(l), m, c);
                    all.push_back({static_cast<int>(i), l, static_cast<int>(m), static_cast<int>(c), size});
                    total += size;
                }
    if (!(total > 0.0)) return {};
    for (LoopPart& one : all) one.share /= total;
    std::sort(all.begin(), all.end(), [](const LoopPart& a, const LoopPart& b) { return a.share > b.share; });
    return all;
}

}  // namespace howlmap::cures
