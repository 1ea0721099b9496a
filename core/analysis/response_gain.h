// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/loop/eigenvalues.h"
#include "core/loop/loop_model.h"

namespace howlmap {

inline constexpr double kResponseFloorDb = -200.0;

/// Gain in dB, held at the floor. gain 0 or more.
double floored_db(double gain);
/// Largest modulus among the eigenvalues of a square matrix; 0 for an empty one.
double largest_modulus(const ComplexMatrix& matrix);

}  // namespace howlmap
