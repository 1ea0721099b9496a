// SPDX-License-Identifier: GPL-3.0-or-later
// The loops of a show as impulse responses, from their exact frequency responses.
#pragma once
#include <vector>

#include "core/loop/loop_model.h"
#include "core/units/job.h"

namespace howlmap {

/// Impulse responses at a rate. inputs x buses: what a bus's amplified signal makes at an input after its channel's
/// filters, one way round the loop but for the send gains.
struct LoopKernels {
    double rate_hz = 48000.0;
    std::size_t block = 16;                             ///< samples; no response acts earlier
    std::vector<std::vector<std::vector<float>>> loop;  ///< [input][bus]
    std::vector<std::vector<float>> channel;            ///< [input]: P, the channel's own filters, delayed by `block`
    std::vector<std::vector<float>>
        heard;  ///< [bus]: from the bus to 1 m in front of its loudspeakers, their mean, delayed by `block`
};

/// Valid for 32 to 192 kHz. At the frequencies in `exact_hz` (at most 8 are used) responses and their slopes are met to
/// 1e-4 whatever is not causal in them: directivity, reflection and air are given as magnitudes without phase, and
/// where a path is too short to hold their symmetrical impulse responses their early part is cut and made up for there.
/// Empty when the job was cancelled.
LoopKernels loop_kernels(const LoopModel& model, double rate_hz, std::vector<double> exact_hz, const Job& job = {});

}  // namespace howlmap
