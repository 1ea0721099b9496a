// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <optional>
#include <vector>

#include "core/loop/blocks/lanes.h"
#include "core/loop/frequency_grid.h"

namespace howlmap {

/// 16 equally spaced frequencies within one stretch between two nodes; neighbouring blocks share a point.
struct Block {
    double low_hz = 0.0, step_hz = 0.0;
    std::size_t node = 0;         ///< of its lower node
    double at = 0.0, rise = 0.0;  ///< place of point i between the nodes: at + i rise, 0..1

    double hz(std::size_t i) const { return low_hz + step_hz * static_cast<double>(i); }
};

/// Frequencies from 20 Hz to 20 kHz. What varies slowly (directivity, reflection, air) is computed at the nodes only
/// and is linear between them.
struct BlockGrid {
    std::vector<double> nodes;
    std::vector<Block> blocks;
};

/// Nodes: so close that the gains of the paths of this model are linear between them to a few hundredths of a decibel,
/// with every kink of a directivity or an absorption among them.
std::vector<double> gain_nodes(const LoopModel& model);

/// Blocks so close that no path, less the common delay, turns by more than 1/`steps` turn between points, and no
/// resonance by more than about as much. With `spacing` (Hz), points are at most spacing / 5 apart and every block
/// starts at a whole multiple of it.
BlockGrid block_grid(const LoopModel& model, const LoopTiming& timing, double steps, std::optional<double> spacing);

/// Blocks for a first look at a model with a room: 16 neighbouring knots each, where nothing but the room varies much
/// from one to the next. Each stands for blocks [first, last) of the grid that follows the loci.
struct Survey {
    struct Part {
        std::size_t first, last;
    };
    BlockGrid grid;
    std::vector<Part> parts;
};
Survey survey_of(const BlockGrid& grid, const LoopTiming& timing, double steps, double spacing);

/// The block that divides the interval between points i and i + 1 of another one.
Block between_points(const Block& block, std::size_t i);

}  // namespace howlmap
