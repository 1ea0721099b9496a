// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <Eigen/Core>
#include <optional>

#include "core/audio/loop_kernels.h"
#include "core/units/job.h"

namespace howlmap {

/// What the closed loops do when left alone after a click.
struct LoopProbe {
    double dominant_hz = 0.0;
    double growth_db_per_s = 0.0;  ///< negative: it dies away
};

/// Clicks once into every input and watches for four seconds, no amplifier bending. Absent where nothing comes back, or
/// when cancelled. Accuracy: frequency 0.02 Hz, growth 1 % where one ring stands 3 dB/s clear of the next.
std::optional<LoopProbe> probe_loops(const LoopKernels& kernels, const Eigen::MatrixXd& sends, const Job& job = {});

}  // namespace howlmap
