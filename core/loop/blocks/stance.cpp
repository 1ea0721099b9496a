// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/loop/blocks/stance.h"

#include "core/show/find.h"

namespace howlmap {
namespace {
/// Position in a list of the model's parts of the one with an index in the show, or -1.
template <class List>
int part_with(const List& parts, int index) {
    for (std::size_t i = 0; i < parts.size(); ++i)
        if (parts[i].index == index) return static_cast<int>(i);
    return -1;
}

Stance::Place place_of(Vec3 position, Aim aim, const Tolerance& tolerance, const DrawNumbers& numbers,
                       std::uint64_t first) {
    disturb(position, aim, tolerance, numbers, first);
    return {position, frame_of(aim)};
}
}  // namespace

StancePlan::StancePlan(const LoopModel& model) : model_(&model), layout_(model.show()) {
    const Show& show = model.show();
    input_numbers_.resize(model.inputs().size());
    std::uint64_t number = 1;
    for (std::size_t i = 0; i < show.inputs.size(); ++i) {
        if (is_line(show.inputs[i])) continue;
        const int part = part_with(model.inputs(), static_cast<int>(i));
        if (part >= 0) input_numbers_[static_cast<std::size_t>(part)] = number;
        number += 5;
    }
    number = layout_.sends;
    for (std::size_t m = 0; m < show.mixes.size(); ++m)
        for (const Send& send : show.mixes[m].sends) {
            const int bus = part_with(model.buses(), static_cast<int>(m)), index = index_by_id(show.inputs, send.input);
            const int input = part_with(model.inputs(), index);
            if (bus >= 0 && input >= 0 && model.sends()(bus, input) != 0.0)
                sends_.push_back(
                    {static_cast<std::size_t>(bus) * model.inputs().size() + static_cast<std::size_t>(input),
                     send.level_db, show.inputs[static_cast<std::size_t>(index)].source_spl_db, number});
            ++number;
        }
}

Stance StancePlan::as_drawn() const {
    Stance stance;
    for (const LoopModel::In& in : model_->inputs()) stance.inputs.push_back({in.receiver.position, in.receiver.frame});
    for (const LoopModel::Speaker& speaker : model_->speakers()) {
        stance.speakers.push_back({speaker.emitter.position, speaker.emitter.frame});
        stance.phases.push_back(0.0);
    }
    stance.sends.assign(model_->buses().size() * model_->inputs().size(), 0.0);
    for (const SendPlace& send : sends_) stance.sends[send.cell] = send_gain(send.level_db, send.source_spl_db);
    stance.air = model_->show().air;
    return stance;
}

void StancePlan::draw(const DrawNumbers& numbers, Stance& stance) const {
    const Show& show = model_->show();
    const Tolerance& tolerance = show.tolerance;
    for (std::size_t i = 0; i < input_numbers_.size(); ++i) {
        const Input& input = show.inputs[static_cast<std::size_t>(model_->inputs()[i].index)];
        stance.inputs[i] = place_of(input.position, {input.aim.yaw_deg, input.aim.pitch_deg, 0.0}, tolerance, numbers,
                                    input_numbers_[i]);
    }
    for (std::size_t l = 0; l < model_->speakers().size(); ++l) {
        const auto index = static_cast<std::uint64_t>(model_->speakers()[l].index);
        const Loudspeaker& unit = show.loudspeakers[index];
        stance.speakers[l] = place_of(unit.position, unit.aim, tolerance, numbers, layout_.loudspeakers + 5 * index);
        stance.phases[l] = tolerance.phase_deg / 360.0 * numbers.both_ways(layout_.phases + index);
    }
    for (const SendPlace& send : sends_)
        stance.sends[send.cell] =
            send_gain(send.level_db + tolerance.send_db * numbers.both_ways(send.number), send.source_spl_db);
    stance.air = show.air;
    stance.air.temperature_c += tolerance.temperature_c * numbers.both_ways(layout_.temperature);
}

}  // namespace howlmap
