// SPDX-License-Identifier: GPL-3.0-or-later
// Cells of a map, in the order in which the kernels take them.
#pragma once
#include <cstdint>
#include <vector>

#include "core/maps/kernel/scene.h"
#include "core/maps/maps.h"
#include "core/show/show.h"

namespace howlmap::maps {

/// Marks the cells of a grid that lie within or on an outline (to 1 nm). Shape: rows x columns, by y then x.
std::vector<std::uint8_t> cells_within(const MapGrid& grid, const Outline& outline);

/// An empty grid over the mapped area of a request: shape, `inside`, unit; values NaN. A grid that would hold more than
/// kMostMapCells is an error that names the finest step possible.
tl::expected<MapGrid, MapError> empty_grid(const Show& show, const MapRequest& request);

/// Cells inside, in tiles of 4 x 4 so that neighbours share table rows; a tile may take cells of the next block.
struct CellList {
    std::vector<Tile> tiles;
    std::vector<std::uint32_t> index;  ///< in the grid, in the order of the tiles
    std::vector<double> x, y;          ///< m, same order
};
/// Tiles of a grid. Heights are to be set.
CellList cells_of(const MapGrid& grid);
/// Puts every cell at one height in m.
void set_height(CellList& cells, double z);
/// Puts every cell at a height above the highest riser under it.
void set_height_above_risers(CellList& cells, const Stage& stage, const MapGrid& grid, double height);

/// Height of the floor that each cell shares with a point: of the highest riser that covers both, in the order of the
/// tiles. Empty where that is 0 everywhere.
std::vector<double> common_floor(const CellList& cells, const Stage& stage, const MapGrid& grid, Vec2 point);

}  // namespace howlmap::maps
