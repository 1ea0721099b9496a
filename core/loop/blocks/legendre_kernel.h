// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>
#include <vector>

#include "core/units/complex.h"

namespace howlmap {

/// Sizes of the sum of terms[n] P_n(cosine), many cosines side by side, to about 1e-6 of the largest a term.
/// Given: cosines -1..1. `sizes` holds as many values.
void legendre_sizes(const std::vector<Complex>& terms, const std::vector<float>& cosines, float* sizes);

}  // namespace howlmap
