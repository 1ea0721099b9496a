// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>

#include "core/loop/crossings.h"
#include "core/loop/figures.h"
#include "core/loop/loop_model.h"

namespace howlmap {

/// Slopes of an eigenlocus at a crossing.
struct LocusSlope {
    double delay_s = 0.0;   ///< T = -d(arg lambda)/dw
    double growth_s = 0.0;  ///< M = d(ln |lambda|)/dw
};

/// One way round: heard by input c', sent by input c through mix m and loudspeaker l; by position in the model.
struct Way {
    int hears, speaker, source, bus;
    double share;  ///< of the ring; may be negative
};
/// All ways round of the ring at a crossing; their shares sum to 1.
std::vector<Way> ways_at(const LoopModel& model, const Crossing& crossing);

/// Rate in dB/s at which a ring builds up (positive) or dies, to first order in the distance from the margin:
/// 20 log10 |lambda| T / (T^2 + M^2).
double build_up_db_per_s(double lambda, const LocusSlope& slope);

/// Everything about the ring at a crossing. Absent where T <= 0: there more gain stills it.
std::optional<Ring> ring_at(const LoopModel& model, const Crossing& crossing);

}  // namespace howlmap
