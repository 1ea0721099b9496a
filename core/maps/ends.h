// SPDX-License-Identifier: GPL-3.0-or-later
// Fixed ends of a field from the show: positions, images, floors and tables.
#pragma once
#include <deque>
#include <memory>
#include <vector>

#include "core/maps/grid.h"
#include "core/maps/table_store.h"

namespace howlmap::maps {

/// Fixed ends with all that they refer to. Weights are to be set.
class Ends {
  public:
    Ends(const Show& show, const MapGrid& grid, const CellList& cells, const Sweep& sweep, TableStore& store);

    /// A loudspeaker that sounds at the cells; what hears there is first order, or has rows.
    FixedEnd& add_loudspeaker(const Loudspeaker& loudspeaker, double first_order, TableStore::Rows pattern);
    /// An input that hears a loudspeaker standing at the cells.
    FixedEnd& add_input(const Input& input, const Directivity& loudspeaker);
    /// An ear that hears a loudspeaker standing at the cells.
    FixedEnd& add_ear(Vec3 ear, const Directivity& loudspeaker);

    const std::vector<FixedEnd>& all() const { return ends_; }
    std::vector<FixedEnd>& all() { return ends_; }
    /// Air as far as the ends added so far need it.
    std::shared_ptr<const AirRows> air();

  private:
    FixedEnd& add(Vec3 position, const Aim& aim, TableStore::Rows directivity);

    const Show& show_;
    const MapGrid& grid_;
    const CellList& cells_;
    const Sweep& sweep_;
    TableStore& store_;
    double speed_;
    std::vector<FixedEnd> ends_;
    std::vector<TableStore::Rows> rows_;
    std::deque<std::vector<double>> floors_;
};

/// Images that a fixed end can have: surfaces that reflect at all and have the end strictly inside.
std::vector<Image> images_of(const Stage& stage, Vec3 position);

}  // namespace howlmap::maps
