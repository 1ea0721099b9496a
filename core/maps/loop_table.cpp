// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/maps/loop_table.h"

#include <tbb/parallel_for_each.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>

namespace howlmap::maps {
namespace {
/// What the paths between two depend on.
bool same_paths(const Loudspeaker& a, const Loudspeaker& b) {
    return a.position == b.position && a.aim == b.aim && a.directivity == b.directivity;
}
bool same_paths(const Input& a, const Input& b) {
    const Microphone *x = microphone_of(a), *y = microphone_of(b);
    const bool same_pattern = (!x && !y) || (x && y && x->pattern == y->pattern && x->cupped == y->cupped);
    return a.position == b.position && a.aim == b.aim && same_pattern;
}
/// What their filters depend on.
bool same_chain(const Loudspeaker& a, const Loudspeaker& b) {
    return a.response == b.response && a.trim_db == b.trim_db && a.polarity == b.polarity && a.delay_ms == b.delay_ms;
}
bool same_chain(const Input& a, const Input& b) {
    return a.transducer == b.transducer && a.polarity == b.polarity && a.high_pass == b.high_pass &&
           a.equaliser == b.equaliser;
}
bool same_chain(const Mix& a, const Mix& b) {
    return a.graphic_eq == b.graphic_eq && a.notches == b.notches && a.high_pass == b.high_pass &&
           a.polarity == b.polarity && a.delay_ms == b.delay_ms;
}

template <class Response>
void fill(Curve& curve, const std::vector<double>& hz, const Response& response) {
    curve.resize(hz.size());
    for (std::size_t k = 0; k < hz.size(); ++k) {
        const Complex value = response(hz[k]);
        curve.re[k] = value.real();
        curve.im[k] = value.imag();
    }
}

/// The bins out of the fine frequencies.
Curve swept_of(const Curve& fine) {
    Curve swept;
    for (const int k : fine_grid().of_bin) {
        swept.re.push_back(fine.re[static_cast<std::size_t>(k)]);
        swept.im.push_back(fine.im[static_cast<std::size_t>(k)]);
    }
    return swept;
}

Complex late(double hz, double seconds) { return std::polar(1.0, -2.0 * kPi * std::fmod(hz * seconds, 1.0)); }

/// Removes what no longer takes part.
template <class Map, class Keys>
void keep_only(Map& map, const Keys& keys) {
    std::erase_if(map, [&](const auto& entry) { return !keys.contains(entry.first); });
}
}  // namespace

void LoopTable::update(const Show& show, TableStore& store, const Job& job) {
    show_ = std::make_unique<Show>(show);
    model_ = std::make_unique<LoopModel>(*show_);
    wiring_ = wiring_of(*model_);
    note_surroundings();
    update_chains();
    update_pairs(store, job);
    if (!job.cancelled()) connect();
}

void LoopTable::note_surroundings() {
    Stage stage = show_->stage;
    stage.room.reset();
    if (surroundings_ > 0 && air_ == show_->air && stage_.surfaces == stage.surfaces && stage_.risers == stage.risers)
        return;
    ++surroundings_;
    air_ = show_->air;
    stage_ = std::move(stage);
    bin_tables_ = bin_tables(model_->surroundings());
}

void LoopTable::update_chains() {
    const std::vector<double>& hz = fine_grid().hz;
    std::vector<std::function<void()>> work;
    const bool latency_changed = latency_s_ != model_->latency_s();
    latency_s_ = model_->latency_s();
    for (const LoopModel::In& in : model_->inputs()) {
        const Input& item = show_->inputs[static_cast<std::size_t>(in.index)];
        Kept<Input>& kept = inputs_[item.id];
        if (!kept.curve.re.empty() && same_chain(kept.item, item)) continue;
        kept.item = item;
        work.push_back([&kept, &in, &hz] {
            fill(kept.curve, hz, [&](double f) { return in.chain.at(f); });
            fill(kept.second, hz, [&](double f) { return in.response.at(f); });
            kept.swept = swept_of(kept.curve);
            kept.second_swept = swept_of(kept.second);
        });
    }
    for (const LoopModel::Speaker& speaker : model_->speakers()) {
        const Loudspeaker& item = show_->loudspeakers[static_cast<std::size_t>(speaker.index)];
        Kept<Loudspeaker>& kept = loudspeakers_[item.id];
        if (!kept.curve.re.empty() && same_chain(kept.item, item)) continue;
        kept.item = item;
        work.push_back([&kept, &speaker, &hz] {
            fill(kept.curve, hz, [&](double f) { return speaker.response.at(f); });
            kept.swept = swept_of(kept.curve);
        });
    }
    for (const LoopModel::Bus& bus : model_->buses()) {
        const Mix& item = show_->mixes[static_cast<std::size_t>(bus.index)];
        Kept<Mix>& kept = mixes_[item.id];
        if (!kept.curve.re.empty() && !latency_changed && same_chain(kept.item, item)) continue;
        kept.item = item;
        work.push_back([&kept, &bus, &hz, delay = latency_s_] {
            fill(kept.curve, hz, [&](double f) { return bus.chain.at(f) * late(f, delay); });
            kept.swept = swept_of(kept.curve);
        });
    }
    tbb::parallel_for_each(work, [](const auto& one) { one(); });
}

void LoopTable::update_pairs(TableStore& store, const Job& job) {
    std::vector<std::function<void()>> work;
    std::set<std::pair<std::string, std::string>> used;
    for (std::size_t c = 0; c < model_->inputs().size(); ++c)
        for (std::size_t l = 0; l < model_->speakers().size(); ++l) {
            const LoopModel::In& in = model_->inputs()[c];
            const LoopModel::Speaker& speaker = model_->speakers()[l];
            const Input& input = show_->inputs[static_cast<std::size_t>(in.index)];
            const Loudspeaker& loudspeaker = show_->loudspeakers[static_cast<std::size_t>(speaker.index)];
            const std::pair key(input.id, loudspeaker.id);
            used.insert(key);
            Pair& pair = pairs_[key];
            if (pair.surroundings == surroundings_ && same_paths(pair.loudspeaker, loudspeaker) &&
                same_paths(pair.input, input))
                continue;
            pair.surroundings = 0;  // until it is done
            pair.loudspeaker = loudspeaker;
            pair.input = input;
            const auto axis = store.axis(loudspeaker.directivity, speed());
            const auto rows = axis ? store.directivity(loudspeaker.directivity, kSwept, speed()) : nullptr;
            work.push_back([this, &pair, &in, &speaker, &job, axis, rows,
                            &legs = model_->legs(static_cast<int>(c), static_cast<int>(l))] {
                if (job.cancelled()) return;
                make_pair(in, speaker, legs, axis.get(), rows.get(), pair);
                pair.swept = swept_of(pair.h);
                pair.surroundings = surroundings_;
            });
        }
    keep_only(pairs_, used);
    tbb::parallel_for_each(work, [](const auto& one) { one(); });
}

void LoopTable::make_pair(const LoopModel::In& in, const LoopModel::Speaker& speaker, const std::vector<Leg>& legs,
                          const TableStore::Axis* axis, const DirectivityRows* rows, Pair& pair) const {
    const std::vector<Octet>& octets = fine_grid().octets;
    pair.h = {};
    pair.h.resize(octets.size() * kOctet);
    pair.delays.clear();
    pair.gains.clear();
    const PairGains pair_gains(bin_tables_, in, speaker);
    for (const Leg& leg : legs) {
        const double delay = leg.held_m / speed();
        Doubles gains = pair_gains.at_bins(leg);
        if (axis) {
            const Doubles fine = cap_gains(gains, *rows, *axis, leg);
            add_leg({delay, nullptr, fine.data()}, octets.data(), octets.size(), pair.h);
            continue;
        }
        add_leg({delay, gains.data(), nullptr}, octets.data(), octets.size(), pair.h);
        pair.delays.push_back(delay);
        pair.gains.push_back(std::move(gains));
    }
}

void LoopTable::connect() {
    fine_ = swept_ = {};
    connect_swept();
    for (const LoopModel::In& in : model_->inputs()) {
        const std::string& id = show_->inputs[static_cast<std::size_t>(in.index)].id;
        for (const LoopModel::Speaker& speaker : model_->speakers())
            fine_.h.push_back(&pairs_.at({id, show_->loudspeakers[static_cast<std::size_t>(speaker.index)].id}).h);
        fine_.p.push_back(&inputs_.at(id).curve);
        fine_.b.push_back(&inputs_.at(id).second);
    }
    for (const LoopModel::Speaker& speaker : model_->speakers())
        fine_.r.push_back(&loudspeakers_.at(show_->loudspeakers[static_cast<std::size_t>(speaker.index)].id).curve);
    for (const LoopModel::Bus& bus : model_->buses())
        fine_.e.push_back(&mixes_.at(show_->mixes[static_cast<std::size_t>(bus.index)].id).curve);
}

void LoopTable::connect_swept() {
    for (const LoopModel::In& in : model_->inputs()) {
        const std::string& id = show_->inputs[static_cast<std::size_t>(in.index)].id;
        for (const LoopModel::Speaker& speaker : model_->speakers())
            swept_.h.push_back(&pairs_.at({id, show_->loudspeakers[static_cast<std::size_t>(speaker.index)].id}).swept);
        swept_.p.push_back(&inputs_.at(id).swept);
        swept_.b.push_back(&inputs_.at(id).second_swept);
    }
    for (const LoopModel::Speaker& speaker : model_->speakers())
        swept_.r.push_back(&loudspeakers_.at(show_->loudspeakers[static_cast<std::size_t>(speaker.index)].id).swept);
    for (const LoopModel::Bus& bus : model_->buses())
        swept_.e.push_back(&mixes_.at(show_->mixes[static_cast<std::size_t>(bus.index)].id).swept);
}

LoopFactors LoopTable::factors(const LoopCurves& curves, double hz, std::size_t k) const {
    const auto at = [k](const Curve* curve) { return Complex(curve->re[k], curve->im[k]); };
    const auto all = [&](const std::vector<const Curve*>& curves) {
        ComplexVector values(static_cast<Eigen::Index>(curves.size()));
        for (std::size_t i = 0; i < curves.size(); ++i) values(static_cast<Eigen::Index>(i)) = at(curves[i]);
        return values;
    };
    const auto n = static_cast<Eigen::Index>(wiring_.inputs), speakers = static_cast<Eigen::Index>(wiring_.speakers);
    LoopFactors factors{hz, ComplexMatrix(n, speakers), all(curves.b), all(curves.p), all(curves.r), all(curves.e)};
    for (Eigen::Index c = 0; c < n; ++c)
        for (Eigen::Index l = 0; l < speakers; ++l)
            factors.h(c, l) = at(curves.h[static_cast<std::size_t>(c * speakers + l)]);
    return factors;
}

void LoopTable::near(const Octet& octet, Near& near) const {
    std::vector<double> hz(kOctet);
    for (std::size_t i = 0; i < kOctet; ++i) hz[i] = octet.hz(i);
    const std::size_t n = wiring_.inputs, pairs = n * wiring_.speakers;
    near.curves.assign(pairs + 2 * n + wiring_.speakers + wiring_.buses, Curve{});
    for (Curve& curve : near.curves) curve.resize(kOctet);
    near.loops = {};
    std::size_t next = 0;
    const auto take = [&](std::vector<const Curve*>& list) -> Curve& {
        list.push_back(&near.curves[next]);
        return near.curves[next++];
    };
    for (std::size_t c = 0; c < n; ++c)
        for (std::size_t l = 0; l < wiring_.speakers; ++l) {
            Curve& h = take(near.loops.h);
            const std::string& input = show_->inputs[static_cast<std::size_t>(model_->inputs()[c].index)].id;
            const Pair& pair =
                pairs_.at({input, show_->loudspeakers[static_cast<std::size_t>(model_->speakers()[l].index)].id});
            if (std::holds_alternative<CapOnSphere>(pair.loudspeaker.directivity)) {
                fill(h, hz, [&](double f) { return model_->transfer(static_cast<int>(c), static_cast<int>(l), f); });
                continue;
            }
            for (std::size_t i = 0; i < pair.delays.size(); ++i)
                add_leg({pair.delays[i], pair.gains[i].data(), nullptr}, &octet, 1, h);
        }
    for (const LoopModel::In& in : model_->inputs()) {
        fill(take(near.loops.p), hz, [&](double f) { return in.chain.at(f); });
        fill(take(near.loops.b), hz, [&](double f) { return in.response.at(f); });
    }
    for (const LoopModel::Speaker& speaker : model_->speakers())
        fill(take(near.loops.r), hz, [&](double f) { return speaker.response.at(f); });
    for (const LoopModel::Bus& bus : model_->buses())
        fill(take(near.loops.e), hz, [&](double f) { return bus.chain.at(f) * late(f, latency_s_); });
}

}  // namespace howlmap::maps
