// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propagation/transfer.h"

#include <cmath>

#include "core/propagation/reflection.h"
#include "core/show/show.h"
#include "core/units/level.h"

namespace howlmap {

Surroundings::Surroundings(const Air& air_state, const Surfaces& stage_surfaces)
    : speed(speed_of_sound(air_state.temperature_c)), air(air_state), surfaces(&stage_surfaces) {}

std::array<double, kVias> Surroundings::reflections(double hz) const {
    std::array<double, kVias> factors;
    factors.fill(1.0);
    const auto set = [&](Via via, const Surface& surface) {
        factors[static_cast<std::size_t>(via)] = reflection_factor(surface.absorption, hz);
    };
    set(Via::floor, surfaces->floor);
    if (surfaces->back) set(Via::back, *surfaces->back);
    if (surfaces->front) set(Via::front, *surfaces->front);
    if (surfaces->left) set(Via::left, *surfaces->left);
    if (surfaces->right) set(Via::right, *surfaces->right);
    if (surfaces->ceiling) set(Via::ceiling, *surfaces->ceiling);
    return factors;
}

SurroundingsSlice::SurroundingsSlice(const Surroundings& surroundings, double f)
    : hz(f),
      wave_number(2.0 * kPi * f / surroundings.speed),
      air_np_per_m(surroundings.air.db_per_m(f) * kNepersPerDb),
      reflections(surroundings.reflections(f)) {}

Emitter emitter_of(const Loudspeaker& loudspeaker) {
    return {loudspeaker.position, frame_of(loudspeaker.aim), &loudspeaker.directivity};
}

Receiver receiver_of(const Input& input) {
    return {input.position, frame_of({input.aim.yaw_deg, input.aim.pitch_deg, 0.0}), ReceiverPattern(input)};
}

Planes planes_between(const Stage& stage, Vec3 source, Vec3 receiver) {
    return planes_of(stage.surfaces, common_riser_height(stage, source.xy(), receiver.xy()));
}

std::vector<Leg> legs_between(const Emitter& emitter, const Receiver& receiver, const Planes& planes) {
    std::vector<Leg> legs;
    for (const Path& path : paths_between(emitter.position, receiver.position, planes))
        legs.push_back({path.via, path.held_m, local_angles(emitter.frame, path.leaving),
                        local_angles(receiver.frame, path.arriving).off_axis});
    return legs;
}

Complex transfer(const std::vector<Leg>& legs, const LoudspeakerSlice& slice, const ReceiverPattern& pattern,
                 const SurroundingsSlice& surroundings) {
    Complex sum = 0.0;
    for (const Leg& leg : legs) {
        const double gain = surroundings.reflections[static_cast<std::size_t>(leg.via)] * slice.gain(leg.out) *
                            pattern.gain(leg.in_angle, surroundings.hz) / leg.held_m;
        const double left = std::exp(-surroundings.air_np_per_m * leg.held_m);
        sum += gain * left * std::polar(1.0, -surroundings.wave_number * leg.held_m);
    }
    return sum;
}

}  // namespace howlmap
