// SPDX-License-Identifier: GPL-3.0-or-later
// H(f): sound pressure at a receiver per pascal at 1 m on the axis of a loudspeaker, over all paths.
#pragma once
#include <array>
#include <vector>

#include "core/air/air.h"
#include "core/directivity/loudspeaker_directivity.h"
#include "core/directivity/receiver_pattern.h"
#include "core/propagation/paths.h"
#include "core/units/complex.h"

namespace howlmap {

/// What lies around loudspeakers and receivers. Refers to the show's surfaces.
struct Surroundings {
    Surroundings(const Air& air, const Surfaces& stage_surfaces);
    double speed;  ///< of sound, m/s
    AirAbsorption air;
    const Surfaces* surfaces;

    /// Reflection factors of all vias at a frequency; 1 for the direct path and for surfaces that are not there.
    std::array<double, kVias> reflections(double hz) const;
};

/// What they do at one frequency, for many paths.
struct SurroundingsSlice {
    /// hz above 0.
    SurroundingsSlice(const Surroundings& surroundings, double hz);
    double hz, wave_number;  ///< Hz, 1/m
    double air_np_per_m;     ///< absorption, Np/m
    std::array<double, kVias> reflections;
};

struct Emitter {
    Vec3 position;
    Frame frame;
    const Directivity* directivity;
};
Emitter emitter_of(const Loudspeaker& loudspeaker);

struct Receiver {
    Vec3 position;
    Frame frame;
    ReceiverPattern pattern;
};
/// Microphone or pickup. Refers to the input.
Receiver receiver_of(const Input& input);

/// One path with its angles, ready for any frequency.
struct Leg {
    Via via = Via::direct;
    double held_m = 1.0;    ///< travelled, m
    LocalAngles out;        ///< as the loudspeaker sends it
    double in_angle = 0.0;  ///< off the receiver's axis as it arrives, rad
};

/// Planes seen by a loudspeaker and a receiver: the floor is the riser that both stand on, if any.
Planes planes_between(const Stage& stage, Vec3 source, Vec3 receiver);
/// All legs from a loudspeaker to a receiver, direct first.
std::vector<Leg> legs_between(const Emitter& emitter, const Receiver& receiver, const Planes& planes);

/// H at one frequency: sum over the legs of R Dout Din / r, less what the air takes, times exp(-jkr).
/// Given: slices of the loudspeaker's directivity and of the surroundings at this frequency.
Complex transfer(const std::vector<Leg>& legs, const LoudspeakerSlice& slice, const ReceiverPattern& pattern,
                 const SurroundingsSlice& surroundings);

}  // namespace howlmap
