// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/loop_model.h"

#include <algorithm>

#include "core/show/find.h"

namespace howlmap {
namespace {
/// Position of the element with this index of the show, added by `make` if it is not there yet.
template <class List, class Make>
int position_of(List& list, int index, Make make) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& item) { return item.index == index; });
    if (found != list.end()) return static_cast<int>(found - list.begin());
    list.push_back(make());
    return static_cast<int>(list.size()) - 1;
}

bool makes_loop(const Show& show, const Mix& mix, const Send& send) {
    const Input* input = find_by_id(show.inputs, send.input);
    return input && !is_line(*input) && !mix.loudspeakers.empty();
}
}  // namespace

LoopModel::LoopModel(const Show& show, const LoopExtras& extras)
    : show_(&show),
      extras_(extras),
      surroundings_(show.air, show.stage.surfaces),
      latency_s_(show.system.latency_ms / 1000.0) {
    add_buses();
    add_legs();
}

void LoopModel::add_buses() {
    struct Entry {
        int bus, input;
        double gain;
    };
    std::vector<Entry> entries;
    for (const Mix& mix : show_->mixes) {
        const auto active = [&](const Send& send) { return makes_loop(*show_, mix, send); };
        if (std::none_of(mix.sends.begin(), mix.sends.end(), active)) continue;
        Bus bus{static_cast<int>(&mix - show_->mixes.data()), mix_chain(mix), {}};
        for (const std::string& id : mix.loudspeakers) {
            const int index = index_by_id(show_->loudspeakers, id);
            if (index < 0) continue;
            const Loudspeaker& unit = show_->loudspeakers[static_cast<std::size_t>(index)];
            const double phase = extras_.phases.empty() ? 0.0 : extras_.phases[static_cast<std::size_t>(index)];
            bus.speakers.push_back(position_of(speakers_, index, [&] {
                return Speaker{index, emitter_of(unit), loudspeaker_response(unit), phase};
            }));
        }
        for (const Send& send : mix.sends) {
            if (!active(send)) continue;
            const int index = index_by_id(show_->inputs, send.input);
            const Input& input = show_->inputs[static_cast<std::size_t>(index)];
            const int position = position_of(inputs_, index, [&] {
                return In{index, receiver_of(input), InputResponse(input), input_chain(input)};
            });
            entries.push_back(
                {static_cast<int>(buses_.size()), position, send_gain(send.level_db, input.source_spl_db)});
        }
        buses_.push_back(std::move(bus));
    }
    sends_ = RealMatrix::Zero(static_cast<Eigen::Index>(buses_.size()), static_cast<Eigen::Index>(inputs_.size()));
    for (const Entry& entry : entries) sends_(entry.bus, entry.input) = entry.gain;
}

void LoopModel::add_legs() {
    for (const In& in : inputs_)
        for (const Speaker& speaker : speakers_) {
            const Vec3 source = speaker.emitter.position, receiver = in.receiver.position;
            const Planes planes = extras_.floor_z
                                      ? planes_of(show_->stage.surfaces, extras_.floor_z(in.index, speaker.index))
                                      : planes_between(show_->stage, source, receiver);
            legs_.push_back(legs_between(speaker.emitter, in.receiver, planes));
        }
}

const std::vector<Leg>& LoopModel::legs(int input, int speaker) const {
    return legs_[static_cast<std::size_t>(input) * speakers_.size() + static_cast<std::size_t>(speaker)];
}

Complex LoopModel::room_term(int input, int speaker, double hz) const {
    const Speaker& unit = speakers_[static_cast<std::size_t>(speaker)];
    return extras_.room ? extras_.room(inputs_[static_cast<std::size_t>(input)].index, unit.index, hz) : Complex(0.0);
}

Complex LoopModel::transfer(int input, int speaker, double hz) const {
    const Speaker& unit = speakers_[static_cast<std::size_t>(speaker)];
    const LoudspeakerSlice slice(*unit.emitter.directivity, hz, surroundings_.speed);
    const ReceiverPattern& pattern = inputs_[static_cast<std::size_t>(input)].receiver.pattern;
    const Complex air = howlmap::transfer(legs(input, speaker), slice, pattern, SurroundingsSlice(surroundings_, hz));
    return (air + room_term(input, speaker, hz)) * std::polar(1.0, unit.phase);
}

LoopFactors LoopModel::factors(double hz) const {
    const auto n = static_cast<Eigen::Index>(inputs_.size()), speakers = static_cast<Eigen::Index>(speakers_.size());
    const auto buses = static_cast<Eigen::Index>(buses_.size());
    LoopFactors f{hz,
                  ComplexMatrix(n, speakers),
                  ComplexVector(n),
                  ComplexVector(n),
                  ComplexVector(speakers),
                  ComplexVector(buses)};
    const SurroundingsSlice around(surroundings_, hz);
    for (Eigen::Index l = 0; l < speakers; ++l) {
        const Speaker& unit = speakers_[static_cast<std::size_t>(l)];
        const LoudspeakerSlice slice(*unit.emitter.directivity, hz, surroundings_.speed);
        const Complex turn = std::polar(1.0, unit.phase);
        f.r(l) = unit.response.at(hz);
        for (Eigen::Index c = 0; c < n; ++c) {
            const int input = static_cast<int>(c), speaker = static_cast<int>(l);
            const ReceiverPattern& pattern = inputs_[static_cast<std::size_t>(c)].receiver.pattern;
            f.h(c, l) =
                (howlmap::transfer(legs(input, speaker), slice, pattern, around) + room_term(input, speaker, hz)) *
                turn;
        }
    }
    for (Eigen::Index c = 0; c < n; ++c) {
        f.b(c) = inputs_[static_cast<std::size_t>(c)].response.at(hz);
        f.p(c) = inputs_[static_cast<std::size_t>(c)].chain.at(hz);
    }
    const Complex late = std::polar(1.0, -2.0 * kPi * hz * latency_s_);
    for (Eigen::Index m = 0; m < buses; ++m) f.e(m) = buses_[static_cast<std::size_t>(m)].chain.at(hz) * late;
    return f;
}

ComplexMatrix LoopModel::heard_from_buses(const LoopFactors& f) const {
    ComplexMatrix heard = ComplexMatrix::Zero(f.h.rows(), f.e.size());
    for (Eigen::Index m = 0; m < heard.cols(); ++m) {
        for (const int l : buses_[static_cast<std::size_t>(m)].speakers) heard.col(m) += f.h.col(l) * f.r(l);
        heard.col(m) = heard.col(m).cwiseProduct(f.b) * f.e(m);
    }
    return heard;
}

ComplexMatrix LoopModel::loop_matrix(const LoopFactors& f) const {
    return heard_from_buses(f) * sends_ * f.p.asDiagonal();
}

ComplexMatrix LoopModel::small_matrix(const LoopFactors& f) const {
    if (f.e.size() >= f.p.size()) return loop_matrix(f);
    return sends_ * f.p.asDiagonal() * heard_from_buses(f);
}

}  // namespace howlmap
