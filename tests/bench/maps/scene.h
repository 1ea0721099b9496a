// SPDX-License-Identifier: GPL-3.0-or-later
// The stage that the figures are for: 12 x 8 m in cells of 5 cm (38,400), eight loudspeakers with six images each, 480
// frequencies, directivity, reflections and air.
#pragma once
#include <memory>

#include "core/maps/ends.h"
#include "core/maps/mapper.h"
#include "tests/bench/maps/plain_loop.h"

namespace howlmap::bench {

struct Scene {
    Scene();
    Show show;
    MapGrid grid, coarse_grid;
    maps::CellList cells, coarse_cells;
    maps::TableStore store;
    maps::Drives drives;
    double speed;
    std::vector<const Directivity*> directivities;
    std::unique_ptr<maps::Ends> ends, coarse_ends;
    std::shared_ptr<const maps::AirRows> air;
    std::unique_ptr<maps::DrivenField> driven, coarse;

    /// The same field for the plain loops.
    template <class Real>
    PlainField<Real> plain(std::size_t some_cells) const;
};

/// Made once.
Scene& scene();

/// Vector multiply-adds (or what takes the place of one) that the kernel needs for a full map, times two: flop.
double kernel_flops(const Scene& scene);

}  // namespace howlmap::bench
