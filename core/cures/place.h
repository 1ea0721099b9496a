// SPDX-License-Identifier: GPL-3.0-or-later
// Where things may stand: inside the outline, out of each other and out of a player's way.
#pragma once
#include <cmath>

#include "core/show/show.h"

namespace howlmap::cures {

/// A place as it is said on a stage: nobody puts a wedge or a stand more finely than 5 cm.
inline double to_grid(double metres) { return std::round(metres * 20.0) / 20.0; }

/// What is nearer than this to where it was is not worth a way: a stage that is set up by hand misses by half as much.
inline constexpr double kLeastMoveM = 0.1;

/// A direction as it is said on a stage: turned by steps of 5 degrees, as finely as an eye judges them.
inline double to_turn(double from_deg, double by_deg) { return from_deg + 5.0 * std::round(by_deg / 5.0); }

/// Whether a loudspeaker may stand at a point: inside the outline, 0.5 m from other loudspeakers and backline, 0.7 m
/// from players (room for feet and bows), 0.25 m from microphone stands, on the same height as now (common practice, no
/// source).
bool loudspeaker_fits(const Show& show, const Loudspeaker& loudspeaker, Vec2 at);
/// Whether a player may stand at a point: inside the outline, on the riser she is on, 0.8 m from other players, 0.7 m
/// from loudspeakers and backline.
bool player_fits(const Show& show, const Performer& performer, Vec2 at);
/// Whether a microphone may hang at a point: inside the outline, 0.1 to 2.2 m above what its player stands on, 0.15 m
/// from other microphones and loudspeakers.
bool microphone_fits(const Show& show, const Input& input, Vec3 at);

}  // namespace howlmap::cures
