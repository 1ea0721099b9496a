// SPDX-License-Identifier: GPL-3.0-or-later
// Is a line in the spectrogram a howl or music? Spectral and temporal features together.
#pragma once
#include <optional>

#include "core/audio/howl.h"
#include "core/audio/tracks.h"

namespace howlmap {

/// A straight rise in dB: points first..last of a track, fitted by a line.
struct StraightRise {
    std::size_t first = 0, last = 0;
    double slope_db_per_frame = 0.0;
    double rise_db = 0.0;
    double residual_db = 0.0;  ///< rms
};

/// The longest straight rise that leads up to the track's loudest point, at least 8 dB over at least four points.
std::optional<StraightRise> straight_rise(const Track& track);

/// What speaks for and against a howl.
struct HowlEvidence {
    std::optional<StraightRise> rise;
    double rise_wander =
        0.0;  ///< rms deviation of the frequency beyond what noise explains, as a fraction of it, during the rise
    double steady_wander = 0.0;    ///< the same while it holds its level
    unsigned partners_rising = 0;  ///< bits of kPartialRatios: musical partials that rise along with it
    unsigned partners_beside = 0;  ///< the same: partials that stand beside it while it holds its level
    double over_rest_db = 0.0;     ///< at its loudest
    double steady_frames = 0.0;    ///< how long it keeps its level within 1.5 dB while it is loud
};

HowlEvidence weigh(const Track& track, double frame_s);
bool is_howl(const Track& track, const HowlEvidence& evidence, double frame_s);

/// The finding for a track that is a howl. frame_s: seconds between frames; centre_s: time of the middle of frame 0.
Howl describe_howl(const Track& track, const HowlEvidence& evidence, double frame_s, double centre_s);

}  // namespace howlmap
