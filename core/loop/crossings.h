// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <vector>

#include "core/loop/loci.h"
#include "core/units/job.h"

namespace howlmap {

/// Loops weaker than this at every frequency count as none: -60 dB.
inline constexpr double kLeastLoop = 1e-3;
/// Rings are listed down to 12 dB below the first.
inline constexpr double kRingRange = 3.98107170553497;
/// More crossings than this, by their estimated strength, are not looked at closely.
inline constexpr std::size_t kMostCrossings = 200;

/// What is known of the loci on a grid.
struct SampledLoci {
    const std::vector<double>& hz;         ///< rising, so close that the loci turn little between them
    const std::vector<double>& bounds;     ///< upper bound of the largest modulus at each
    const std::vector<LociPoint>& points;  ///< eigenvalues to about 0.1 dB; empty: computed exactly where needed
};

/// Crossings of the positive real axis above -60 dB, strongest first, down to strongest / `range`, or to less if more
/// than `enough` are found on the way. Refined with the exact loci. Empty without any, or when cancelled.
std::vector<Crossing> find_crossings(const Loci& loci, const SampledLoci& sampled, double range, std::size_t enough,
                                     const Job& job = {});

}  // namespace howlmap
