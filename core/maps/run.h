// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a kernel over all tiles on all cores.
#pragma once
#include "core/maps/grid.h"
#include "core/maps/kernel/scene.h"
#include "core/units/job.h"

namespace howlmap::maps {

/// Value -10 log10 of the squared peak (times the cell's factor, where there are factors) and the frequency that gives
/// it, for every cell of the list. Given: speed of sound in m/s; factors by cell in the order of the tiles, or empty.
/// Returns whether it came to its end; when cancelled, the grid holds what there was time for.
bool run_field(const Field& field, const CellList& cells, double speed, const std::vector<float>& factors,
               MapGrid& grid, const Job& job);

/// Energies by cell, in the order of the tiles; incomplete when cancelled.
std::vector<float> run_energies(const EnergyField& field, const CellList& cells, const Job& job);

}  // namespace howlmap::maps
