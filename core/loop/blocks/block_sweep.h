// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include "core/loop/blocks/block_model.h"
#include "core/loop/sweep.h"

namespace howlmap {

/// The same as sweep(), on a grid of blocks with vector kernels: gains of the paths to a few hundredths of a decibel,
/// phases exact. Where the Perron root is too small to be the largest, an upper bound stands in its place, but for a
/// curve. Incomplete when cancelled.
Sweep block_sweep(const BlockModel& blocks, const std::vector<Pair>& pairs, const Job& job = {});

}  // namespace howlmap
