// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace howlmap::bench {

/// Multiply-adds of single precision that one core does in a second, times two: flop/s. The instruction set is the one
/// that the kernels use at the moment. Best of several short runs.
double multiply_add_peak();

}  // namespace howlmap::bench
