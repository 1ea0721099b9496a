// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <cstddef>

#include "core/units/complex.h"

namespace howlmap {

/// Size of the sum of terms[n] P_n(cosine) for many cosines, side by side.
/// Given: count of terms 1 or more; cosines -1..1, a multiple of 8 of them.
void legendre_sizes(const Complex* terms, std::size_t count, const double* cosines, std::size_t cosine_count,
                    double* sizes);

}  // namespace howlmap
