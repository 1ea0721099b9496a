// SPDX-License-Identifier: GPL-3.0-or-later
// The vectorised kernels, each chosen at run time for the machine.
#pragma once
#include <array>
#include <memory>

#include "core/maps/kernel/scene.h"

namespace howlmap::maps {

/// Working space of one thread.
class Scratch {
  public:
    Scratch();
    ~Scratch();
    Scratch(Scratch&&) noexcept;
    struct Space;
    Space& space() { return *space_; }

  private:
    std::unique_ptr<Space> space_;
};

/// Peaks of a field at the cells of a tile.
void field_peaks(const Field& field, const Tile& tile, Scratch& scratch, Peaks& peaks);

/// Energies of a field at the cells of a tile.
void field_energies(const EnergyField& field, const Tile& tile, Scratch& scratch, std::array<float, kTile>& energies);

/// Name of the instruction set in use, e.g. "AVX3".
const char* kernel_target();

}  // namespace howlmap::maps
